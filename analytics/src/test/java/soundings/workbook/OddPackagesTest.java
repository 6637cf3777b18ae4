package soundings.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.workbook.Made.cell;
import static soundings.workbook.Made.rels;
import static soundings.workbook.Made.shown;
import static soundings.workbook.Made.zip;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.sheet.Book;
import soundings.sheet.Value;

/** Packages that keep to the standard and are seldom met: ISO/IEC 29500-1 "strict" names, parts under names of their own, threads. */
class OddPackagesTest {
    /** Namespace names of ISO/IEC 29500-1:2016, Annex A (strict schemas). */
    private static final String STRICT_MAIN = "http://purl.oclc.org/ooxml/spreadsheetml/main";

    private static final String STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    @TempDir
    Path folder;

    private static Map<String, String> strict(String sheet, String sheetPart) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("_rels/.rels", rels(STRICT_RELATIONS, "officeDocument", "/Book/the book.xml"));
        parts.put(
                "Book/the book.xml",
                "<x:workbook xmlns:x='" + STRICT_MAIN + "' xmlns:rel='" + STRICT_RELATIONS
                        + "' conformance='strict'><x:sheets><x:sheet name='Log' sheetId='7' rel:id='rId1'/></x:sheets></x:workbook>");
        parts.put(
                "Book/_rels/the book.xml.rels",
                rels(STRICT_RELATIONS, "worksheet", "../" + sheetPart, "sharedStrings", "words.xml"));
        parts.put("Book/words.xml", "<x:sst xmlns:x='" + STRICT_MAIN + "'><x:si><x:t>Alk</x:t></x:si></x:sst>");
        parts.put(
                sheetPart,
                "<x:worksheet xmlns:x='" + STRICT_MAIN + "'><x:sheetData>" + sheet + "</x:sheetData></x:worksheet>");
        return parts;
    }

    @Test
    void a_strict_package_with_parts_under_names_of_their_own_is_read() {
        Book book = Made.read(
                folder,
                "log.xlsx",
                zip(strict(
                        "<x:row r='1'><x:c r='A1' t='s'><x:v>0</x:v></x:c><x:c r='B1' t='d'><x:v>2026-05-01</x:v></x:c></x:row>"
                                + "<x:row r='2'><x:c r='A2'><x:v>8.2</x:v></x:c></x:row>",
                        "Sheets/page one.xml")));

        assertThat(shown(book.grids().get(0))).contains("A1=[Alk]").contains("A2=[8.2]");
        assertThat(cell(book, "B1").value())
                .isInstanceOfSatisfying(
                        Value.Moment.class,
                        m -> assertThat(m.at().toLocalDate()).hasToString("2026-05-01"));
    }

    @Test
    void a_thread_of_remarks_stands_instead_of_its_plain_stand_in() {
        Map<String, String> parts = Made.parts("<sheetData><row r='1'><c r='A1'><v>8.2</v></c></row></sheetData>");
        parts.put(
                "xl/worksheets/_rels/sheet1.xml.rels",
                rels("http://example.invalid", "comments", "../notes.xml", "threadedComment", "../thread.xml"));
        parts.put(
                "xl/notes.xml",
                "<comments><commentList><comment ref='A1'><text><t>[Threaded comment] update your program</t></text></comment></commentList></comments>");
        parts.put(
                "xl/thread.xml",
                "<ThreadedComments><threadedComment ref='A1'><text>kit B</text></threadedComment>"
                        + "<threadedComment ref='A1'><text>tested twice</text></threadedComment></ThreadedComments>");

        assertThat(cell(Made.read(folder, "log.xlsx", zip(parts)), "A1").comment())
                .isEqualTo("kit B\ntested twice");
    }
}
