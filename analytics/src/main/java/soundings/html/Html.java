package soundings.html;

import java.util.List;

/** Text and attributes as HTML: every character of a cell is text until it has gone through here. */
final class Html {
    private Html() {}

    static String text(String words) {
        StringBuilder out = new StringBuilder(words.length() + 8);
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c == '\n' || c == '\t' || !Character.isISOControl(c) ? c : ' ');
            }
        }
        return out.toString();
    }

    static String element(String name, String kind, String inside) {
        String attribute = kind.isEmpty() ? "" : " class=\"" + kind + "\"";
        return "<" + name + attribute + ">" + inside + "</" + name + ">";
    }

    static String link(String id, String inside) {
        return id.isEmpty() ? inside : "<a href=\"#" + text(id) + "\">" + inside + "</a>";
    }

    static String details(String kind, String summary, String inside) {
        return "<details class=\"" + kind + "\"><summary>" + text(summary) + "</summary>" + inside + "</details>\n";
    }

    /** A piece of the page with the cells it rests on in the margin. */
    static String row(String inside, List<String> restsOn) {
        String margin = restsOn.isEmpty() ? "" : Html.element("p", "margin", margin(restsOn));
        return "<div class=\"row\"><div class=\"body\">" + inside + "</div>" + margin + "</div>\n";
    }

    private static String margin(List<String> places) {
        int most = 8;
        List<String> shown = places.size() > most ? places.subList(0, most) : places;
        String cells = String.join(
                "<br>", shown.stream().map(p -> element("code", "", text(p))).toList());
        String more = places.size() > most ? "<br>and " + (places.size() - most) + " more" : "";
        return "<span class=\"quiet\">rests on</span> " + cells + more;
    }
}
