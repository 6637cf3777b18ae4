package soundings.blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club's folder as a mentor finds it: logs, their setups, a broken file, what open programs left behind. */
class FolderIT {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks").toAbsolutePath();

    @TempDir
    private Path folder;

    private void copied(String... names) throws IOException {
        for (String name : names) {
            Files.copy(SAMPLES.resolve(name), folder.resolve(name));
        }
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void every_log_is_reported_one_bad_file_stops_nothing_and_the_index_says_who_needs_a_look_first() throws Exception {
        copied("club log.xlsx", "club log-setup.xlsx", "exchange school.csv", "exchange school-setup.xlsx");
        Files.writeString(folder.resolve("broken.xlsx"), "no workbook", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("~$club log.xlsx"), "lock", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve(".~lock.club log.xlsx#"), "lock", StandardCharsets.UTF_8);
        Files.writeString(folder.resolve("minutes.txt"), "next meeting on Friday", StandardCharsets.UTF_8);
        List<String> before = left();

        Jar.Ran ran = Jar.run(folder, "report", ".");

        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.err().strip().lines()).singleElement().asString().contains("broken.xlsx");
        List<String> written = left().stream().filter(f -> !before.contains(f)).toList();
        assertThat(written)
                .containsExactly(
                        "club index 2026-10.html",
                        "club log report 2026-10.html",
                        "club log report 2026-10.xlsx",
                        "exchange school report 2026-07.html",
                        "exchange school report 2026-07.xlsx");
        assertThat(ran.out().strip().lines()).hasSize(written.size());
        Document index = Jsoup.parse(folder.resolve("club index 2026-10.html").toFile(), "UTF-8");
        assertThat(index.select("tbody th").eachText())
                .containsExactly("club log.xlsx", "broken.xlsx", "exchange school.csv");
        assertThat(index.select("tbody tr").get(0).text()).contains("return pump");
        assertThat(index.select("tbody tr").get(1).text()).contains("no report");
        assertThat(index.select("tbody a").eachAttr("href"))
                .containsExactly("./club%20log%20report%202026-10.html", "./exchange%20school%20report%202026-07.html");
    }
}
