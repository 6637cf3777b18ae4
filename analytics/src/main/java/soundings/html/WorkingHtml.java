package soundings.html;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import soundings.notebook.Figures;
import soundings.notebook.WorkingItem;

/** A working: each line its number, and where the number comes from or how it follows from lines above. */
final class WorkingHtml {
    private static final Pattern NAME = Pattern.compile("[A-Za-z_][A-Za-z0-9_.]*");

    private WorkingHtml() {}

    static String of(WorkingItem working) {
        String lines = working.lines().stream().map(line -> line(working, line)).collect(Collectors.joining());
        String table =
                "<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"" + Html.text(working.caption())
                        + "\"><table id=\"" + Html.text(working.id()) + "\"><thead><tr><th scope=\"col\">What</th>"
                        + "<th scope=\"col\" class=\"n\">Figure</th><th scope=\"col\">From</th></tr></thead><tbody>"
                        + lines + "</tbody></table></div>";
        String result = working.result().isEmpty() ? "" : Html.element("p", "", Html.text(working.result()) + ".");
        return Html.row(
                Html.details(
                        working.result().isEmpty() ? "working idle" : "working", working.caption(), table + result),
                working.restsOn());
    }

    private static String line(WorkingItem working, WorkingItem.Line line) {
        String figure = Figures.isShare(line.unit())
                ? Figures.number(100 * line.value(), Math.max(0, line.decimals() - 2)) + " %"
                : Figures.with(Figures.number(line.value(), line.decimals()), line.unit());
        String from = line.formula().isEmpty() ? Html.text(line.from()) : Html.text(inWords(working, line.formula()));
        return "<tr><th scope=\"row\">" + Html.text(line.label()) + "</th><td class=\"n\">" + Html.text(figure)
                + "</td><td>" + from + "</td></tr>\n";
    }

    /** A formula with the lines' labels in place of their ids, each once, and the signs a reader writes. */
    private static String inWords(WorkingItem working, String formula) {
        Map<String, String> labels = working.lines().stream()
                .collect(Collectors.toMap(WorkingItem.Line::id, WorkingItem.Line::label, (a, b) -> a));
        return NAME.matcher(formula.replace(" * ", " × ").replace(" / ", " ÷ ").replace(" - ", " − "))
                .replaceAll(m -> Matcher.quoteReplacement(labels.getOrDefault(m.group(), m.group())));
    }
}
