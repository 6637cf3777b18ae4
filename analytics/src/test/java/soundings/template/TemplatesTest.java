package soundings.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
    private static final List<Signature> ITEMS =
            List.of(new Signature("actions", List.of()), new Signature("level", List.of("tank", "test")));
    private static final Map<String, Object> MODEL = Map.of(
            "month", "October 2026",
            "nasty", "*a* <b> [x](y) `c` # d\n\n# e ![i](j) &amp; \u0002item 0\u0002",
            "tanks", List.of(Map.of("name", "Display", "litres", 450)));

    private static Printed ours(String text) {
        return Templates.print(new Source("test.md", text, true), MODEL, ITEMS);
    }

    private static Printed stranger(String text) {
        return Templates.print(new Source("theirs.md", text, false), MODEL, ITEMS);
    }

    @Test
    void an_item_leaves_its_place_and_its_arguments() {
        Printed printed = ours("before\n<@level tank='Display' test='alkalinity'/>\nafter");

        assertThat(printed.calls())
                .containsExactly(new Printed.Call("level", Map.of("tank", "Display", "test", "alkalinity"), 2));
        assertThat(printed.markdown().lines().mapToInt(Printed::findCall).max()).hasValue(0);
    }

    @Test
    void no_value_can_become_markup_or_forge_an_item() {
        String printed = ours("${nasty}").markdown();

        assertThat(printed)
                .isEqualTo("\\*a\\* \\<b\\> \\[x\\]\\(y\\) \\`c\\` \\# d \\# e \\!\\[i\\]\\(j\\) \\&amp\\; item 0");
    }

    @Test
    void a_strangers_template_prints_what_ours_would() {
        String text = "# ${month}\n<#list tanks as tank>\n- ${tank.name}: ${tank.litres} L\n</#list>\n<@actions/>\n";

        assertThat(stranger(text)).isEqualTo(ours(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        ${mnoth}                          | line 1: there is no 'mnoth' here. Is 'month' meant? Names: month, nasty, tanks. Items: <@actions/>
        <@chrat/>                         | there is no 'chrat' here
        <#list tanks as t>${t.lites}</#list> | there is no 't.lites' here. Is 'litres' meant? Names that follow a dot: litres, name.
        <@level tank='x'/>                | write it as <@level tank=... test=.../>
        <#list tanks as t>                | line 1: a <#list ...> or <#if ...> is not closed
        <@actions>                        | line 1: an item is not closed: write it with a slash, as <@actions/>
        ${                                | line 1
        <#include 'other.md'>             | line 1: a notebook can take in no other file
        ${'freemarker.template.utility.Execute'?new()('id')} | line 1: a notebook can start nothing
        ${month?api.getClass()}           | line 1
        ${month.class.name}               | line 1
        ${nasty?no_esc}                   | line 1
        <#macro m><@m/></#macro><@m/>     | calls itself without end
        """)
    void an_error_names_the_template_the_line_and_what_would_be_valid(String text, String said) {
        assertThatThrownBy(() -> ours(text))
                .isInstanceOf(TemplateProblem.class)
                .hasMessageStartingWith("test.md")
                .hasMessageContaining(said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{{bogus}}",
                "{{ month }}",
                "$(month)",
                "{month}",
                "< @actions/>",
                "<@ actions/>",
                "<actions/>",
                "[@actions/]",
                "@actions",
                "<#-- a\ncomment --> {{x}}"
            })
    void what_looks_like_a_value_or_an_item_is_not_printed_as_it_stands(String text) {
        int line = 3 + (int) text.lines().count() - 1;

        assertThatThrownBy(() -> stranger("# A title\n\n" + text))
                .isInstanceOf(TemplateProblem.class)
                .hasMessageStartingWith("theirs.md, line " + line + ": '")
                .hasMessageContaining("would be printed as it stands")
                .hasMessageContaining("<@actions/>");
    }

    @Test
    void plain_text_may_hold_brackets_and_signs() {
        String text = "## Alkalinity {#alk}\n\nwrite <me@example.org> or {see below}, 5 < 6 > 4\n";

        assertThat(stranger(text)).isEqualTo(ours(text));
    }

    @Test
    void a_loop_that_prints_is_stopped() {
        assertThatThrownBy(() -> stranger("<#list 1.. as i>${i} and on </#list>"))
                .isInstanceOf(TemplateProblem.class)
                .hasMessageContaining("prints more than a report can hold");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<#list 1.. as i></#list>",
                "<#list 1.. as i><#assign x = i></#list>",
            })
    void a_loop_that_prints_nothing_is_stopped_with_its_process(String text) {
        assertThatThrownBy(() ->
                        ChildRun.within(Duration.ofMillis(1500), new Source("theirs.md", text, false), MODEL, ITEMS))
                .isInstanceOf(TemplateProblem.class)
                .hasMessageContaining("stopped after");
    }

    @Test
    void a_text_that_doubles_for_ever_runs_out_of_memory_in_its_own_process() {
        String bomb = "<#assign s = 'aaaaaaaaaaaaaaaa'><#list 1..60 as i><#assign s = s + s></#list>${s?length}";

        assertThatThrownBy(() -> stranger(bomb))
                .isInstanceOf(TemplateProblem.class)
                .hasMessageContaining("theirs.md");
    }

    @Test
    void every_shipped_notebook_says_what_it_answers() {
        assertThat(Shipped.NAMES)
                .allSatisfy(name -> assertThat(Shipped.answers(name)).hasSizeGreaterThan(20));
        assertThat(Shipped.file("copy.md", Shipped.named("monthly").text()).ours())
                .isTrue();
        assertThatThrownBy(() -> Shipped.named("weekly")).hasMessageContaining("monthly");
    }
}
