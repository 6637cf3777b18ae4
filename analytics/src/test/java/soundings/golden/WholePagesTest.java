package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.html.HtmlPage;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;

/** Whole pages of the sample workbooks, through every stage. */
class WholePagesTest {
    private static final int HALF_A_MEGABYTE = 500_000;

    private static String page(String notebook, String file) {
        return HtmlPage.of(Notebooks.run(Shipped.named(notebook), Sampled.findings(file)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG"})
    void the_same_log_gives_the_same_page_whatever_the_machine_speaks_and_wherever_it_stands(String language) {
        String here = page("monthly", "trace elements.xlsx");
        Locale spoken = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));

            assertThat(page("monthly", "trace elements.xlsx")).isEqualTo(here);
        } finally {
            Locale.setDefault(spoken);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @CsvSource({"monthly,club log.xlsx", "mentor,club log.xlsx", "new-tank,clinic log.xlsx", "course,clinic log.xlsx"})
    void every_link_leads_somewhere_and_every_name_is_given_once(String notebook, String file) {
        Document page = Jsoup.parse(page(notebook, file));

        List<String> ids = page.select("[id]").eachAttr("id");
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(page.select("a[href]").eachAttr("href"))
                .allSatisfy(to -> assertThat(ids).contains(to.substring(1)));
    }

    @Test
    void the_clubs_page_is_light_enough_to_send() {
        assertThat(page("monthly", "club log.xlsx").getBytes(StandardCharsets.UTF_8))
                .hasSizeLessThan(HALF_A_MEGABYTE);
    }
}
