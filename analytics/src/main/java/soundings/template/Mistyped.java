package soundings.template;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What looks like a value or an item and would be printed as it stands: other brackets, a sign out of its place. */
final class Mistyped {
    private static final Pattern COMMENT = Pattern.compile("<#--.*?-->", Pattern.DOTALL);
    /** Such a word in these brackets can only be meant to be filled in. */
    private static final List<Pattern> ALWAYS = List.of(
            Pattern.compile("\\{\\{[^{}\n]*}}"),
            Pattern.compile("\\$\\(\\s*(?<name>[A-Za-z_][\\w.]*)\\s*\\)"),
            Pattern.compile("\\[\\s*@\\s*(?<name>\\w+)[^]\n]*]"),
            Pattern.compile("<(?:\\s+@|/?\\s+@|@\\s)\\s*(?<name>\\w+)[^<>\n]*>"));
    /** These are plain text unless the word is the name of a value or an item. */
    private static final List<Pattern> IF_NAMED = List.of(
            Pattern.compile("(?<![$#])\\{\\s*(?<name>[A-Za-z_]\\w*)(?:\\.\\w+)*\\s*}"),
            Pattern.compile("<\\s*/?\\s*(?<name>[A-Za-z_]\\w*)\\b[^<>\n]*>"),
            Pattern.compile("(?m)^[ \\t]*@(?<name>\\w+)\\b.*$"));

    private Mistyped() {}

    /** @throws TemplateProblem for the first of them */
    static void refuse(Source source, Map<String, ?> model, List<Signature> items) {
        String text = COMMENT.matcher(source.text())
                .replaceAll(m -> Matcher.quoteReplacement(m.group().replaceAll("[^\n]", " ")));
        Stream.concat(
                        ALWAYS.stream().flatMap(p -> p.matcher(text).results()),
                        IF_NAMED.stream().flatMap(p -> named(p.matcher(text), model, items)))
                .min(Comparator.comparingInt(MatchResult::start))
                .ifPresent(found -> {
                    int line = (int) text.substring(0, found.start())
                                    .chars()
                                    .filter(c -> c == '\n')
                                    .count()
                            + 1;
                    String written = found.group().strip();
                    throw TemplateProblem.at(
                            source.name(),
                            line,
                            "'" + written
                                    + "' would be printed as it stands. A value is written ${name}, an item <@name/>. "
                                    + Valid.of(
                                            written.replaceAll("[^\\w.]+", " ").strip(), model, items));
                });
    }

    private static Stream<MatchResult> named(Matcher found, Map<String, ?> model, List<Signature> items) {
        Stream.Builder<MatchResult> named = Stream.builder();
        while (found.find()) {
            String name = found.group("name");
            if (model.containsKey(name) || items.stream().anyMatch(i -> i.name().equals(name))) {
                named.add(found.toMatchResult());
            }
        }
        return named.build();
    }
}
