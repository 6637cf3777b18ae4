package soundings.notebook;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
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
        List<Step> steps = view.tests().stream()
                .flatMap(test -> step(view, test, month).stream())
                .toList();
        return steps.isEmpty()
                ? List.of()
                : List.of(
                        CareBlocks.prose(CareBlocks.block(Prose.Kind.FINDING, finding(steps))),
                        new TableItem(
                                "changes-levels",
                                "Estimated levels at two month ends",
                                columns,
                                steps.stream().map(step -> row(view, step)).toList(),
                                true,
                                List.of()));
    }

    /** What clearly changed, tank by tank, and how much did not. */
    private static String finding(List<Step> steps) {
        Map<String, List<String>> moved = steps.stream()
                .filter(Step::isClear)
                .collect(Collectors.groupingBy(
                        s -> View.name(s.test().tank()),
                        LinkedHashMap::new,
                        Collectors.mapping(Step::words, Collectors.toList())));
        int same = (int) steps.stream().filter(s -> !s.isClear()).count();
        String rest = same == 0 ? "" : " No clear change in " + Figures.count(same, "test.", "tests.");
        return moved.isEmpty()
                ? "No level clearly changed in the month."
                : moved.entrySet().stream()
                                .map(tank -> tank.getKey() + ": " + Figures.list(tank.getValue()))
                                .collect(Collectors.joining(". ", "Clearly changed. ", "."))
                        + rest;
    }

    /** A level at both month ends, as the keeper writes it. */
    private record Step(View.Test test, Interval before, Interval now) {
        Scale scale() {
            return test.scale();
        }

        /** Only where the two intervals do not hold each other's middle. */
        boolean isClear() {
            boolean risen = now.mid() > before.high() && before.mid() < now.low();
            boolean fallen = now.mid() < before.low() && before.mid() > now.high();
            return risen || fallen;
        }

        String words() {
            return Sentences.lower(test.parameter().name()) + (now.mid() > before.mid() ? " rose from " : " fell from ")
                    + Figures.number(before.mid(), decimals()) + " to "
                    + Figures.with(Figures.number(now.mid(), decimals()), scale().label());
        }

        private int decimals() {
            return scale().decimalsAt(Math.max(before.mid(), now.mid()));
        }

        String by() {
            String by = Figures.with(Figures.change(now.mid() - before.mid(), decimals()), scale().label());
            return isClear() ? by : "no clear change (" + by + ")";
        }
    }

    private static Optional<Step> step(View view, View.Test test, YearMonth month) {
        Scale scale = test.scale();
        return view.estimate(test.tankName(), test.parameter())
                .flatMap(e -> at(e, month.minusMonths(1).atEndOfMonth())
                        .flatMap(before -> at(e, month.atEndOfMonth())
                                .map(now -> new Step(test, scale.written(before), scale.written(now)))));
    }

    private static Row row(View view, Step step) {
        View.Test test = step.test();
        return new Row(
                List.of(
                        Cell.words(View.name(test.tank())),
                        new Cell.Words(
                                test.parameter().name(), Tone.PLAIN, view.testId(test.tankName(), test.parameter())),
                        level(step.before(), step.scale()),
                        level(step.now(), step.scale()),
                        Cell.words(step.by())),
                List.of());
    }

    private static Cell level(Interval written, Scale scale) {
        return new Cell.Range(written, scale.decimalsAt(written.mid()), scale.label());
    }

    private static Optional<Interval> at(Estimate estimate, LocalDate end) {
        return estimate.track().stream()
                .filter(d -> !d.date().isAfter(end) && !d.date().isBefore(end.minusDays(NEAR)))
                .max(Comparator.comparing(Estimate.Day::date))
                .map(Estimate.Day::level);
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
