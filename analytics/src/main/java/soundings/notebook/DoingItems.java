package soundings.notebook;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.TankHistory;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.setup.Setup;

/** What goes into a tank, and what was done to it this month. */
final class DoingItems {
    private DoingItems() {}

    static List<Item> doing(View view, String tankName) {
        TankHistory tank = view.tank(tankName);
        List<Item> items = new ArrayList<>(doses(view, tank));
        items.addAll(changes(view, tank));
        return items;
    }

    private static List<Item> doses(View view, TankHistory tank) {
        List<Column> columns = List.of(
                Column.words("Additive"),
                new Column("Dose now", "mL/d", Kind.NUMBER, 1),
                new Column("Since", "", Kind.DATE, 0),
                Column.words("Raises"),
                Column.words("Cell"));
        List<Row> rows = tank.doses().stream()
                .flatMap(course -> row(view, course).stream())
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        view.tankId(tank.tank()) + "-doses", "What goes in each day", columns, rows, false, List.of()));
    }

    private static Optional<Row> row(View view, DoseCourse course) {
        return course.steps().stream()
                .filter(s -> !s.from().isAfter(view.asOf())
                        && s.until().filter(u -> !u.isAfter(view.asOf())).isEmpty())
                .reduce((first, second) -> second)
                .filter(s -> s.mlPerDay() > 0)
                .map(s -> new Row(
                        List.of(
                                Cell.words(course.name()),
                                new Cell.Number(s.mlPerDay(), 1, ""),
                                new Cell.Day(s.from()),
                                Cell.words(raises(course)),
                                Cell.words(s.at().place())),
                        List.of()));
    }

    private static String raises(DoseCourse course) {
        List<String> what = course.additive().stream()
                .map(Setup.Additive::parameter)
                .map(p -> Sentences.lower(p.name()))
                .distinct()
                .toList();
        return what.isEmpty() ? "not known: enter it in the setup workbook" : Figures.list(what);
    }

    private static List<Item> changes(View view, TankHistory tank) {
        List<Change> month = tank.changes().stream()
                .filter(c -> YearMonth.from(c.on()).equals(view.findings().month()))
                .toList();
        List<Column> columns = List.of(
                new Column("Day", "", Kind.DATE, 0),
                new Column("Share", "%", Kind.NUMBER, 0),
                new Column("Litres", "L", Kind.NUMBER, 0),
                Column.words("Cell"));
        List<Row> rows = month.stream()
                .map(c -> new Row(
                        List.of(
                                new Cell.Day(c.on()),
                                c.fraction().isPresent()
                                        ? new Cell.Number(100 * c.fraction().getAsDouble(), 0, "")
                                        : Cell.NOTHING,
                                c.litres().isPresent()
                                        ? new Cell.Number(c.litres().getAsDouble(), 0, "")
                                        : Cell.NOTHING,
                                Cell.words(c.at().place())),
                        List.of()))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        view.tankId(tank.tank()) + "-water-changes",
                        "Water changed this month",
                        columns,
                        rows,
                        false,
                        List.of()));
    }
}
