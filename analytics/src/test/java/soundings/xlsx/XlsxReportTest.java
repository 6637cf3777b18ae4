package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.notebook.Cell;
import soundings.notebook.Notebook;
import soundings.notebook.Prose;
import soundings.notebook.Section;
import soundings.notebook.TableItem;

class XlsxReportTest {
    private static byte[] bytes = new byte[0];
    private static XSSFWorkbook workbook = new XSSFWorkbook();

    @BeforeAll
    static void write() throws IOException {
        bytes = written(SampleReport.small());
        workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }

    @Test
    void sheets_follow_the_notebook_then_come_answers_tables_workings_and_the_charts_numbers() {
        assertThat(names(workbook))
                .containsExactly(
                        "This month",
                        "Long tank",
                        "Readings",
                        "Questions",
                        "New ranges",
                        "All readings",
                        "Workings",
                        "Chart data");
    }

    @Test
    void the_first_sheet_begins_with_the_title_and_what_to_do() {
        List<String> words = words(workbook.getSheetAt(0));

        assertThat(words.get(0)).isEqualTo("April 2026");
        assertThat(words).contains("Raise the alkalinity dose from 30 to 38 mL a day\nOn the first day 12 mL more.");
        assertThat(words.indexOf("What to do this month")).isLessThan(words.indexOf("Every test"));
    }

    @Test
    void an_interval_is_three_numbers_shown_with_their_unit() {
        XSSFSheet sheet = workbook.getSheetAt(0);
        XSSFCell level = below(sheet, "Level");

        assertThat(level.getNumericCellValue()).isEqualTo(7.6);
        assertThat(level.getCellStyle().getDataFormatString()).isEqualTo("0.0\" dKH\"");
        assertThat(below(sheet, "Level, from").getNumericCellValue()).isEqualTo(7.3);
        assertThat(below(sheet, "Level, to").getNumericCellValue()).isEqualTo(7.9);
    }

    @Test
    void a_day_is_a_date_of_the_spreadsheet() {
        XSSFCell day = below(workbook.getSheetAt(0), "Last test");

        assertThat(day.getLocalDateTimeCellValue()).isEqualTo(LocalDateTime.of(2025, 1, 6, 0, 0));
        assertThat(day.getCellStyle().getDataFormatString()).isEqualTo("yyyy-mm-dd");
    }

    @Test
    void a_long_table_has_its_header_frozen_filtered_and_repeated_in_print() {
        XSSFSheet sheet = workbook.getSheet("All readings");
        int header = row(sheet, "As written");

        assertThat(sheet.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) (header + 1));
        assertThat(sheet.getCTWorksheet().getAutoFilter().getRef()).isEqualTo("A2:H42");
        assertThat(sheet.getRepeatingRows().getFirstRow()).isEqualTo(header);
        assertThat(sheet.getPrintSetup().getScale()).isBetween((short) 60, (short) 100);
        assertThat(workbook.getPrintArea(workbook.getSheetIndex(sheet))).endsWith("$A$1:$H$42");
    }

    @Test
    void a_working_recalculates_from_its_own_cells_and_keeps_our_value() {
        XSSFSheet sheet = workbook.getSheet("Workings");
        XSSFCell dose = sheet.getRow(row(sheet, "dose a day")).getCell(1);
        int use = row(sheet, "use a day") + 1;

        assertThat(dose.getCellFormula()).isEqualTo("B" + use + "*B" + (use + 1) + "/B" + (use + 2));
        assertThat(dose.getNumericCellValue()).isCloseTo(100 / 2.64, within(1e-12));
        assertThat(workbook.getForceFormulaRecalculation()).isTrue();
    }

    @Test
    void only_workings_hold_formulas() {
        workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
                assertThat(sheet.getSheetName()).isEqualTo("Workings");
            }
        })));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(1)",
                "\t=1+1",
                "=HYPERLINK(\"http://example.org\",\"8.2\")",
                "=cmd|' /C calc'!A0",
                "\uFF1D1+1"
            })
    void text_of_a_log_stays_text_and_is_marked_as_such(String hostile) throws IOException {
        XSSFCell cell = onlyCell(hostile);

        assertThat(cell.getCellType()).isEqualTo(CellType.STRING);
        assertThat(cell.getStringCellValue()).isEqualTo(hostile);
        assertThat(cell.getCellStyle().getQuotePrefixed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"a < b & c > d \"e\"", "]]>", "_x0041_ stays", "two\nlines", "\uD83D\uDC20 fish", "  spaced  "})
    void awkward_text_comes_back_as_it_was(String text) throws IOException {
        assertThat(onlyCell(text).getStringCellValue()).isEqualTo(text);
    }

    @Test
    void text_a_workbook_cannot_hold_is_mended_and_cut() throws IOException {
        assertThat(onlyCell("a\u0000b\uD800c").getStringCellValue()).isEqualTo("a\uFFFDb\uFFFDc");
        assertThat(onlyCell("x".repeat(40_000)).getStringCellValue())
                .hasSize(32_767)
                .endsWith("x\u2026");
    }

    @Test
    void a_chart_is_native_bound_to_cells_and_says_what_it_shows() {
        XSSFChart chart = charts("Long tank").get(1);
        var frame = workbook.getSheet("Long tank")
                .getDrawingPatriarch()
                .getCTDrawing()
                .getTwoCellAnchorArray(1)
                .getGraphicFrame()
                .getNvGraphicFramePr()
                .getCNvPr();

        assertThat(frame.getDescr()).startsWith("Alkalinity fell from 8.4 to 7.7 dKH");
        assertThat(frame.getName()).isEqualTo("Alkalinity, long tank");
        XDDFChartData data = chart.getChartSeries().get(0);
        assertThat(data).isInstanceOf(XDDFScatterChartData.class);
        assertThat(series(data)).hasSize(8).allSatisfy(s -> {
            assertThat(s.getValuesData().getDataRangeReference()).startsWith("'Chart data'!$D$");
            assertThat(s.getCategoryData().getDataRangeReference()).startsWith("'Chart data'!$C$");
        });
    }

    @Test
    void the_cells_a_chart_is_bound_to_hold_what_it_shows() {
        for (var series : charts("Long tank")
                .get(1)
                .getCTChart()
                .getPlotArea()
                .getScatterChartArray(0)
                .getSerArray()) {
            var values = series.getYVal().getNumRef();
            int first = Integer.parseInt(values.getF().replaceAll(".*\\$D\\$(\\d+):.*", "$1"));
            for (var point : values.getNumCache().getPtArray()) {
                XSSFCell cell = workbook.getSheet("Chart data")
                        .getRow(first - 1 + (int) point.getIdx())
                        .getCell(3);
                assertThat(cell.getNumericCellValue()).isEqualTo(Double.parseDouble(point.getV()));
            }
        }
    }

    @Test
    void tests_against_their_ranges_are_a_native_chart_of_dots_with_their_intervals() {
        var frame = workbook.getSheet("Long tank")
                .getDrawingPatriarch()
                .getCTDrawing()
                .getTwoCellAnchorArray(0)
                .getGraphicFrame()
                .getNvGraphicFramePr()
                .getCNvPr();
        var series = charts("Long tank").get(0).getCTChart().getPlotArea().getScatterChartArray(0);
        var calcium = series.getSerArray(5);

        assertThat(frame.getDescr()).startsWith("1 of 2 tests lies inside its range");
        assertThat(series.sizeOfSerArray()).isEqualTo(6);
        assertThat(calcium.getTx().getV()).isEqualTo("Calcium 430 mg/L");
        // 430 lies at 60 hundredths of 400 to 450, its interval from 20 to 90.
        assertThat(number(calcium.getXVal().getNumRef())).isEqualTo(60);
        assertThat(number(calcium.getErrBarsArray(0).getPlus().getNumRef())).isEqualTo(30);
        assertThat(number(calcium.getErrBarsArray(0).getMinus().getNumRef())).isEqualTo(40);
        assertThat(calcium.getErrBarsArray(0).getErrDir().getVal()).hasToString("x");
    }

    /** The one number bound, as the workbook's cell has it. */
    private static double number(org.openxmlformats.schemas.drawingml.x2006.chart.CTNumRef bound) {
        var cell = new org.apache.poi.ss.util.CellReference(bound.getF().replaceAll(":.*", ""));
        double value = workbook.getSheet("Chart data")
                .getRow(cell.getRow())
                .getCell(cell.getCol())
                .getNumericCellValue();
        assertThat(Double.parseDouble(bound.getNumCache().getPtArray(0).getV())).isEqualTo(value);
        return value;
    }

    @Test
    void markers_have_a_size_that_a_spreadsheet_can_read() {
        charts("Long tank")
                .forEach(chart -> assertThat(chart.getCTChart().xmlText()).doesNotContain("val=\"\""));
        assertThat(charts("Long tank").get(1).getCTChart().xmlText()).contains("<c:size val=\"5\"/>");
    }

    @Test
    void words_lead_to_where_more_is_said() {
        assertThat(workbook.getSheetAt(0).getHyperlinkList())
                .extracting(link -> link.getAddress())
                .contains("'Workings'!A"
                        + (row(workbook.getSheet("Workings"), "Maintenance dose of alkalinity, long tank") + 1));
    }

    @Test
    void sheets_of_the_same_heading_each_get_a_name() throws IOException {
        Section one = new Section("a", "Tank [1]: north/south of the long corridor", 2, List.of());
        Section two = new Section("b", "Tank [1]: north/south of the long CORRIDOR", 2, List.of());

        List<String> names =
                names(new XSSFWorkbook(new ByteArrayInputStream(written(new Notebook("t", "s", List.of(one, two))))));

        assertThat(names.subList(0, 2))
                .containsExactly("Tank  1   north south of the lo", "Tank  1   north south of the 2");
    }

    @Test
    void the_same_notebook_gives_the_same_bytes() throws IOException {
        assertThat(java.util.Arrays.equals(written(SampleReport.small()), bytes))
                .isTrue();
    }

    private static XSSFCell onlyCell(String text) throws IOException {
        TableItem table = new TableItem(
                "t",
                "",
                List.of(TableItem.Column.words("A")),
                List.of(new TableItem.Row(List.of(Cell.words(text)), List.of())),
                false,
                List.of());
        Section section = new Section("s", "S", 2, List.of(new Prose(List.of(), List.of()), table));
        XSSFWorkbook written =
                new XSSFWorkbook(new ByteArrayInputStream(written(new Notebook("n", "m", List.of(section)))));
        return below(written.getSheetAt(0), "A");
    }

    private static byte[] written(Notebook notebook) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxReport.write(notebook, out);
        return out.toByteArray();
    }

    private static List<XDDFChartData.Series> series(XDDFChartData data) {
        return java.util.stream.IntStream.range(0, data.getSeriesCount())
                .mapToObj(data::getSeries)
                .toList();
    }

    private static List<XSSFChart> charts(String sheet) {
        return workbook.getSheet(sheet).getDrawingPatriarch().getCharts();
    }

    private static List<String> names(XSSFWorkbook of) {
        List<String> names = new ArrayList<>();
        of.forEach(s -> names.add(s.getSheetName()));
        return names;
    }

    private static List<String> words(XSSFSheet sheet) {
        List<String> words = new ArrayList<>();
        sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.STRING) {
                words.add(cell.getStringCellValue());
            }
        }));
        return words;
    }

    private static int row(XSSFSheet sheet, String text) {
        return at(sheet, text).getRowIndex();
    }

    private static XSSFCell below(XSSFSheet sheet, String header) {
        XSSFCell found = at(sheet, header);
        return sheet.getRow(found.getRowIndex() + 1).getCell(found.getColumnIndex());
    }

    private static XSSFCell at(XSSFSheet sheet, String text) {
        for (var row : sheet) {
            for (var cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(text)) {
                    return (XSSFCell) cell;
                }
            }
        }
        throw new AssertionError("'" + text + "' is not on the sheet " + sheet.getSheetName());
    }
}
