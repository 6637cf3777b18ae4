package soundings.forms;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.chemistry.Reference;
import soundings.log.Log;
import soundings.xlsx.SameBytes;

/** The companion workbook of a log: what was understood is filled in, what is missing is asked for. */
public final class SetupWorkbook {
    private static final List<String> GUIDE = List.of(
            "Setup of a log",
            "This workbook stands beside your log and tells what the log does not say. Nothing here is required; each thing filled in "
                    + "lets a report answer more.",
            "A yellow cell is what would help most: a report cannot work something out without it. In the sheet Columns it marks what was "
                    + "worked out and not read; write the right word to confirm or correct it.",
            "Grey columns tell you what was found in the log and are written anew each time. Everything else is yours: it is never "
                    + "overwritten, and columns, sheets and notes you add stay.",
            "The strength of an additive stands on its label or follows from its recipe; it is never guessed from a name. Iodine "
                    + "solutions, medicines and acids can harm you and your animals: read the label, keep to local rules, ask a vet.");

    private SetupWorkbook() {}

    /** The companion of a log in which nothing is written yet. */
    public static void blank(Reference reference, OutputStream out) throws IOException {
        write(Optional.empty(), new Log(List.of(), List.of(), List.of(), List.of(), List.of()), reference, out);
    }

    /**
     * Writes the companion workbook: a new one, or the existing one with what is new added. The existing file is only read.
     *
     * @throws IOException also where the existing file is no xlsx that can be opened
     */
    public static void write(Optional<Path> existing, Log log, Reference reference, OutputStream out)
            throws IOException {
        try (XSSFWorkbook workbook = existing.isPresent() ? opened(existing.get()) : new XSSFWorkbook()) {
            FormStyles styles = FormStyles.in(workbook);
            if (existing.isEmpty()) {
                SameBytes.nameOn(workbook, GUIDE.get(0));
                GuideSheet.write(workbook, styles, GUIDE, SetupForms.ALL);
            }
            fill(workbook, styles, SetupFilling.of(log, reference), Choices.of(reference));
            ByteArrayOutputStream written = new ByteArrayOutputStream();
            workbook.write(written);
            SameBytes.repack(written.toByteArray(), out);
        }
    }

    private static XSSFWorkbook opened(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        } catch (RuntimeException unreadable) {
            throw new IOException(
                    file.getFileName() + " cannot be opened as an xlsx workbook, so nothing was added to it",
                    unreadable);
        }
    }

    private static void fill(
            XSSFWorkbook workbook, FormStyles styles, Map<String, List<Filled>> rows, Choices choices) {
        boolean fresh = FormSheet.find(workbook, Choices.SHEET).isEmpty();
        XSSFSheet lists = ListSheet.write(workbook, choices);
        for (Form form : SetupForms.ALL) {
            FormSheet.in(workbook, form, styles).enter(rows.getOrDefault(form.sheet(), List.of()));
        }
        if (fresh) {
            workbook.setSheetOrder(lists.getSheetName(), workbook.getNumberOfSheets() - 1);
        }
        workbook.setSheetHidden(workbook.getSheetIndex(lists), true);
    }
}
