package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.YearMonth;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import soundings.findings.Findings;
import soundings.html.HtmlPage;
import soundings.notebook.Notebook;
import soundings.notebook.Notebooks;
import soundings.template.Shipped;

/** What a tired keeper sees first: what to do, and how every tank stands. */
class FirstScreenTest {
    private static Document page(Findings findings) {
        return Jsoup.parse(HtmlPage.of(Notebooks.run(Shipped.named("monthly"), findings)));
    }

    private static Element row(Document page, String tank, String test) {
        Element heading = page.select("#summary-table tr.group").stream()
                .filter(r -> r.text().equals(tank))
                .findFirst()
                .orElseThrow();
        return heading.parent().select("tr").stream()
                .filter(r -> r.text().startsWith(test))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_tank_that_was_begun_later_has_no_part_in_an_earlier_months_report() {
        Notebook september =
                Notebooks.run(Shipped.named("mentor"), Sampled.findings("club log.xlsx", YearMonth.of(2026, 9)));
        Notebook october = Notebooks.run(Shipped.named("mentor"), Sampled.findings("club log.xlsx"));

        Document before = Jsoup.parse(HtmlPage.of(september));
        Document since = Jsoup.parse(HtmlPage.of(october));

        assertThat(before.select("h2").eachText()).contains("Frag shelf").doesNotContain("Starter tub");
        assertThat(before.select("#questions, #summary-table").text()).doesNotContain("Starter tub");
        assertThat(since.select("h2").eachText()).contains("Starter tub");
    }

    @Test
    void without_a_setup_workbook_the_first_thing_is_to_say_what_no_dose_can_be_worked_out_without() {
        Elements entries = page(Sampled.withoutSetup("one line a test.xlsx")).select(".actions > li");

        assertThat(entries.get(0).text())
                .contains(
                        "Enter in the setup workbook how much water your tanks hold and how strong your additives are")
                .contains("Sheet Tanks, column Litres: Corridor and Cave")
                .contains("alkalinity mix and calcium mix")
                .contains("one line a test-setup.xlsx");
        assertThat(entries.eachText()).noneMatch(e -> e.contains("Enter what"));
    }

    @Test
    void a_long_sentence_and_a_caution_are_written_out_once() {
        Document page = page(Sampled.findings("club log.xlsx"));

        assertThat(page.select(".actions .caution")).extracting(Element::text).doesNotHaveDuplicates();
        assertThat(page.select(".actions .why").eachText())
                .filteredOn(why -> why.contains("Less food, a cleaner filter"))
                .hasSize(1);
        assertThat(page.select(".actions").text()).containsPattern("Caution\\. As under \\d");
    }

    @Test
    void what_a_tank_gains_is_not_called_a_use_below_nothing() {
        Element nitrate = row(page(Sampled.findings("club log.xlsx")), "Library reef", "Nitrate");

        assertThat(nitrate.select("[data-h=Use a day]").text())
                .contains("gained")
                .doesNotContain("\u2212");
    }

    @Test
    void a_poison_in_the_last_test_is_not_smoothed_away() {
        Element ammonia = row(page(Sampled.findings("clinic log.xlsx")), "Sick bay", "Total ammonia");

        assertThat(ammonia.select("[data-h=Verdict]").text()).isEqualTo("high");
        assertThat(ammonia.select("[data-h=Level]").text()).isEqualTo("last 0.250 mg/L");
    }

    @Test
    void what_cannot_be_told_has_no_certainty() {
        Document page = page(Sampled.findings("clinic log.xlsx"));

        Elements untold = page.select("#summary-table .unsure");
        assertThat(untold).isNotEmpty();
        for (Element verdict : untold) {
            assertThat(verdict.closest("tr").select("[data-h=How sure]").text()).doesNotContain("in 100");
        }
    }

    @Test
    void what_is_later_than_the_report_is_not_called_set_aside() {
        Document page = page(Sampled.findings("club log.xlsx", YearMonth.of(2026, 9)));

        assertThat(page.select("#set-aside td").eachText()).noneMatch(t -> t.contains("Oct 2026"));
    }

    /**
     * 1 meq/L is 2.804 dKH: a German degree is 10 mg of CaO in a litre (its definition), and 28.04 mg of CaO are a milliequivalent (Ca
     * 40.078, O 15.999, IUPAC standard atomic weights; two charges).
     */
    @Test
    void a_unit_shown_is_told_once_beside_the_one_worked_out_in() {
        String units = page(Sampled.findings("club log.xlsx")).select("#units").text();

        double shown = figure(units, "([0-9.]+) meq/L is [0-9.]+ dKH");
        double worked = figure(units, "[0-9.]+ meq/L is ([0-9.]+) dKH");
        assertThat(worked / shown).isCloseTo(2.804, within(0.02));
    }

    private static double figure(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertThat(found.find()).as(pattern + " in " + text).isTrue();
        return Double.parseDouble(found.group(1));
    }
}
