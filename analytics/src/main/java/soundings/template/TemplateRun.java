package soundings.template;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;

/** One run of a template in this process, locked down; {@link Templates} decides where a run happens. */
final class TemplateRun {
    /** Characters; the longest report of the samples prints a hundredth of it. */
    static final int LONGEST = 4_000_000;

    private static final Map<String, String> OWN_WORDS = Map.of(
            "template_loader",
            "a notebook can take in no other file; put its text here",
            "is not allowed in the template for security reasons",
            "a notebook can start nothing",
            "You have an unclosed @",
            "an item is not closed: write it with a slash, as <@actions/>",
            "You have an unclosed #",
            "a <#list ...> or <#if ...> is not closed: write </#list> or </#if> where it ends",
            "?api",
            "?api is not open to a notebook",
            "?no_esc",
            "?no_esc is not open to a notebook: text from a log is never markup");

    private static final Configuration LOCKED = locked();

    private TemplateRun() {}

    private static Configuration locked() {
        Configuration cfg = new Configuration(Configuration.VERSION_2_3_34);
        cfg.setRegisteredCustomOutputFormats(List.of(MarkdownFormat.INSTANCE));
        cfg.setOutputFormat(MarkdownFormat.INSTANCE);
        cfg.setAutoEscapingPolicy(Configuration.FORCE_AUTO_ESCAPING_POLICY);
        cfg.setRecognizeStandardFileExtensions(false);
        cfg.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        cfg.setAPIBuiltinEnabled(false);
        cfg.setTemplateLoader(null);
        cfg.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        cfg.setLogTemplateExceptions(false);
        cfg.setWrapUncheckedExceptions(true);
        cfg.setLocale(Locale.ROOT);
        cfg.setNumberFormat("computer");
        cfg.setTimeZone(TimeZone.getTimeZone("UTC"));
        return cfg;
    }

    /** @throws TemplateProblem whatever goes wrong */
    static Printed of(Source source, Map<String, ?> model, List<Signature> items) {
        List<Printed.Call> calls = new ArrayList<>();
        BoundedWriter out = new BoundedWriter(LONGEST);
        try {
            parsed(source).process(withItems(model, items, calls), out);
        } catch (BoundedWriter.TooLong e) {
            throw TemplateProblem.at(source.name(), 0, "it prints more than a report can hold; does a loop not end?");
        } catch (InvalidReferenceException e) {
            throw missing(source, e, model, items);
        } catch (TemplateException e) {
            throw TemplateProblem.at(
                    source.name(), number(e.getLineNumber()), firstLine(e.getMessageWithoutStackTop()));
        } catch (IOException e) {
            throw TemplateProblem.at(source.name(), 0, firstLine(String.valueOf(e.getMessage())));
        } catch (StackOverflowError e) {
            throw TemplateProblem.at(source.name(), 0, "a macro or a function calls itself without end");
        } catch (OutOfMemoryError e) {
            throw TemplateProblem.at(source.name(), 0, "it builds up more text than a report can hold");
        }
        return new Printed(out.toString(), calls);
    }

    private static Template parsed(Source source) throws IOException {
        try {
            return new Template(source.name(), null, new StringReader(source.text()), LOCKED);
        } catch (ParseException e) {
            throw TemplateProblem.at(source.name(), e.getLineNumber(), firstLine(e.getEditorMessage()));
        }
    }

    private static Map<String, Object> withItems(
            Map<String, ?> model, List<Signature> items, List<Printed.Call> calls) {
        Map<String, Object> all = new LinkedHashMap<>(model);
        items.forEach(item -> all.put(item.name(), new ItemDirective(item, calls)));
        return all;
    }

    private static TemplateProblem missing(
            Source source, InvalidReferenceException e, Map<String, ?> model, List<Signature> items) {
        String name = String.valueOf(e.getBlamedExpressionString());
        return TemplateProblem.at(
                source.name(),
                number(e.getLineNumber()),
                "there is no '" + name + "' here. " + Valid.of(name, model, items));
    }

    private static int number(@org.jspecify.annotations.Nullable Integer line) {
        return line == null ? 0 : line;
    }

    /** Freemarker's messages go on for paragraphs; the first says what is wrong. What is known by name is said in our own words. */
    private static String firstLine(String message) {
        return OWN_WORDS.entrySet().stream()
                .filter(e -> message.contains(e.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> first(message));
    }

    private static String first(String message) {
        String line = message.strip().lines().findFirst().orElse("it cannot be read");
        return line.endsWith(":")
                ? message.strip()
                        .lines()
                        .limit(2)
                        .reduce((a, b) -> a + " " + b.strip())
                        .orElse(line)
                : line;
    }
}
