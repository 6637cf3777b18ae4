package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import soundings.findings.MentorNotes;
import soundings.setup.WrittenRange;
import soundings.workbook.WorkbookReader;

class ReportAnswersTest {
    @TempDir
    Path folder;

    @Test
    void an_untouched_report_has_no_answers() throws IOException {
        MentorNotes answers = read(report(w -> {}));

        assertThat(answers.answers()).isEmpty();
        assertThat(answers.ranges()).isEmpty();
    }

    @Test
    void an_answer_is_read_with_whose_it_is() throws IOException {
        Path file = report(workbook -> {
            XSSFSheet sheet = workbook.getSheet("Questions");
            set(sheet, 2, 0, "Why does magnesium fall?");
            set(sheet, 2, 2, "Test the fresh mix first.");
            set(sheet, 2, 3, "R. Ode");
            cell(sheet, 2, 4).setCellValue(LocalDate.of(2026, 5, 2));
        });

        assertThat(read(file).answers())
                .containsExactly(new MentorNotes.Answer(
                        "",
                        "Why does magnesium fall?",
                        "Test the fresh mix first.",
                        "R. Ode",
                        Optional.of(LocalDate.of(2026, 5, 2)),
                        "report.xlsx, Questions!C3"));
    }

    @Test
    void new_ranges_are_read_as_written_for_their_reader_to_judge() throws IOException {
        Path file = report(workbook -> {
            XSSFSheet sheet = workbook.getSheet("New ranges");
            set(sheet, 2, 0, "Long tank");
            set(sheet, 2, 1, "calcium");
            cell(sheet, 2, 2).setCellValue(410);
            set(sheet, 2, 3, "440,5");
            set(sheet, 2, 6, "R. Ode");
            set(sheet, 3, 1, "magnesium");
            set(sheet, 3, 2, "1,300");
        });

        assertThat(read(file).ranges())
                .containsExactly(
                        new WrittenRange(
                                "Long tank",
                                "calcium",
                                "410",
                                "440,5",
                                "",
                                "",
                                "R. Ode",
                                Optional.empty(),
                                "report.xlsx, New ranges!B3"),
                        new WrittenRange(
                                "",
                                "magnesium",
                                "1,300",
                                "",
                                "",
                                "",
                                "",
                                Optional.empty(),
                                "report.xlsx, New ranges!B4"));
    }

    private static MentorNotes read(Path file) {
        return ReportAnswers.read(WorkbookReader.read(file, Optional.empty()), "report.xlsx");
    }

    private Path report(Consumer<XSSFWorkbook> change) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxReport.write(SampleReport.small(), out);
        Path file = folder.resolve("report.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));
                var to = Files.newOutputStream(file)) {
            change.accept(workbook);
            workbook.write(to);
        }
        return file;
    }

    private static void set(XSSFSheet sheet, int row, int column, String text) {
        cell(sheet, row, column).setCellValue(text);
    }

    private static XSSFCell cell(XSSFSheet sheet, int row, int column) {
        return sheet.getRow(row).getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }
}
