package soundings.blackbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.golden.Sampled;
import soundings.html.HtmlPage;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;

/**
 * The rules of axe-core in a real browser, with everything folded laid open: all of them in light, those on colour again in
 * dark. What would have to be scrolled to is shown in full, as no colour can be seen of what is out of sight.
 */
class AccessibleIT {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "club log.xlsx, monthly",
        "clinic log.xlsx, monthly",
        "clinic log.xlsx, course",
        "club log.xlsx, new-tank",
        "trace elements.xlsx, traces"
    })
    void a_report_breaks_no_rule(String file, String notebook) throws IOException, InterruptedException {
        Optional<Browser> browser = Browser.find();
        assumeThat(browser).as("a browser on the path; not checked without").isPresent();
        String page = HtmlPage.of(Notebooks.run(Shipped.named(notebook), Sampled.findings(file)));
        Path copy = Files.writeString(folder.resolve("report.html"), withRules(page), StandardCharsets.UTF_8);

        String after = browser.get().after(copy, folder);

        JsonNode found =
                new ObjectMapper().readTree(Jsoup.parse(after).select("#found").text());
        assertThat(found).as("a run as it is, one in light, one in dark").hasSize(3);
        for (JsonNode scheme : found) {
            String name = scheme.get("scheme").asText();
            assertThat(texts(scheme.get("violations"))).as(name).isEmpty();
            assertThat(scheme.get("passes").asInt())
                    .as("rules passed, " + name)
                    .isGreaterThanOrEqualTo(name.equals("light") ? 30 : 0);
            assertThat(texts(scheme.get("undecided")))
                    .as("contrast left to ContrastTest: a chart's words, " + name)
                    .allMatch(node -> node.startsWith("<text "));
        }
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(node -> texts.add(node.asText()));
        return texts;
    }

    /** The page itself lets no script run, so the copy goes without that rule. */
    private static String withRules(String page) throws IOException {
        Document document = Jsoup.parse(page);
        document.select("meta[http-equiv=Content-Security-Policy]").remove();
        document.select("details").attr("open", "");
        document.body().appendElement("script").appendChild(new org.jsoup.nodes.DataNode(rules()));
        document.body().appendElement("script").appendChild(new org.jsoup.nodes.DataNode(RUN));
        return document.outputSettings(new Document.OutputSettings().prettyPrint(false))
                .outerHtml();
    }

    private static final String RUN = """
            (async () => {
              const told = ran => ran.violations.flatMap(rule =>
                rule.nodes.map(node => rule.id + ': ' + node.html + ' ' + node.failureSummary));
              const scrolled = await axe.run(document, {runOnly: ['scrollable-region-focusable']});
              const found = [{scheme: 'scrolled', passes: 0, violations: told(scrolled), undecided: []}];
              const open = document.createElement('style');
              open.textContent = '.scroll, nav ul { overflow: visible !important }';
              document.head.append(open);
              for (const scheme of ['light', 'dark']) {
                if (scheme === 'dark') {
                  const style = document.querySelector('style');
                  style.textContent = style.textContent.replace('(prefers-color-scheme: dark)', 'all');
                }
                const ran = await axe.run(document, {
                  resultTypes: ['violations', 'incomplete'],
                  preload: false,
                  ...(scheme === 'dark' ? {runOnly: ['color-contrast', 'link-in-text-block']} : {})
                });
                const contrast = ran.incomplete.filter(rule => rule.id === 'color-contrast');
                found.push({
                  scheme,
                  paper: getComputedStyle(document.documentElement).backgroundColor,
                  passes: ran.passes.length,
                  violations: told(ran),
                  undecided: contrast.flatMap(rule => rule.nodes)
                    .map(node => node.html + ' ' + node.any.map(check => check.data && check.data.messageKey).join())
                });
              }
              const shown = document.createElement('pre');
              shown.id = 'found';
              shown.textContent = JSON.stringify(found);
              document.body.replaceChildren(shown);
            })();
            """;

    private static String rules() throws IOException {
        Properties artifact = new Properties();
        try (InputStream in =
                AccessibleIT.class.getResourceAsStream("/META-INF/maven/org.webjars.npm/axe-core/pom.properties")) {
            artifact.load(in);
        }
        String path = "/META-INF/resources/webjars/axe-core/" + artifact.getProperty("version") + "/axe.min.js";
        try (InputStream in = AccessibleIT.class.getResourceAsStream(path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
