package soundings.notebook;

import java.util.List;
import java.util.stream.Stream;
import soundings.chemistry.Scale;
import soundings.history.Point;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Row;

/** Tests shown as their keeper writes them and worked out in another unit. */
final class UnitItems {
    private UnitItems() {}

    static List<Item> units(View view) {
        List<Column> columns = List.of(
                Column.words("Test"),
                Column.words("Tank"),
                Column.words("Shown in"),
                Column.words("Worked out in"),
                Column.words("For example"));
        List<Row> rows = view.tests().stream().flatMap(test -> row(view, test)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "units",
                        "Shown in the unit you write, worked out in another",
                        columns,
                        rows,
                        false,
                        List.of()));
    }

    private static Stream<Row> row(View view, View.Test test) {
        Scale shown = test.scale();
        Scale worked = view.findings().reference().canonicalScale(test.parameter());
        List<Point> used = test.series().used();
        return shown.readsLikeCanonical() || used.isEmpty()
                ? Stream.empty()
                : Stream.of(new Row(
                        List.of(
                                Cell.words(test.parameter().name()),
                                Cell.words(View.name(test.tank())),
                                Cell.words(shown.label()),
                                Cell.words(worked.label()),
                                Cell.words(Text.sentence(example(shown, worked, used.get(used.size() - 1))))),
                        List.of()));
    }

    private static String example(Scale shown, Scale worked, Point last) {
        double level = last.reading().amount().about();
        return Figures.with(Figures.number(shown.written(level), shown.decimalsAt(shown.written(level))), shown.label())
                + " is "
                + Figures.with(Figures.number(level, worked.decimals()), worked.label())
                + (shown.assumption().isEmpty() ? "" : "; " + shown.assumption());
    }
}
