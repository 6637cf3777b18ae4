package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import soundings.advice.Insight;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** What several tests of a tank tell together. */
final class InsightItems {
    private InsightItems() {}

    static List<Item> insights(View view, String tank) {
        List<Insight> own = view.findings().advice().insights().stream()
                .filter(i -> i.tank().equals(tank))
                .toList();
        List<Item> items = new ArrayList<>();
        table(view.tankId(tank) + "-together", "What several tests tell together", own, i -> !isEvent(i))
                .ifPresent(items::add);
        table(
                        view.tankId(tank) + "-events",
                        "What the tank uses since something was changed",
                        own,
                        InsightItems::isEvent)
                .ifPresent(items::add);
        return items;
    }

    private static boolean isEvent(Insight insight) {
        return insight.kind() == Insight.Kind.EVENT;
    }

    private static Optional<Item> table(String id, String title, List<Insight> own, Predicate<Insight> which) {
        List<Insight> shown = own.stream().filter(which).toList();
        List<Row> rows = shown.stream().map(InsightItems::row).toList();
        List<String> rests =
                shown.stream().flatMap(i -> i.restsOn().stream()).distinct().toList();
        List<Column> columns =
                List.of(Column.words("What"), new Column("Figure", "", Kind.INTERVAL, 2), Column.words("What it says"));
        return rows.isEmpty() ? Optional.empty() : Optional.of(new TableItem(id, title, columns, rows, false, rests));
    }

    private static Row row(Insight insight) {
        Cell figure = insight.value()
                .map(v -> figure(v, insight.unit(), isEvent(insight) ? 5 : 3))
                .orElse(Cell.NOTHING);
        return new Row(
                List.of(
                        Cell.words(Figures.capital(insight.label())),
                        figure,
                        Cell.words(Text.sentence(insight.says()))),
                insight.restsOn());
    }

    private static Cell figure(Interval value, String unit, int most) {
        int decimals = Figures.decimals(value, most);
        return value.high() > value.low()
                ? new Cell.Range(value, decimals, unit)
                : new Cell.Number(value.mid(), decimals, unit);
    }
}
