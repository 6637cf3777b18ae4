package soundings.notebook;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import soundings.findings.Findings;
import soundings.notebook.table.Months;
import soundings.template.Printed;
import soundings.template.Source;
import soundings.template.TemplateProblem;
import soundings.template.Templates;

/** Runs notebooks: a template and the findings to a report. */
public final class Notebooks {
    private Notebooks() {}

    /** @throws TemplateProblem naming the template, the line and what would be valid */
    public static Notebook run(Source template, Findings findings) {
        View view = View.of(findings);
        Printed printed = Templates.print(
                template,
                Model.of(view),
                Items.ALL.stream().map(Offered::signature).toList());
        return MarkdownReading.of(printed.markdown(), index -> items(template, printed, index, view));
    }

    /** Loads what running a notebook needs, for those who have something else to wait for. */
    public static void prepare() {
        Templates.print(new Source("nothing", "", true), Map.of(), List.of());
        Months.prepare();
    }

    /** What a template may ask for, for the notebook guide and for messages: notation and what it answers. */
    public static List<String> offered() {
        return Items.ALL.stream().map(o -> o.signature() + " " + o.answers()).toList();
    }

    private static List<Item> items(Source template, Printed printed, int index, View view) {
        if (index >= printed.calls().size()) {
            throw TemplateProblem.at(template.name(), 0, "it prints the sign of an item that it did not ask for");
        }
        Printed.Call call = printed.calls().get(index);
        Offered offered = Items.ALL.stream()
                .filter(o -> o.signature().name().equals(call.name()))
                .findFirst()
                .orElseThrow(() -> TemplateProblem.at(
                        template.name(), call.line(), "no item '" + call.name() + "'; there are " + names()));
        try {
            return offered.items().apply(view, call.arguments());
        } catch (IllegalArgumentException e) {
            throw TemplateProblem.at(template.name(), call.line(), String.valueOf(e.getMessage()));
        }
    }

    private static String names() {
        return Items.ALL.stream().map(o -> o.signature().name()).collect(Collectors.joining(", "));
    }
}
