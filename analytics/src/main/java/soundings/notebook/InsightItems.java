package soundings.notebook;

import java.util.List;
import soundings.advice.Insight;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** What several tests of a tank tell together. */
final class InsightItems {
    private InsightItems() {}

    static List<Item> insights(View view, String tank) {
        List<Row> rows = view.findings().advice().insights().stream()
                .filter(i -> i.tank().equals(tank))
                .map(InsightItems::row)
                .toList();
        List<Column> columns =
                List.of(Column.words("What"), new Column("Figure", "", Kind.INTERVAL, 2), Column.words("What it says"));
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        view.tankId(tank) + "-together",
                        "What several tests tell together",
                        columns,
                        rows,
                        false,
                        rests(view, tank)));
    }

    private static List<String> rests(View view, String tank) {
        return view.findings().advice().insights().stream()
                .filter(i -> i.tank().equals(tank))
                .flatMap(i -> i.restsOn().stream())
                .distinct()
                .toList();
    }

    private static Row row(Insight insight) {
        Cell figure = insight.value().map(v -> figure(v, insight.unit())).orElse(Cell.NOTHING);
        return new Row(
                List.of(
                        Cell.words(Figures.capital(insight.label())),
                        figure,
                        Cell.words(Text.sentence(insight.says()))),
                insight.restsOn());
    }

    private static Cell figure(Interval value, String unit) {
        int decimals = Figures.decimals(value, 3);
        return value.high() > value.low()
                ? new Cell.Range(value, decimals, unit)
                : new Cell.Number(value.mid(), decimals, unit);
    }
}
