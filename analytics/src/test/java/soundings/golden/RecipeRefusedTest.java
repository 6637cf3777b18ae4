package soundings.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import soundings.Analysis;
import soundings.findings.Provenance;
import soundings.html.HtmlPage;
import soundings.notebook.Notebooks;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.sheet.Book;
import soundings.template.Shipped;

/** A keeper who has written down what was mixed is not told that nothing is known of it. */
class RecipeRefusedTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 4);
    private static final String PAGE = page();

    @Test
    void page_one_says_that_the_recipe_could_not_be_read_why_and_where_it_stands() {
        assertThat(PAGE)
                .contains("Write the recipe of soda anew (Additives!C2)")
                .contains("the recipe \"60 g soda (sodium carbonate) in 1 L\" of soda could not be read: ")
                .contains("may be Na2CO3 or Na2CO3·H2O or Na2CO3·10H2O: write the formula")
                .doesNotContain("how strong your additives are");
    }

    @Test
    void a_recipe_without_its_parameter_is_told_with_its_cell_what_it_raises() {
        assertThat(PAGE)
                .contains("The recipe is not used: the column Parameter does not say what it is given for")
                .contains("Additives!C3")
                .containsPattern("this recipe raises [a-z, ]*iodine");
    }

    @Test
    void one_that_raises_one_thing_besides_salt_is_used_and_that_is_told() {
        assertThat(PAGE).contains("Additives!C4").contains("The recipe is taken to be given for calcium");
    }

    private static String page() {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"Date", "Alk dKH", "soda ml/day"});
        for (int i = 0; i <= 15; i++) {
            rows.add(new String[] {FIRST.plusDays(2L * i).toString(), i % 2 == 0 ? "8.0" : "8.1", i == 0 ? "20" : ""});
        }
        Book setup = new Book(
                "setup",
                List.of(
                        AddedByRowsTest.grid(
                                "Tanks", List.of(new String[] {"Tank", "Litres"}, new String[] {"Log", "200"})),
                        AddedByRowsTest.grid(
                                "Additives",
                                List.of(
                                        new String[] {"Additive", "Parameter", "Recipe"},
                                        new String[] {"soda", "alkalinity", "60 g soda (sodium carbonate) in 1 L"},
                                        new String[] {"blue bottle", "", "KI 5 g in 1 L"},
                                        new String[] {"lime", "", "CaCl2.2H2O 80 g in 1 L"}))),
                List.of());
        return Jsoup.parse(HtmlPage.of(Notebooks.run(
                        Shipped.named("monthly"),
                        Analysis.of(
                                new Book("log", List.of(AddedByRowsTest.grid("Log", rows)), List.of()),
                                Optional.of(setup),
                                new Provenance("log.xlsx", "0".repeat(64), "log-setup.xlsx", "", "1.0.0"),
                                ReferenceTables.load(),
                                new Settings(FIRST.plusDays(31), Optional.empty())))))
                .text();
    }
}
