package soundings.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The built jar as a black box: the main job, and what happens when it can't be done. */
class ReportIT {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks").toAbsolutePath();

    @TempDir
    private Path folder;

    private Path copied(String name) throws IOException {
        return Files.copy(SAMPLES.resolve(name), folder.resolve(name));
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void the_log_is_untouched_and_the_reports_figures_are_those_of_the_results_file() throws Exception {
        Path log = copied("club log.xlsx");
        copied("club log-setup.xlsx");
        byte[] before = Files.readAllBytes(log);

        Jar.Ran ran = Jar.run(folder, "report", "club log.xlsx", "--json", "results.json");

        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(Files.readAllBytes(log)).isEqualTo(before);
        assertThat(left())
                .containsExactly(
                        "club log report 2026-10.html",
                        "club log report 2026-10.xlsx",
                        "club log-setup.xlsx",
                        "club log.xlsx",
                        "results.json");
        JsonNode results =
                new ObjectMapper().readTree(folder.resolve("results.json").toFile());
        figuresAgree(results);
    }

    private void figuresAgree(JsonNode results) throws IOException {
        String page = Jsoup.parse(folder.resolve("club log report 2026-10.html").toFile(), "UTF-8")
                .text();
        String book = cells(folder.resolve("club log report 2026-10.xlsx"));
        int compared = 0;
        for (JsonNode recommendation : results.get("recommendations")) {
            JsonNode proposed = recommendation.get("proposedMlPerDay");
            if (proposed != null && !proposed.isNull()) {
                String shown =
                        String.format(Locale.ROOT, "%.1f", proposed.get("mid").asDouble());
                assertThat(page).contains(shown);
                assertThat(book).contains(shown);
                compared++;
            }
        }
        assertThat(compared).as("recommendations with a proposed dose").isPositive();
        assertThat(results.get("readings").size()).isGreaterThan(500);
    }

    private static String cells(Path xlsx) throws IOException {
        StringBuilder text = new StringBuilder();
        DataFormatter shown = new DataFormatter(Locale.ROOT);
        shown.setUseCachedValuesForFormulaCells(true);
        try (Workbook workbook = WorkbookFactory.create(xlsx.toFile(), null, true)) {
            workbook.forEach(sheet -> sheet.forEach(row ->
                    row.forEach(c -> text.append(shown.formatCellValue(c)).append(' '))));
        }
        return text.toString();
    }

    @Test
    void the_same_log_gives_the_same_bytes() throws Exception {
        copied("exchange school.csv");
        copied("exchange school-setup.xlsx");

        Jar.run(folder, "report", "exchange school.csv", "--out", "a");
        Jar.run(folder, "report", "exchange school.csv", "--out", "b");

        for (String ending : List.of("html", "xlsx")) {
            String name = "exchange school report 2026-07." + ending;
            assertThat(folder.resolve("a").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("b").resolve(name));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"missing.xlsx", "empty.xlsx", "cut.xlsx", "picture.xlsx", "no dates.csv", "."})
    void what_is_no_log_gives_one_clear_line_and_leaves_nothing_behind(String name) throws Exception {
        prepare(name);
        List<String> before = left();

        Jar.Ran ran = Jar.run(folder, "report", name);

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err().strip().lines()).as(ran.err()).hasSize(1);
        assertThat(ran.err()).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(ran.out()).isEmpty();
        assertThat(left()).isEqualTo(before);
    }

    private void prepare(String name) throws IOException {
        Path file = folder.resolve(name);
        switch (name) {
            case "empty.xlsx" -> Files.createFile(file);
            case "cut.xlsx" -> {
                byte[] whole = Files.readAllBytes(SAMPLES.resolve("club log.xlsx"));
                Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 2));
            }
            case "picture.xlsx" -> Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 1, 2});
            case "no dates.csv" -> Files.writeString(file, "item,price\nsalt,58\ntubes,8\n", StandardCharsets.UTF_8);
            default -> {
                // "missing.xlsx" and the folder itself need nothing.
            }
        }
    }

    @Test
    void a_folder_that_cannot_be_written_gives_one_clear_line() throws Exception {
        copied("exchange school.csv");
        Files.writeString(folder.resolve("file"), "not a folder");

        Jar.Ran ran = Jar.run(folder, "report", "exchange school.csv", "--out", "file");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err().strip().lines()).as(ran.err()).hasSize(1);
        assertThat(ran.err()).contains("cannot write");
    }

    @Test
    void a_bad_log_does_not_stop_the_next() throws Exception {
        copied("exchange school.csv");

        Jar.Ran ran = Jar.run(folder, "report", "missing.xlsx", "exchange school.csv", "--out", "reports");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err()).contains("missing.xlsx");
        assertThat(ran.out()).contains("exchange school report 2026-07.html");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "repport x.xlsx", "report", "report x.xlsx --month soon"})
    void wrong_usage_exits_with_two_and_says_what_is_right(String line) throws Exception {
        Jar.Ran ran = Jar.run(folder, line.isEmpty() ? new String[0] : line.split(" "));

        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).isNotBlank();
    }
}
