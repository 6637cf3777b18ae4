package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import soundings.Analysis;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.html.HtmlPage;
import soundings.notebook.Notebooks;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.template.Shipped;
import soundings.workbook.WorkbookReader;

/** A whole report, word for word: any change of a figure or a sentence wants a human look ({@code -Dgolden.update} rewrites and fails). */
class GoldenReportTest {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");
    private static final Path GOLDEN = Path.of("src", "test", "resources", "golden", "trace elements.txt");

    @Test
    void the_trace_sample_reads_as_it_was_last_agreed() throws IOException {
        String now = words(HtmlPage.of(Notebooks.run(Shipped.named("monthly"), findings())));

        if (System.getProperty("golden.update") != null) {
            Files.writeString(GOLDEN, now, StandardCharsets.UTF_8);
            throw new AssertionError(
                    "the golden report was rewritten: read its difference, then run again without the update");
        }
        assertThat(now).isEqualTo(Files.readString(GOLDEN, StandardCharsets.UTF_8));
    }

    private static Findings findings() {
        return Analysis.of(
                WorkbookReader.read(SAMPLES.resolve("trace elements.xlsx"), Optional.empty()),
                Optional.of(WorkbookReader.read(SAMPLES.resolve("trace elements-setup.xlsx"), Optional.empty())),
                new Provenance("trace elements.xlsx", "0".repeat(64), "trace elements-setup.xlsx", "", "1.0.0"),
                ReferenceTables.load(),
                new Settings(LocalDate.of(2026, 10, 1), Optional.empty()));
    }

    /** What a reader reads, a line for each heading, sentence and table row; charts by their finding. */
    private static String words(String page) {
        Document document = Jsoup.parse(page);
        return document.select("h1, h2, h3, h4, p, li, tr, summary, [role=img]").stream()
                .map(e -> e.hasAttr("aria-label") ? "chart: " + e.attr("aria-label") : e.tagName() + ": " + e.text())
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
