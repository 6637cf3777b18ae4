package soundings.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static soundings.workbook.Made.cell;
import static soundings.workbook.Made.shown;
import static soundings.workbook.Made.zip;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.sheet.Book;
import soundings.sheet.Look;
import soundings.sheet.Value;

class OdsReaderTest {
    private static final String SPACES =
            " xmlns:office='urn:oasis:names:tc:opendocument:xmlns:office:1.0' xmlns:table='urn:oasis:names:tc:opendocument:xmlns:table:1.0'"
                    + " xmlns:text='urn:oasis:names:tc:opendocument:xmlns:text:1.0' xmlns:style='urn:oasis:names:tc:opendocument:xmlns:style:1.0'"
                    + " xmlns:number='urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0' xmlns:fo='urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0'"
                    + " xmlns:calcext='urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0'";

    @TempDir
    Path folder;

    static Map<String, String> parts(String styles, String table) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("mimetype", "application/vnd.oasis.opendocument.spreadsheet");
        parts.put(
                "content.xml",
                "<office:document-content" + SPACES + "><office:automatic-styles>" + styles
                        + "</office:automatic-styles><office:body><office:spreadsheet>"
                        + "<table:table table:name='Log'>" + table
                        + "</table:table></office:spreadsheet></office:body></office:document-content>");
        return parts;
    }

    private Book read(String styles, String table) {
        return Made.read(folder, "log.ods", zip(parts(styles, table)));
    }

    private static String row(String cells) {
        return "<table:table-row>" + cells + "</table:table-row>";
    }

    private static String number(String attributes, String value) {
        return "<table:table-cell office:value-type='float' office:value='" + value + "' " + attributes
                + "><text:p>?</text:p></table:table-cell>";
    }

    private static String text(String inside) {
        return "<table:table-cell office:value-type='string'>" + inside + "</table:table-cell>";
    }

    @Test
    void each_value_is_read_by_its_stored_type() {
        Book book = read(
                "",
                row(number("", "8.2")
                        + text(
                                "<text:p>NO<text:span>3</text:span></text:p><text:p>second<text:s text:c='2'/>line</text:p>")
                        + "<table:table-cell office:value-type='date' office:date-value='2023-04-03'><text:p>3.4.23</text:p></table:table-cell>"
                        + "<table:table-cell office:value-type='date' office:date-value='2023-04-03T09:30:00'/>"
                        + "<table:table-cell office:value-type='time' office:time-value='PT09H30M00S'/>"
                        + "<table:table-cell office:value-type='time' office:time-value='PT36H00M00S'/>"
                        + "<table:table-cell office:value-type='percentage' office:value='0.1'/>"
                        + "<table:table-cell office:value-type='boolean' office:boolean-value='true'/>"
                        + "<table:table-cell table:formula='of:=1/0' office:value-type='string' office:string-value='' calcext:value-type='error'><text:p>#DIV/0!</text:p></table:table-cell>"
                        + "<table:table-cell table:formula='of:=NOW()'/>"));

        assertThat(shown(book))
                .isEqualTo(
                        "A1=[8.2] B1=[NO3\nsecond  line] C1=[2023-04-03] D1=[2023-04-03 09:30] E1=[09:30] F1=[1.5] G1=[0.1] H1=[TRUE] I1=[#DIV/0!] J1=[no value]");
        assertThat(cell(book, "I1").value()).isEqualTo(new Value.Fault("#DIV/0!"));
    }

    @Test
    void a_document_that_counts_from_1904_gives_its_dates_the_day_numbers_its_plain_numbers_have() {
        Map<String, String> parts = parts(
                "",
                row("<table:table-cell office:value-type='date' office:date-value='2026-01-01'/>"
                        + number("", "44561")));
        parts.computeIfPresent(
                "content.xml",
                (name, xml) -> xml.replace(
                        "<office:spreadsheet>",
                        "<office:spreadsheet><table:calculation-settings><table:null-date table:date-value='1904-01-01'/></table:calculation-settings>"));

        Book book = Made.read(folder, "log.ods", zip(parts));

        assertThat(cell(book, "A1").value())
                .isInstanceOfSatisfying(
                        Value.Moment.class,
                        moment -> assertThat(moment.serial()).isEqualTo(44561));
    }

    @Test
    void repeated_blanks_are_stepped_over_and_repeated_values_written_out() {
        String blanks =
                "<table:table-row table:number-rows-repeated='1048000'><table:table-cell table:number-columns-repeated='16384'/></table:table-row>";
        Book book = read(
                "",
                row("<table:table-cell table:number-columns-repeated='3'/>"
                                + number("table:number-columns-repeated='2'", "5"))
                        + "<table:table-row table:number-rows-repeated='2'>" + number("", "7") + "</table:table-row>"
                        + row("") + row(number("", "9")) + blanks);

        assertThat(shown(book)).isEqualTo("D1=[5] E1=[5] A2=[7] A3=[7] A5=[9]");
    }

    @Test
    void a_value_repeated_all_over_the_grid_is_refused() {
        assertThatThrownBy(() -> read(
                        "",
                        "<table:table-row table:number-rows-repeated='1048576'>"
                                + number("table:number-columns-repeated='16384'", "5") + "</table:table-row>"))
                .isInstanceOf(UnreadableWorkbook.class)
                .hasMessageContaining("repeated");
    }

    @Test
    void styles_tell_bold_struck_out_and_the_number_format() {
        String styles =
                "<number:number-style style:name='N1'><number:number number:decimal-places='1' number:min-integer-digits='1'/><number:text> dKH</number:text></number:number-style>"
                        + "<style:style style:name='base' style:family='table-cell' style:data-style-name='N1'><style:text-properties fo:font-weight='bold'/></style:style>"
                        + "<style:style style:name='ce1' style:family='table-cell' style:parent-style-name='base'><style:text-properties style:text-line-through-style='solid'/></style:style>";
        Book book = read(styles, row(number("table:style-name='ce1'", "8.25")));

        assertThat(cell(book, "A1").look()).isEqualTo(new Look("0.0\" dKH\"", true, true, false, false));
        assertThat(shown(book)).isEqualTo("A1=[8.3 dKH]");
    }

    @Test
    void hidden_rows_and_columns_merges_and_notes_are_kept() {
        Book book = read(
                "",
                "<table:table-column/><table:table-column table:visibility='collapse'/>"
                        + row(
                                "<table:table-cell table:number-columns-spanned='3' office:value-type='float' office:value='1'><office:annotation><text:p>kit B</text:p></office:annotation></table:table-cell>"
                                        + "<table:covered-table-cell table:number-columns-repeated='2'/>"
                                        + number("", "4"))
                        + "<table:table-row table:visibility='filter'>" + number("", "5") + number("", "6")
                        + "</table:table-row>" + row(number("", "7") + number("", "8")));

        assertThat(book.grids().get(0).merges()).extracting(Object::toString).containsExactly("A1:C1");
        assertThat(cell(book, "A1").comment()).isEqualTo("kit B");
        assertThat(book.grids().get(0).cells())
                .filteredOn(cell -> cell.look().hidden())
                .extracting(cell -> cell.at().toString())
                .containsExactly("A2", "B2", "B3");
    }
}
