package soundings.html;

import java.net.URI;
import java.net.URISyntaxException;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import soundings.notebook.Figures;

/** A club's logs on one page: who needs a look first and why. */
public final class ClubPage {
    private ClubPage() {}

    /**
     * One log.
     *
     * @param page the file name of its report beside this page, empty where there is none
     * @param why reasons, the strongest first
     * @param sinceTest days since the last test
     */
    public record Line(
            String log,
            String page,
            Optional<YearMonth> month,
            boolean needsALook,
            List<String> why,
            int now,
            int soon,
            int notUnderstood,
            OptionalLong sinceTest) {
        public Line {
            why = List.copyOf(why);
        }
    }

    /** @param lines in the order of the look they need */
    public static String of(String club, YearMonth month, List<Line> lines) {
        String subtitle = Figures.month(month) + ", " + Figures.count(lines.size(), "log", "logs");
        String finding = "<p class=\"finding\">" + Html.text(finding(lines)) + "</p>\n";
        return HtmlPage.framed(
                club,
                subtitle,
                "<section class=\"d2\" id=\"logs\">\n<h2>Who needs a look first</h2>\n" + finding + table(lines)
                        + "</section>\n");
    }

    private static String finding(List<Line> lines) {
        List<Line> first = lines.stream().filter(Line::needsALook).toList();
        return first.isEmpty()
                ? "No log presses this month."
                : Figures.count(first.size(), "log needs", "logs need") + " a look; begin with "
                        + first.get(0).log() + ": " + first.get(0).why().get(0) + ".";
    }

    private static String table(List<Line> lines) {
        String head =
                List.of("Log", "Why", "Month", "To do now", "This week", "Days since a test", "Not understood").stream()
                        .map(h -> "<th scope=\"col\">" + h + "</th>")
                        .collect(Collectors.joining());
        String rows = lines.stream().map(ClubPage::row).collect(Collectors.joining());
        return "<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"Logs\"><table><caption>Every log of the folder, "
                + "the one that needs a look first on top</caption><thead><tr>" + head + "</tr></thead><tbody>" + rows
                + "</tbody></table></div>\n";
    }

    private static String row(Line line) {
        String tone = line.needsALook() ? "tone act" : "tone quiet";
        return "<tr><th scope=\"row\">" + linked(line) + "</th><td>" + why(line, tone) + "</td><td>"
                + line.month().map(Figures::month).orElse("") + "</td>" + number(line.now()) + number(line.soon())
                + "<td class=\"n\">"
                + (line.sinceTest().isPresent() ? line.sinceTest().getAsLong() : "") + "</td>"
                + number(line.notUnderstood()) + "</tr>\n";
    }

    private static String why(Line line, String tone) {
        String first = Html.element("span", tone, Html.text(line.why().get(0)));
        String rest = line.why().stream().skip(1).map(w -> "; " + Html.text(w)).collect(Collectors.joining());
        return first + rest;
    }

    private static String number(int count) {
        return "<td class=\"n\">" + count + "</td>";
    }

    private static String linked(Line line) {
        String name = Html.text(line.log());
        return line.page().isEmpty() ? name : "<a href=\"" + Html.text(reference(line.page())) + "\">" + name + "</a>";
    }

    /** The file name as a relative reference: spaces and signs escaped, never taken for a scheme. */
    private static String reference(String file) {
        try {
            return "./" + new URI(null, null, "/" + file, null).toASCIIString().substring(1);
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("a file name makes a path: " + file, e);
        }
    }
}
