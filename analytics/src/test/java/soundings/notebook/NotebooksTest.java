package soundings.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import soundings.template.Shipped;

class NotebooksTest {
    @Test
    void the_monthly_notebook_says_first_what_to_do() {
        Notebook notebook = Notebooks.run(Shipped.named("monthly"), MarineClub.findings());

        assertThat(notebook.title()).isEqualTo("October 2026");
        assertThat(notebook.sections().get(0).heading()).isEqualTo("What to do");
        System.out.println(notebook.sections().stream()
                .map(s -> s.depth() + " " + s.id() + " " + s.heading() + " "
                        + s.items().size())
                .toList());
    }
}
