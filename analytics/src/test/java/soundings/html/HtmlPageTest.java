package soundings.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import soundings.notebook.MarineClub;
import soundings.notebook.Notebook;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;

class HtmlPageTest {
    private static final Notebook NOTEBOOK = Notebooks.run(Shipped.named("monthly"), MarineClub.findings());
    private static final String PAGE = HtmlPage.of(NOTEBOOK);
    private static final Document DOCUMENT = Jsoup.parse(PAGE);

    @Test
    void nothing_is_loaded_and_nothing_can_run() {
        assertThat(DOCUMENT.select("script, iframe, object, embed, form, link, img, base"))
                .isEmpty();
        assertThat(DOCUMENT.select("[src], [srcset], [onload], [onclick], [onerror]"))
                .isEmpty();
        assertThat(DOCUMENT.select("a").eachAttr("href")).allMatch(href -> href.startsWith("#"));
        assertThat(DOCUMENT.select("meta[http-equiv=Content-Security-Policy]").attr("content"))
                .contains("default-src 'none'");
        assertThat(DOCUMENT.select("style").html()).doesNotContain("url(").doesNotContain("@import");
    }

    @Test
    void every_link_leads_somewhere_and_ids_are_unique() {
        List<String> ids = DOCUMENT.select("[id]").eachAttr("id");
        Set<String> unique = new HashSet<>(ids);
        assertThat(ids).hasSameSizeAs(unique);
        assertThat(DOCUMENT.select("a").eachAttr("href")).allMatch(href -> unique.contains(href.substring(1)));
    }

    @Test
    void a_cells_text_stays_text() {
        assertThat(DOCUMENT.text()).contains(MarineClub.NASTY);
        assertThat(PAGE).doesNotContain("<script").doesNotContain("alert('x')");
        assertThat(DOCUMENT.select("em, strong").eachText()).noneMatch(text -> text.contains("bold"));
    }

    @Test
    void the_page_has_landmarks_language_and_one_first_heading() {
        assertThat(DOCUMENT.select("html").attr("lang")).isEqualTo("en");
        assertThat(DOCUMENT.select("h1")).hasSize(1);
        assertThat(DOCUMENT.select("main")).hasSize(1);
        assertThat(DOCUMENT.select("nav[aria-label]")).hasSize(1);
    }

    @Test
    void every_chart_says_what_it_shows_in_words_and_in_a_table() {
        assertThat(DOCUMENT.select("svg.chart")).hasSizeGreaterThan(15).allSatisfy(svg -> {
            assertThat(svg.attr("role")).isEqualTo("img");
            assertThat(svg.attr("aria-label")).hasSizeGreaterThan(40);
            Element row = svg.closest(".body");
            assertThat(row == null ? "" : row.select("details.data table").text())
                    .isNotEmpty();
        });
        assertThat(DOCUMENT.select("svg.chart circle title")).isNotEmpty();
        assertThat(DOCUMENT.select("svg.chart text")).isNotEmpty();
    }

    @Test
    void the_same_notebook_gives_the_same_bytes() {
        assertThat(HtmlPage.of(Notebooks.run(Shipped.named("monthly"), MarineClub.findings())))
                .isEqualTo(PAGE);
    }

    @Test
    void two_years_of_eight_tests_weigh_less_than_half_a_megabyte() {
        String page = HtmlPage.of(Notebooks.run(Shipped.named("monthly"), MarineClub.findings(730)));

        assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(500_000);
    }
}
