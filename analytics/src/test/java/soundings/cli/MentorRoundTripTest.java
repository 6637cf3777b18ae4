package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.findings.MentorNotes;
import soundings.workbook.WorkbookReader;
import soundings.xlsx.ReportAnswers;

class MentorRoundTripTest {
    private static final Clock NOW = Clock.fixed(Instant.parse("2026-08-02T09:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private Path log = Path.of("");

    @BeforeEach
    void a_log_of_one_tank() throws IOException {
        StringBuilder text = new StringBuilder("Date,Calcium mg/L,Magnesium mg/L\n");
        for (LocalDate day = LocalDate.of(2026, 4, 1); day.getMonthValue() < 8; day = day.plusDays(5)) {
            text.append(String.format(
                    Locale.ROOT,
                    "%s,%d,%d%n",
                    day,
                    430 - day.getDayOfYear() % 3 * 5,
                    1320 + day.getDayOfYear() % 2 * 10));
        }
        log = Files.writeString(folder.resolve("pond.csv"), text, StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"monthly", "mentor"})
    void what_a_mentor_wrote_is_shown_next_month_and_judged_by(String notebook) throws IOException {
        String mark = notebook.equals("monthly") ? "" : " " + notebook;
        String answered = "pond report 2026-06" + mark + ".xlsx";
        report("2026-06", notebook);
        write(answered);

        report("2026-07", "monthly");

        Document page = page("pond report 2026-07.html");
        assertThat(page.select("#mentor-answers").text())
                .contains("Is <b>this</b> water good?", "Test the fresh mix.", "R. Ode", "1 Jul 2026");
        assertThat(page.select("#mentor-ranges").text())
                .contains("440 to 460", "R. Ode", "tests are judged by it", "no test is called 'calcum'");
        assertThat(page.text()).contains("R. Ode, 2026-07-01 (" + answered + ", New ranges!B3)");
        // Every reading lies between 420 and 430: below the mentor's range, inside the usual one.
        assertThat(page.text()).contains("The range is 440 to 460 mg/L");
    }

    @Test
    void reporting_the_same_month_again_keeps_what_was_written_in_its_report() throws IOException {
        report("2026-06", "monthly");
        write("pond report 2026-06.xlsx");
        MentorNotes before = read("pond report 2026-06.xlsx");

        report("2026-06", "monthly");
        report("2026-06", "mentor");

        MentorNotes after = read("pond report 2026-06.xlsx");
        assertThat(after.ranges()).isEqualTo(before.ranges()).hasSize(2);
        assertThat(after.answers()).extracting(MentorNotes.Answer::answer).containsExactly("Test the fresh mix.");
        assertThat(after.answers())
                .extracting(MentorNotes.Answer::on)
                .containsExactly(Optional.of(LocalDate.of(2026, 7, 1)));
    }

    @Test
    void another_notebooks_report_stands_beside_the_months_own() throws IOException {
        report("2026-06", "monthly");
        String monthly = Files.readString(folder.resolve("pond report 2026-06.html"));
        Path own = Files.writeString(folder.resolve("short one.md"), "# Short\n\n## To do\n\n<@actions/>\n");

        report("2026-06", "mentor");
        report("2026-06", own.toString());

        assertThat(folder.resolve("pond report 2026-06.html")).hasContent(monthly);
        assertThat(folder.resolve("pond report 2026-06 mentor.html")).exists();
        assertThat(folder.resolve("pond report 2026-06 short one.xlsx")).exists();
        assertThat(LogNames.in(folder)).containsExactly(log);
    }

    @Test
    void the_keepers_own_range_is_used_and_the_mentors_shown_beside_it() throws IOException {
        try (XSSFWorkbook setup = new XSSFWorkbook();
                var to = Files.newOutputStream(folder.resolve("pond-setup.xlsx"))) {
            XSSFSheet targets = setup.createSheet("Targets");
            row(targets, 0, "Tank", "Parameter", "Low", "High", "Unit");
            row(targets, 1, "", "calcium", "400", "450", "mg/L");
            setup.write(to);
        }
        report("2026-06", "monthly");
        write("pond report 2026-06.xlsx");

        report("2026-07", "monthly");

        assertThat(page("pond report 2026-07.html").select("#mentor-ranges").text())
                .contains("440 to 460", "the setup workbook's own range is used: Targets!C2");
        assertThat(page("pond report 2026-07.html").text()).doesNotContain("The range is 440 to 460 mg/L");
    }

    @Test
    void a_report_that_cannot_be_read_is_not_written_over() throws IOException {
        Path broken =
                Files.writeString(folder.resolve("pond report 2026-07.xlsx"), "half a file", StandardCharsets.UTF_8);

        report("2026-07", "monthly");

        assertThat(broken).hasContent("half a file");
        assertThat(folder.resolve("pond report 2026-07 (2).xlsx")).exists();
    }

    private void write(String name) throws IOException {
        Path file = folder.resolve(name);
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(file))) {
            XSSFSheet questions = Optional.ofNullable(workbook.getSheet("Other questions"))
                    .orElseGet(() -> workbook.getSheet("Questions"));
            row(questions, 2, "Is <b>this</b> water good?", "", "Test the fresh mix.", "R. Ode");
            questions.getRow(2).getCell(4).setCellValue(LocalDate.of(2026, 7, 1));
            XSSFSheet ranges = workbook.getSheet("New ranges");
            row(ranges, 2, "", "calcium", "440", "460", "mg/L", "corals", "R. Ode", "2026-07-01");
            row(ranges, 3, "", "calcum", "1", "2");
            try (var to = Files.newOutputStream(file)) {
                workbook.write(to);
            }
        }
    }

    private static void row(XSSFSheet sheet, int at, String... texts) {
        Row row = Optional.<Row>ofNullable(sheet.getRow(at)).orElseGet(() -> sheet.createRow(at));
        for (int i = 0; i < texts.length; i++) {
            row.getCell(i, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK).setCellValue(texts[i]);
        }
    }

    private MentorNotes read(String name) {
        return ReportAnswers.read(WorkbookReader.read(folder.resolve(name), Optional.empty()), name);
    }

    private Document page(String name) throws IOException {
        return Jsoup.parse(folder.resolve(name).toFile(), "UTF-8");
    }

    private void report(String month, String notebook) {
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said);
        int exit = Main.run(writer, writer, NOW, "report", log.toString(), "--month", month, "--notebook", notebook);
        assertThat(exit).as(said.toString()).isZero();
    }
}
