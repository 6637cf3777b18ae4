package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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

    @Test
    void every_sheet_is_one_page_wide() {
        for (Sheet sheet : workbook) {
            assertThat(sheet.getFitToPage()).as(sheet.getSheetName()).isTrue();
            assertThat(sheet.getPrintSetup().getFitWidth())
                    .as(sheet.getSheetName())
                    .isEqualTo((short) 1);
        }
    }

    @Test
    void the_numbers_behind_the_charts_stay_out_of_the_print() {
        int sheet = workbook.getSheetIndex("Chart data");

        assertThat(workbook.getSheetAt(sheet).getLastRowNum()).isGreaterThan(1000);
        assertThat(workbook.getPrintArea(sheet)).endsWith("$A$1:$H$2");
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
