package soundings.html;

import java.util.List;
import java.util.stream.Collectors;
import soundings.notebook.ActionList;
import soundings.notebook.ActionList.Entry;
import soundings.notebook.Figures;

/** What to do, in order. */
final class ActionsHtml {
    /** A list longer than this does not fit a screen. */
    private static final int WORTH_COUNTING = 5;

    private ActionsHtml() {}

    static String of(ActionList list) {
        if (list.entries().isEmpty()) {
            return Html.row(Html.element("p", "finding", Html.text(list.instead())), list.restsOn());
        }
        String tally = list.entries().size() < WORTH_COUNTING
                ? ""
                : Html.row(Html.element("p", "finding", Html.text(Figures.capital(list.tally()) + ".")), List.of());
        String entries = list.entries().stream().map(ActionsHtml::entry).collect(Collectors.joining());
        return tally + "<ol class=\"actions\" id=\"" + Html.text(list.id()) + "\">" + entries + "</ol>\n";
    }

    private static String entry(Entry entry) {
        String tank = entry.tank().isEmpty() ? "" : Html.text(entry.tank()) + ": ";
        String what = Html.element(
                "p",
                "what",
                Html.element("span", "when", entry.when().words()) + " " + tank
                        + Html.element("strong", "", Html.text(entry.what())) + ".");
        String caution = entry.caution().isEmpty()
                ? ""
                : Html.element(
                        "p",
                        entry.caution().startsWith(ActionList.AS_UNDER) ? "why" : "caution",
                        "<strong>Caution.</strong> " + Html.text(entry.caution()));
        return "<li class=\"" + kind(entry.when()) + "\">"
                + Html.row(what + steps(entry) + why(entry) + caution, entry.restsOn()) + "</li>\n";
    }

    private static String steps(Entry entry) {
        return entry.steps().stream()
                .map(step -> Html.element("p", "step", Html.text(step)))
                .collect(Collectors.joining());
    }

    private static String why(Entry entry) {
        String reasons = Html.text(String.join(" ", entry.reasons()));
        String sure =
                entry.sure().isEmpty() ? "" : " <span class=\"sure\">How sure: " + Html.text(entry.sure()) + ".</span>";
        String more = entry.target().isEmpty() ? "" : " " + Html.link(entry.target(), "The evidence");
        return Html.element("p", "why", reasons + sure + more);
    }

    private static String kind(ActionList.When when) {
        return switch (when) {
            case NOW -> "act now";
            case SOON -> "act";
            case MONTH -> "act";
            case HANDY -> "wait";
        };
    }
}
