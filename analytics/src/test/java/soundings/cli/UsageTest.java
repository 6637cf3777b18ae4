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
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a wrong option or a missing piece: what is wrong and what would be right, never a class name. */
class UsageTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK, args);
    }

    private String log() throws IOException {
        Path log = folder.resolve("reef.csv");
        String text =
                "Date,Alkalinity dKH\n2026-08-03,8.1\n2026-08-10,8.0\n2026-08-17,8.0\n2026-10-05,8.2\n2026-10-12,8.1\n";
        return Files.writeString(log, text, StandardCharsets.UTF_8).toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-13", "soon", "10/2026", "2026", "2026-9"})
    void a_month_that_is_none_is_wrong_usage_and_the_right_form_is_named(String month) throws IOException {
        assertThat(run("report", log(), "--month", month)).isEqualTo(2);
        assertThat(err.toString()).contains("'" + month + "' is no month").contains("2026-09");
        assertThat(err.toString()).doesNotContain("java").doesNotContain("Exception");
    }

    @ParameterizedTest
    @ValueSource(strings = {"report", "inspect"})
    void a_password_for_a_log_that_has_none_is_said_not_to_be_needed(String command) throws IOException {
        assertThat(run(command, log(), "--password", "guess")).isZero();
        assertThat(err.toString()).contains("reef.csv has no password; the one given was not needed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"2030-01", "2020-01", "2026-09"})
    void a_month_without_a_test_is_refused_with_the_months_there_are(String month) throws IOException {
        assertThat(run("report", log(), "--month", month)).isEqualTo(1);
        assertThat(err.toString())
                .isEqualTo("reef.csv: nothing was tested in " + month + "; there are tests of 2026-08, 2026-10"
                        + System.lineSeparator());
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void a_month_with_tests_is_reported() throws IOException {
        assertThat(run("report", log(), "--month", "2026-08")).isZero();
        assertThat(folder.resolve("reef report 2026-08.html")).isRegularFile();
    }

    @ParameterizedTest
    @CsvSource({
        "'2026-01', '2026-01'",
        "'2025-11 2025-12 2026-01', '2025-11 to 2026-01'",
        "'2025-01 2025-02 2025-04 2025-06 2025-07', '2025-01 to 2025-02, 2025-04, 2025-06 to 2025-07'",
    })
    void months_in_a_row_are_one_span(String months, String words) {
        TreeSet<YearMonth> all = new TreeSet<>();
        List.of(months.split(" ")).forEach(m -> all.add(YearMonth.parse(m)));

        assertThat(Checks.inWords(all)).isEqualTo(words);
    }

    @ParameterizedTest
    @ValueSource(strings = {"blank.csv", "blank", "blank.xls"})
    void a_blank_log_is_a_workbook_and_nothing_else(String name) {
        Path file = folder.resolve(name);

        assertThat(run("starter", file.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("ends in .xlsx");
        assertThat(file).doesNotExist();
    }

    @Test
    void a_blank_log_comes_with_its_blank_companion_and_neither_overwrites_what_is_there() throws IOException {
        Path file = folder.resolve("mine.xlsx");
        Path setup = folder.resolve("mine-setup.xlsx");

        assertThat(run("starter", file.toString())).isZero();
        assertThat(out.toString().lines()).containsExactly(file.toString(), setup.toString());
        byte[] blank = Files.readAllBytes(setup);
        Files.delete(file);
        assertThat(run("starter", file.toString())).isZero();
        assertThat(run("starter", file.toString())).isEqualTo(1);

        assertThat(setup).hasBinaryContent(blank);
        assertThat(run("setup", file.toString())).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "KI 5 g, the volume it is made up to is missing",
        "KI in 1 L, the weight of what is dissolved is missing",
        "strong iodine, weight and volume are missing",
    })
    void a_recipe_is_named_once_with_what_it_lacks(String recipe, String lack) {
        assertThat(run("stock", recipe)).isEqualTo(1);
        assertThat(err.toString()).startsWith("\"" + recipe + "\": " + lack);
        assertThat(err.toString()).containsOnlyOnce(recipe.equals("KI 5 g") ? "\"KI 5 g\"" : recipe);
    }

    @Test
    void report_and_inspect_open_a_log_with_the_same_options() {
        run("report", "--help");
        run("inspect", "--help");

        for (String option : List.of("--setup=FILE", "--json=FILE", "--password=WORD", "--quiet")) {
            assertThat(out.toString().split(option, -1)).as(option).hasSizeGreaterThan(2);
        }
    }

    @Test
    void times_and_what_is_watched_are_for_a_terminal_and_not_for_a_pipe() {
        Console terminal = new Console(new PrintWriter(out, true), new PrintWriter(err, true), true);
        terminal.said("18:03:22 reef.csv");
        assertThat(err.toString()).contains("18:03:22");

        StringWriter piped = new StringWriter();
        new Console(new PrintWriter(out, true), new PrintWriter(piped, true), false).said("18:03:22 reef.csv");
        assertThat(piped.toString()).isEmpty();
    }
}
