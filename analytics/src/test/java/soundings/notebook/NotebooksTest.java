package soundings.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.template.Shipped;
import soundings.template.Source;
import soundings.template.TemplateProblem;

class NotebooksTest {
    private static Notebook run(String text) {
        return Notebooks.run(new Source("mine.md", text, true), MarineClub.findings(60));
    }

    static java.util.List<String> shipped() {
        return Shipped.NAMES;
    }

    @Test
    void the_monthly_notebook_says_first_what_to_do() {
        Notebook notebook = Notebooks.run(Shipped.named("monthly"), MarineClub.findings());

        assertThat(notebook.title()).isEqualTo("October 2026");
        assertThat(notebook.subtitle()).isEqualTo("Marine club log.xlsx, read up to 31 Oct 2026");
        assertThat(notebook.sections().get(0).heading()).isEqualTo("What to do");
        assertThat(notebook.sections().get(0).items().get(0)).isInstanceOf(ActionList.class);
        assertThat(notebook.sections().get(1).items().get(0))
                .as("a sentence a tank before the table")
                .isInstanceOf(Prose.class);
        assertThat(notebook.sections().get(1).items().get(1)).isInstanceOf(TableItem.class);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void every_shipped_notebook_runs_and_ends_with_what_it_was_made_from(String name) {
        Notebook notebook = Notebooks.run(Shipped.named(name), MarineClub.findings());

        assertThat(notebook.tables().map(TableItem::id)).contains("provenance");
        assertThat(notebook.title()).contains("October 2026");
    }

    @Test
    void the_guide_for_keepers_lists_every_item_there_is() throws java.io.IOException {
        String guide = java.nio.file.Files.readString(java.nio.file.Path.of("docs", "notebook-guide.md"));

        assertThat(Notebooks.offered()).allSatisfy(item -> {
            int end = item.indexOf("/>") + 2;
            assertThat(guide)
                    .contains("| `" + item.substring(0, end) + "` | "
                            + item.substring(end).strip() + " |");
        });
    }

    @Test
    void a_keepers_notebook_mixes_prose_and_items() {
        Notebook notebook = run("""
                # Mine
                About ${month}

                ## One {#first}
                Some *words* and **more**, see [below](#second) or [elsewhere](https://example.org).

                > The finding.

                > **Caution.** Take care.

                - a
                - b

                <script>alert(1)</script>

                ## Two {#second}
                <@provenance/>
                """);

        assertThat(notebook.subtitle()).isEqualTo("About October 2026");
        Prose prose = (Prose) notebook.sections().get(0).items().get(0);
        assertThat(prose.blocks().stream().map(b -> b.kind() + ": " + b.text()))
                .containsExactly(
                        "PARAGRAPH: Some words and more, see below or elsewhere (https://example.org).",
                        "FINDING: The finding.",
                        "CAUTION: Caution. Take care.",
                        "BULLET: a",
                        "BULLET: b",
                        "PARAGRAPH: <script>alert(1)</script>");
        assertThat(prose.blocks().get(0).spans().stream().map(Prose.Span::target))
                .contains("second");
        assertThat(notebook.sections().get(1).items().get(0)).isInstanceOf(TableItem.class);
    }

    @Test
    void a_tank_or_test_that_is_not_there_is_named_with_those_that_are() {
        assertThatThrownBy(() -> run("# A\n\n<@ranges tank='Dsiplay'/>"))
                .isInstanceOf(TemplateProblem.class)
                .hasMessage("mine.md, line 3: no tank 'Dsiplay'; there are Display, Frag tank, Quarantine");
        assertThatThrownBy(() -> run("# A\n<@level tank='Display' test='kalk'/>"))
                .hasMessageStartingWith(
                        "mine.md, line 2: no test 'kalk' in tank 'Display'; there are alkalinity, calcium");
    }

    @Test
    void figures_are_printed_alike_on_every_machine() {
        assertThat(Figures.number(-0.05, 2)).isEqualTo("−0.05");
        assertThat(Figures.number(-0.004, 2)).isEqualTo("0.00");
        assertThat(Figures.number(2.675, 2)).isEqualTo("2.68");
        assertThat(Figures.change(0.04, 1)).isEqualTo("0.0");
        assertThat(Figures.sure(0.999)).isEqualTo("almost certain, 99 in 100");
        assertThat(Figures.with("8.1", "ph")).isEqualTo("8.1");
        assertThat(Figures.with("25", "Cel")).isEqualTo("25 °C");
    }

    @Test
    void a_months_mean_leaves_out_what_is_only_known_to_lie_below() {
        Notebook notebook = run("# A\n<@months tank='Display'/>");

        TableItem months = notebook.tables().findFirst().orElseThrow();
        assertThat(months.rows()).hasSize(2);
        assertThat(months.rows().get(0).cells().get(0)).isEqualTo(Cell.words("October 2026"));
        assertThat(months.columns().get(1).heading()).isEqualTo("Alkalinity");
        double expected = MarineClub.findings(60).history().tanks().get(0).series().get(0).used().stream()
                .filter(p -> p.reading().date().getMonthValue() == 10)
                .mapToDouble(p -> p.reading().amount().about())
                .average()
                .orElseThrow();
        assertThat(((Cell.Number) months.rows().get(0).cells().get(1)).value())
                .isCloseTo(expected, org.assertj.core.data.Offset.offset(1e-9));
    }
}
