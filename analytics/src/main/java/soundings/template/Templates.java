package soundings.template;

import java.util.List;
import java.util.Map;

/** Runs templates: our own in this process, any other in one that can be ended. */
public final class Templates {
    private Templates() {}

    /**
     * @param model maps, lists, texts, numbers and truth values, nothing else
     * @throws TemplateProblem naming the template, the line and what would be valid
     */
    public static Printed print(Source source, Map<String, ?> model, List<Signature> items) {
        if (source.ours()) {
            return TemplateRun.of(source, model, items);
        }
        Mistyped.refuse(source, model, items);
        return ChildRun.of(source, model, items);
    }
}
