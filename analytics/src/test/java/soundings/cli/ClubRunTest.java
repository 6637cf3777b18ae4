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
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder of small invented logs, run on 2 November 2026. */
class ClubRunTest {
    private static final int LOGS = 40;
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), CLOCK, args);
    }

    /** Alkalinity every third day up to {@code last}, steady in the middle of its range. */
    private void log(String name, LocalDate last, String note) throws IOException {
        StringBuilder text = new StringBuilder("Date,Alkalinity dKH,Notes\n");
        for (int back = 30; back >= 0; back -= 3) {
            text.append(last.minusDays(back))
                    .append(",8.")
                    .append(back % 2)
                    .append(',')
                    .append(back == 0 ? note : "")
                    .append('\n');
        }
        Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
    }

    private Document index(String month) throws IOException {
        return Jsoup.parse(folder.resolve("club index " + month + ".html").toFile(), "UTF-8");
    }

    private static List<String> names(Document index) {
        return index.select("tbody th").eachText();
    }

    @Test
    void every_log_of_a_folder_is_reported_and_the_index_links_to_each() throws IOException {
        for (int i = 0; i < LOGS; i++) {
            log("pupil " + (100 + i) + ".csv", LocalDate.of(2026, 10, 31), "");
        }

        int exit = run("report", folder.toString(), "--quiet");

        assertThat(err.toString()).isEmpty();
        assertThat(exit).isZero();
        assertThat(out.toString().lines()).hasSize(2 * LOGS + 1);
        Document index = index("2026-10");
        assertThat(names(index)).hasSize(LOGS);
        for (Element link : index.select("tbody a")) {
            String file = java.net
                    .URI
                    .create(link.attr("href").replaceFirst("^\\./", ""))
                    .getPath();
            assertThat(folder.resolve(file)).isRegularFile();
        }
    }

    @Test
    void who_may_lose_animals_stands_first_then_what_could_not_be_read_then_who_has_stopped_testing()
            throws IOException {
        log("calm.csv", LocalDate.of(2026, 10, 31), "");
        log("quiet.csv", LocalDate.of(2026, 9, 30), "");
        log("heater.csv", LocalDate.of(2026, 10, 31), "heater broken");
        Files.writeString(folder.resolve("broken.xlsx"), "no workbook");

        int exit = run("report", folder.toString(), "--quiet");

        assertThat(exit).isEqualTo(1);
        assertThat(err.toString().lines()).singleElement().asString().contains("broken.xlsx");
        Document index = index("2026-10");
        assertThat(names(index)).containsExactly("heater.csv", "broken.xlsx", "quiet.csv", "calm.csv");
        assertThat(index.select("tbody tr").get(0).text()).contains("heater broken");
        assertThat(index.select("tbody tr").get(1).text()).contains("no report");
        assertThat(index.select("tbody tr").get(2).text())
                .contains("no test for 33 days"); // 30 September to 2 November
    }

    @Test
    void reports_setups_and_the_index_are_no_logs_when_the_folder_is_run_again() throws IOException {
        log("one.csv", LocalDate.of(2026, 10, 31), "");
        run("report", folder.toString(), "--quiet");
        List<String> first = names(index("2026-10"));
        run("setup", folder.resolve("one.csv").toString(), "--quiet");

        run("report", folder.toString(), "--quiet");

        assertThat(names(index("2026-10"))).isEqualTo(first).containsExactly("one.csv");
    }

    @Test
    void names_are_text_and_links_stay_inside_the_folder() throws IOException {
        log("javascript:alert(1)&<b>#?%.csv", LocalDate.of(2026, 10, 31), "");

        run("report", folder.toString(), "--quiet");

        Document index = index("2026-10");
        assertThat(names(index)).containsExactly("javascript:alert(1)&<b>#?%.csv");
        assertThat(index.select("tbody b")).isEmpty();
        assertThat(index.select("tbody a").attr("href")).startsWith("./javascript:alert(1)&%3Cb%3E%23%3F%25");
    }

    @Test
    void two_logs_of_one_name_do_not_overwrite_each_others_report() throws IOException {
        log("reef.csv", LocalDate.of(2026, 10, 31), "");
        log("reef.tsv", LocalDate.of(2026, 10, 31), "");

        int exit = run("report", folder.toString(), "--quiet");

        assertThat(exit).isEqualTo(1);
        assertThat(err.toString()).contains("reef.tsv").contains("rename");
    }

    @Test
    void out_takes_reports_and_index_and_the_folder_stays_as_it_was() throws IOException {
        log("one.csv", LocalDate.of(2026, 10, 31), "");

        run(
                "report",
                folder.toString(),
                "--quiet",
                "--out",
                folder.resolve("reports").toString());

        try (Stream<Path> files = Files.list(folder.resolve("reports"))) {
            assertThat(files.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrder(
                            "club index 2026-10.html", "one report 2026-10.html", "one report 2026-10.xlsx");
        }
        assertThat(folder.resolve("club index 2026-10.html")).doesNotExist();
    }

    @Test
    void a_folder_without_a_log_and_a_setup_for_a_whole_folder_are_refused() {
        assertThat(run("report", folder.toString())).isEqualTo(1);
        assertThat(err.toString()).contains("no log in this folder");
        assertThat(run("report", folder.toString(), "--json", "x.json")).isEqualTo(2);
    }
}
