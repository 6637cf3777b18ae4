package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import soundings.chemistry.Reference;
import soundings.reference.ReferenceTables;

class StarterWorkbookTest {
    private static final Reference REFERENCE = ReferenceTables.load();

    @Test
    void a_sheet_has_its_header_frozen_repeated_in_print_and_fitted_to_the_page() throws IOException {
        XSSFSheet tests = written().getSheet("Tests");

        assertThat(tests.getPaneInformation().isFreezePane()).isTrue();
        assertThat(tests.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) 1);
        assertThat(tests.getRepeatingRows().formatAsString()).isEqualTo("1:1");
        assertThat(tests.getFitToPage()).isTrue();
    }

    @Test
    void every_column_of_results_names_its_unit_but_ph_which_has_none() throws IOException {
        written().getSheet("Tests").getRow(0).forEach(cell -> {
            String header = cell.getStringCellValue();
            if (cell.getColumnIndex() > 2 && !header.equals("Note") && !header.equals("pH")) {
                assertThat(header).matches(".+ \\(.+\\)");
            }
        });
    }

    @Test
    void a_day_typed_into_the_first_column_is_shown_as_a_day() throws IOException {
        assertThat(DateUtil.isADateFormat(
                        0, written().getSheet("Tests").getColumnStyle(0).getDataFormatString()))
                .isTrue();
    }

    @Test
    void the_tank_list_offers_what_stands_on_the_sheet_tanks() throws IOException {
        assertThat(written().getSheet("Doses").getDataValidations())
                .extracting(v -> v.getValidationConstraint().getFormula1())
                .contains("OFFSET('Tanks'!$A$2,0,0,MAX(1,COUNTA('Tanks'!$A$2:$A$201)),1)");
    }

    @Test
    void it_holds_nothing_but_headers_and_hidden_lists() throws IOException {
        XSSFWorkbook workbook = written();
        workbook.forEach(sheet -> {
            if (!workbook.isSheetHidden(workbook.getSheetIndex(sheet))) {
                assertThat(sheet.getLastRowNum()).isZero();
            }
        });
    }

    private static XSSFWorkbook written() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        StarterWorkbook.write(REFERENCE, out);
        return Written.open(out.toByteArray());
    }
}
