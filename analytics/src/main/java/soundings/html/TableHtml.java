package soundings.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import soundings.chart.Charts;
import soundings.notebook.Cell;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Row;
import soundings.notebook.Tone;

/** Tables; a wide one becomes a card a row on a phone. */
final class TableHtml {
    private static final int WIDE = 6;

    private TableHtml() {}

    static String of(TableItem table) {
        String html = table(table);
        String shown = table.folded() ? Html.details("fold", table.caption() + " (" + count(table) + ")", html) : html;
        return Html.row(shown, table.restsOn());
    }

    private static String count(TableItem table) {
        return Figures.count(table.rows().size(), "row", "rows");
    }

    static String table(TableItem table) {
        boolean cards = table.columns().size() >= WIDE;
        boolean grouped = !groups(table).isEmpty();
        String head = table.columns().stream()
                .skip(grouped ? 1 : 0)
                .map(TableHtml::heading)
                .collect(Collectors.joining());
        String rows = grouped ? bodies(table) : "<tbody>" + rows(table, table.rows(), 0, cards) + "</tbody>";
        return "<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"" + Html.text(table.caption())
                + "\"><table id=\"" + Html.text(table.id()) + "\"" + (cards ? " class=\"cards\"" : "") + "><caption>"
                + Html.text(table.caption()) + "</caption><thead><tr>" + head + "</tr></thead>" + rows
                + "</table></div>\n";
    }

    /** Rows with the same first cell, one after the other: worth a heading of their own where there are fewer groups than rows. */
    private static List<List<Row>> groups(TableItem table) {
        List<List<Row>> groups = new ArrayList<>();
        for (Row row : table.rows()) {
            List<Row> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
            if (last.isEmpty() || !last.get(0).cells().get(0).equals(row.cells().get(0))) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(row);
        }
        boolean worth = table.rows().size() >= 4
                && groups.size() * 2 <= table.rows().size()
                && table.columns().size() > 2;
        return worth ? groups : List.of();
    }

    private static String bodies(TableItem table) {
        int width = table.columns().size() - 1;
        return groups(table).stream()
                .map(rows -> "<tbody><tr class=\"group\"><th colspan=\"" + width + "\" scope=\"rowgroup\">"
                        + cell(rows.get(0).cells().get(0)) + "</th></tr>\n"
                        + rows(table, rows, 1, table.columns().size() >= WIDE) + "</tbody>")
                .collect(Collectors.joining());
    }

    private static String rows(TableItem table, List<Row> rows, int first, boolean cards) {
        return rows.stream().map(row -> row(table, row, first, cards)).collect(Collectors.joining());
    }

    private static String heading(Column column) {
        String unit = Figures.unit(column.unit());
        String words = Html.text(column.heading())
                + (unit.isEmpty() ? "" : " <span class=\"unit\">" + Html.text(unit) + "</span>");
        return "<th scope=\"col\"" + side(column) + ">" + words + "</th>";
    }

    private static String side(Column column) {
        return switch (column.kind()) {
            case NUMBER, INTERVAL -> " class=\"n\"";
            case ANSWER -> " class=\"answer\"";
            case WORDS, DATE, SPARK -> "";
        };
    }

    private static String row(TableItem table, Row row, int first, boolean cards) {
        StringBuilder html = new StringBuilder("<tr>");
        for (int i = first; i < row.cells().size(); i++) {
            Column column = table.columns().get(i);
            String inside = cell(row.cells().get(i));
            String name = cards && !inside.isEmpty() ? " data-h=\"" + Html.text(column.heading()) + "\"" : "";
            String tag = i == first && !inside.isEmpty() ? "th" : "td";
            html.append('<')
                    .append(tag)
                    .append(tag.equals("th") ? " scope=\"row\"" : "")
                    .append(side(column))
                    .append(name);
            html.append('>').append(inside).append("</").append(tag).append('>');
        }
        return html.append("</tr>\n").toString();
    }

    static String cell(Cell cell) {
        return cell.match(
                TableHtml::words,
                n -> Html.text(Figures.with(Figures.number(n.value(), n.decimals()), n.unit())),
                r -> Html.text(Figures.with(Figures.number(r.value().mid(), r.decimals()), r.unit()))
                        + " <span class=\"span\">" + Html.text(Figures.span(r.value(), r.decimals())) + "</span>",
                d -> "<time datetime=\"" + d.on() + "\">" + Html.text(Figures.day(d.on())) + "</time>",
                s -> Charts.svg(s.line()));
    }

    private static String words(Cell.Words words) {
        String inside = Html.link(words.target(), Html.text(words.text()));
        return words.tone() == Tone.PLAIN || words.text().isEmpty()
                ? inside
                : Html.element("span", "tone " + words.tone().name().toLowerCase(Locale.ROOT), inside);
    }
}
