package soundings.html;

import java.util.stream.Collectors;
import soundings.notebook.ActionList;
import soundings.notebook.ActionList.Entry;

/** What to do, in order. */
final class ActionsHtml {
    private ActionsHtml() {}

    static String of(ActionList list) {
        if (list.entries().isEmpty()) {
            return Html.row(Html.element("p", "finding", Html.text(list.instead())), list.restsOn());
        }
        String entries = list.entries().stream().map(ActionsHtml::entry).collect(Collectors.joining());
        return "<ol class=\"actions\" id=\"" + Html.text(list.id()) + "\">" + entries + "</ol>\n";
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
        return "<li class=\"" + kind(entry.when()) + "\">" + Html.row(what + why(entry) + caution, entry.restsOn())
                + "</li>\n";
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
