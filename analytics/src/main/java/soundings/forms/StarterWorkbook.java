package soundings.forms;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.chemistry.Reference;
import soundings.xlsx.SameBytes;

/** A blank log to begin with, laid out so that nothing in it has to be guessed, and its companion. */
public final class StarterWorkbook {
    private static final List<String> HAPPENINGS = List.of(
            "new carbon",
            "new lamp",
            "new bottle",
            "new kit",
            "calibrated",
            "new animal",
            "moved",
            "loss",
            "treatment",
            "cleaned",
            "power cut",
            "fed",
            "health check",
            "challenge dose",
            "equipment");

    private StarterWorkbook() {}

    public static void write(Reference reference, OutputStream out) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            SameBytes.nameOn(workbook, "Log");
            FormStyles styles = FormStyles.in(workbook);
            XSSFSheet lists = ListSheet.write(workbook, choices(reference));
            StarterForms.of(reference).forEach(form -> FormSheet.in(workbook, form, styles));
            workbook.setSheetOrder("Tanks", workbook.getNumberOfSheets() - 1);
            workbook.setSheetOrder(lists.getSheetName(), workbook.getNumberOfSheets() - 1);
            workbook.setSheetHidden(workbook.getSheetIndex(lists), true);
            workbook.setActiveSheet(0);
            workbook.setSelectedTab(0);
            ByteArrayOutputStream written = new ByteArrayOutputStream();
            workbook.write(written);
            SameBytes.repack(written.toByteArray(), out);
        }
    }

    private static Choices choices(Reference reference) {
        return Choices.of(reference).with(new Choices.Column(StarterForms.HAPPENINGS, HAPPENINGS));
    }
}
