package soundings.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.workbook.Made.cell;
import static soundings.workbook.Made.parts;
import static soundings.workbook.Made.shown;
import static soundings.workbook.Made.zip;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Value;

class XlsxReaderTest {
    @TempDir
    Path folder;

    private Book read(Map<String, String> parts) {
        return Made.read(folder, "log.xlsx", zip(parts));
    }

    private Book sheet(String rows, String... more) {
        return read(parts("<sheetData>" + rows + "</sheetData>", more));
    }

    @Test
    void numbers_texts_flags_and_errors_keep_their_kind() {
        Book book = sheet(
                "<row r='2'><c r='B2'><v>8.2</v></c><c r='C2' t='b'><v>1</v></c><c r='D2' t='e'><v>#DIV/0!</v></c>"
                        + "<c r='E2' t='inlineStr'><is><t>low</t></is></c></row>");

        assertThat(book.grids().get(0).cells())
                .extracting(Cell::value)
                .containsExactly(
                        new Value.Numeric(8.2),
                        new Value.Flag(true),
                        new Value.Fault("#DIV/0!"),
                        new Value.Text("low"));
        assertThat(shown(book)).isEqualTo("B2=[8.2] C2=[TRUE] D2=[#DIV/0!] E2=[low]");
    }

    @Test
    void cells_without_an_address_stand_beside_the_one_before() {
        assertThat(
                        shown(
                                sheet(
                                        "<row><c><v>1</v></c><c><v>2</v></c></row><row><c r='C2'><v>3</v></c><c><v>4</v></c></row><row/><row><c><v>5</v></c></row>")))
                .isEqualTo("A1=[1] B1=[2] C2=[3] D2=[4] A4=[5]");
    }

    @Test
    void a_formula_is_the_value_it_was_saved_with() {
        Book book = sheet("<row r='1'><c r='A1'><f>1+1</f><v>2</v></c><c r='B1' t='str'><f>\"a\"</f><v>a</v></c>"
                + "<c r='C1'><f>NOW()</f></c><c r='D1' t='str'><f>\"\"</f><v></v></c><c r='E1'><f>1</f><v/></c></row>");

        assertThat(shown(book)).isEqualTo("A1=[2] B1=[a] C1=[no value] E1=[no value]");
        assertThat(book.grids().get(0).cells()).allMatch(cell -> cell.look().formula());
    }

    @Test
    void shared_texts_join_their_runs_without_the_reading_aid() {
        Book book = sheet(
                "<row r='1'><c r='A1' t='s'><v>0</v></c><c r='B1' t='s'><v>1</v></c><c r='C1' t='s'><v>2</v></c><c r='D1' t='s'><v>9</v></c></row>",
                "xl/sharedStrings.xml",
                "<sst><si><r><t>NO</t></r><r><rPr><vertAlign val='subscript'/></rPr><t>3</t></r><rPh><t>no</t></rPh></si>"
                        + "<si><t>two_x000D_\nlines, _x005F_x000D_ kept</t></si><si><t></t></si></sst>");

        assertThat(shown(book)).isEqualTo("A1=[NO3] B1=[two\r\nlines, _x000D_ kept] D1=[no value]");
    }

    @Test
    void struck_out_text_is_told_by_the_font_or_by_every_run() {
        Book book = sheet(
                "<row r='1'><c r='A1' s='1'><v>1</v></c><c r='B1' t='s'><v>0</v></c><c r='C1' t='s'><v>1</v></c></row>",
                "xl/styles.xml",
                "<styleSheet><fonts><font/><font><b/><strike val='1'/></font></fonts><cellXfs><xf/><xf fontId='1'/></cellXfs></styleSheet>",
                "xl/sharedStrings.xml",
                "<sst><si><r><rPr><strike/></rPr><t>8.9</t></r></si><si><r><rPr><strike/></rPr><t>8.9</t></r><r><t>8.4</t></r></si></sst>");

        assertThat(book.grids().get(0).cells())
                .extracting(cell -> cell.look().struck())
                .containsExactly(true, true, false);
        assertThat(cell(book, "A1").look().bold()).isTrue();
        assertThat(book.caveats())
                .singleElement()
                .satisfies(caveat -> assertThat(caveat.message()).contains("C1"));
    }

    @Test
    void number_formats_make_dates_and_times_of_day_numbers() {
        String styles =
                "<styleSheet><numFmts><numFmt numFmtId='164' formatCode='dd\\.mm\\.yyyy\\ hh:mm'/><numFmt numFmtId='165' formatCode='0.0&quot; dKH&quot;'/>"
                        + "</numFmts><cellXfs><xf/><xf numFmtId='14'/><xf numFmtId='164'/><xf numFmtId='20'/><xf numFmtId='165'/></cellXfs></styleSheet>";
        Book book = sheet(
                "<row r='1'><c r='A1' s='1'><v>45019</v></c><c r='B1' s='2'><v>45019.395833333336</v></c><c r='C1' s='3'><v>0.395833333</v></c>"
                        + "<c r='D1' s='4'><v>8.25</v></c><c r='E1' s='1'><v>-3</v></c></row>",
                "xl/styles.xml",
                styles);

        assertThat(shown(book)).isEqualTo("A1=[2023-04-03] B1=[2023-04-03 09:30] C1=[09:30] D1=[8.3 dKH] E1=[-3]");
        assertThat(cell(book, "B1").value())
                .isEqualTo(new Value.Moment(
                        45019.395833333336, LocalDateTime.of(2023, 4, 3, 9, 30), Value.Shows.DATE_AND_TIME));
    }
}
