package soundings.notebook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.estimate.Estimate;
import soundings.history.DoseCourse;
import soundings.history.TankHistory;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.quantity.Interval;

/** What changed since the month before: levels at both month ends, and doses changed in between. */
final class ChangeItems {
    /** Days a level may lie before a month's end and still stand for it. */
    private static final int NEAR = 10;

    private ChangeItems() {}

    static List<Item> changes(View view) {
        List<Item> items = new ArrayList<>(levels(view));
        items.addAll(doses(view));
        return items;
    }

    private static List<Item> levels(View view) {
        YearMonth month = view.findings().month();
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Test"),
                new Column("End of " + Figures.month(month.minusMonths(1)), "", Kind.INTERVAL, 1),
                new Column("End of " + Figures.month(month), "", Kind.INTERVAL, 1),
                Column.words("Change"));
        List<Row> rows = view.tests().stream()
                .flatMap(test ->
                        view
                                .estimate(test.tankName(), test.parameter())
                                .flatMap(e -> row(view, test, e, month))
                                .stream())
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "changes-levels", "Estimated levels at two month ends", columns, rows, false, List.of()));
    }

    private static Optional<Row> row(View view, View.Test test, Estimate estimate, YearMonth month) {
        Parameter parameter = test.parameter();
        return at(estimate, month.minusMonths(1).atEndOfMonth())
                .map(test.scale()::written)
                .flatMap(before -> at(estimate, month.atEndOfMonth())
                        .map(test.scale()::written)
                        .map(now -> new Row(
                                List.of(
                                        Cell.words(View.name(test.tank())),
                                        new Cell.Words(
                                                parameter.name(), Tone.PLAIN, view.testId(test.tankName(), parameter)),
                                        level(before, test.scale()),
                                        level(now, test.scale()),
                                        Cell.words(said(before, now, test.scale()))),
                                List.of())));
    }

    private static Cell level(Interval written, Scale scale) {
        return new Cell.Range(written, scale.decimals(), scale.label());
    }

    private static Optional<Interval> at(Estimate estimate, LocalDate end) {
        return estimate.track().stream()
                .filter(d -> !d.date().isAfter(end) && !d.date().isBefore(end.minusDays(NEAR)))
                .max(Comparator.comparing(Estimate.Day::date))
                .map(Estimate.Day::level);
    }

    /** A change is told as one only where the two intervals do not hold each other's middle. */
    private static String said(Interval before, Interval now, Scale scale) {
        boolean risen = now.mid() > before.high() && before.mid() < now.low();
        boolean fallen = now.mid() < before.low() && before.mid() > now.high();
        boolean clear = risen || fallen;
        String by = Figures.with(Figures.change(now.mid() - before.mid(), scale.decimals()), scale.label());
        return clear ? by : "no clear change (" + by + ")";
    }

    private static List<Item> doses(View view) {
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Additive"),
                new Column("From", "", Kind.DATE, 0),
                Column.words("Change"),
                Column.words("Cell"));
        List<Row> rows = new ArrayList<>();
        for (TankHistory tank : view.tanks()) {
            for (DoseCourse course : tank.doses()) {
                rows.addAll(steps(view, tank, course));
            }
        }
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem("changes-doses", "Doses changed this month", columns, rows, false, List.of()));
    }

    private static List<Row> steps(View view, TankHistory tank, DoseCourse course) {
        List<Row> rows = new ArrayList<>();
        double before = Double.NaN;
        for (DoseCourse.Step step : course.steps()) {
            boolean here = YearMonth.from(step.from()).equals(view.findings().month());
            if (here && step.mlPerDay() != before) {
                String from = Double.isNaN(before) ? "begun at " : Figures.number(before, 1) + " to ";
                rows.add(new Row(
                        List.of(
                                Cell.words(View.name(tank)),
                                Cell.words(course.name()),
                                new Cell.Day(step.from()),
                                Cell.words(from + Figures.number(step.mlPerDay(), 1) + " mL a day"),
                                Cell.words(step.at().place())),
                        List.of()));
            }
            before = step.mlPerDay();
        }
        return rows;
    }
}
