package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;
import soundings.xlsx.XlsxReport;

/** The report's workbook as it comes out of a printer, and its units as a reader knows them. */
class PrintedWorkbookTest {
    private static XSSFWorkbook workbook;

    @BeforeAll
    static void written() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxReport.write(Notebooks.run(Shipped.named("monthly"), Sampled.findings("club log.xlsx")), out);
        workbook = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
    }

    /** A4 is 595 by 842 points (ISO 216), Letter 612 by 792: the sheet must fit the narrower side and the shorter one. */
    private static double printedPoints(Sheet sheet, boolean down) {
        boolean longSide = sheet.getPrintSetup().getLandscape() != down;
        double margins = down
                ? sheet.getMargin(PageMargin.TOP) + sheet.getMargin(PageMargin.BOTTOM)
                : sheet.getMargin(PageMargin.LEFT) + sheet.getMargin(PageMargin.RIGHT);
        double scale = sheet.getPrintSetup().getScale() / 100.0;
        return ((longSide ? 792 : 595) - margins * 72) / scale;
    }

    @Test
    void every_sheet_is_one_page_wide_on_either_paper_and_large_enough_to_be_read() {
        for (Sheet sheet : workbook) {
            double digit = 5.56; // of Arial at 10 points: 556 thousandths of its size
            double width = 0;
            String area = workbook.getPrintArea(workbook.getSheetIndex(sheet));
            for (int c = 0; c <= lastColumn(area); c++) {
                width += sheet.getColumnWidth(c) / 256.0 * digit;
            }
            assertThat(width).as(sheet.getSheetName()).isLessThanOrEqualTo(printedPoints(sheet, false));
            assertThat(sheet.getPrintSetup().getScale())
                    .as(sheet.getSheetName())
                    .isGreaterThan((short) 60);
        }
    }

    private static int lastColumn(String area) {
        return new AreaReference(area, SpreadsheetVersion.EXCEL2007)
                .getLastCell()
                .getCol();
    }

    @Test
    void no_chart_is_cut_at_the_end_of_a_page() {
        int charts = 0;
        for (Sheet sheet : workbook) {
            XSSFDrawing drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
            for (var chart : drawing == null
                    ? List.<CTTwoCellAnchor>of()
                    : drawing.getCTDrawing().getTwoCellAnchorList()) {
                for (int row = chart.getFrom().getRow(); row < chart.getTo().getRow() - 1; row++) {
                    assertThat(sheet.isRowBroken(row)).as(sheet.getSheetName()).isFalse();
                }
                assertThat(pages(sheet))
                        .as(sheet.getSheetName())
                        .allSatisfy(height -> assertThat(height).isLessThanOrEqualTo(printedPoints(sheet, true)));
                charts++;
            }
        }
        assertThat(charts).isGreaterThan(20);
    }

    private static List<Double> pages(Sheet sheet) {
        List<Double> pages = new ArrayList<>(List.of(0.0));
        for (int r = 0; r <= sheet.getLastRowNum(); r++) {
            double height = sheet.getRow(r).getHeightInPoints();
            pages.set(pages.size() - 1, pages.get(pages.size() - 1) + height);
            if (sheet.isRowBroken(r)) {
                pages.add(0.0);
            }
        }
        return pages;
    }

    @Test
    void every_number_fits_its_column() {
        DataFormatter shown = new DataFormatter(Locale.ROOT);
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.NUMERIC) {
                        double points = shown.formatCellValue(cell)
                                .chars()
                                .mapToDouble(c -> c < 128 ? 5.56 : 6)
                                .sum();
                        assertThat(points)
                                .as(sheet.getSheetName() + "!" + cell.getAddress())
                                .isLessThanOrEqualTo(sheet.getColumnWidth(cell.getColumnIndex()) / 256.0 * 5.25);
                    }
                }
            }
        }
    }

    @Test
    void the_numbers_behind_the_charts_stay_out_of_the_print() {
        int sheet = workbook.getSheetIndex("Chart data");

        assertThat(workbook.getSheetAt(sheet).getLastRowNum()).isGreaterThan(1000);
        assertThat(workbook.getPrintArea(sheet)).endsWith("$A$1:$I$2");
    }

    @Test
    void no_cell_shows_a_unit_in_code() {
        for (Sheet sheet : workbook) {
            for (Row row : sheet) {
                for (Cell cell : row) {
                    String shown = cell.getCellStyle().getDataFormatString();
                    assertThat(shown).doesNotContain("Cel").doesNotContain("\" pH\"");
                }
            }
        }
    }

    @Test
    void the_first_sheets_orders_are_wrapped_and_led_from_by_a_cell_beside_them() {
        Sheet first = workbook.getSheetAt(0);
        int wrapped = 0;
        for (Row row : first) {
            Cell what = row.getCell(2);
            if (what != null && row.getCell(0).getStringCellValue().startsWith("this ")) {
                assertThat(what.getCellStyle().getWrapText()).isTrue();
                assertThat(what.getHyperlink()).isNull();
                wrapped++;
            }
        }
        assertThat(wrapped).isGreaterThan(5);
    }
}
