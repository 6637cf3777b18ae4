package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.advice.DayPlan;
import soundings.advice.Supply;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** Pumps, containers and the hours of the day they work at. */
final class PumpItems {
    private PumpItems() {}

    static List<Item> supplies(View view) {
        List<Supply> supplies = view.findings().advice().supplies();
        boolean changes = supplies.stream().anyMatch(Supply::isToChange);
        List<Row> rows = supplies.stream().map(s -> row(s, changes)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem("supplies", "Pumps and containers", columns(changes), rows, false, List.of()));
    }

    private static List<Column> columns(boolean changes) {
        List<Column> columns = new ArrayList<>(
                List.of(Column.words("Tank"), Column.words("Additive"), new Column("Set to", "mL/d", Kind.NUMBER, 1)));
        if (changes) {
            columns.add(new Column("Proposed", "mL/d", Kind.NUMBER, 1));
            columns.add(new Column("Once besides", "mL", Kind.NUMBER, 0));
        }
        columns.add(new Column("Doses a day", "", Kind.NUMBER, 0));
        columns.add(new Column("Each", "mL", Kind.NUMBER, 2));
        columns.add(new Column("Gives", "%", Kind.NUMBER, 0));
        columns.add(new Column("Left", "mL", Kind.NUMBER, 0));
        columns.add(new Column(changes ? "Empty on, as proposed" : "Empty on", "", Kind.DATE, 0));
        columns.add(new Column("Order by", "", Kind.DATE, 0));
        return columns;
    }

    private static Row row(Supply s, boolean changes) {
        List<Cell> cells = new ArrayList<>(
                List.of(Cell.words(s.tank()), Cell.words(s.additive()), new Cell.Number(s.mlPerDay(), 1, "")));
        if (changes) {
            cells.add(number(s.proposedMlPerDay(), 1));
            cells.add(s.correctionMl() > 0 ? new Cell.Number(s.correctionMl(), 0, "") : Cell.NOTHING);
        }
        cells.add(number(s.dosesPerDay(), 0));
        cells.add(number(s.mlPerDose(), 2));
        cells.add(number(percent(s.delivered()), 0));
        cells.add(number(s.mlLeft(), 0));
        cells.add(day(s.emptyOn()));
        cells.add(day(s.orderBy()));
        return new Row(cells, s.cell().isEmpty() ? List.of() : List.of(s.cell()));
    }

    private static OptionalDouble percent(OptionalDouble share) {
        return share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share;
    }

    private static Cell day(Optional<LocalDate> day) {
        return day.<Cell>map(Cell.Day::new).orElse(Cell.NOTHING);
    }

    private static Cell number(OptionalDouble value, int decimals) {
        return value.isPresent() ? new Cell.Number(value.getAsDouble(), decimals, "") : Cell.NOTHING;
    }

    static List<Item> dayPlan(View view, String tank) {
        Optional<DayPlan> plan = view.findings().advice().plans().stream()
                .filter(p -> p.tank().equals(tank) && !p.doses().isEmpty())
                .findFirst();
        return plan.map(p -> (Item) table(view, p)).stream().toList();
    }

    private static TableItem table(View view, DayPlan plan) {
        boolean changes = plan.isToChange();
        List<Column> columns = new ArrayList<>(List.of(Column.words("At"), Column.words("Additive")));
        columns.add(new Column(changes ? "Dose, as proposed" : "Dose", "mL", Kind.NUMBER, 2));
        if (changes) {
            columns.add(new Column("As set now", "mL", Kind.NUMBER, 2));
        }
        List<Row> rows = plan.doses().stream().map(d -> row(d, changes)).toList();
        String apart = "A day of the pumps; alkalinity and calcium stay "
                + Figures.count(plan.apartMinutes(), "minute", "minutes") + " apart";
        boolean both = plan.apartMinutes() < 24 * 60;
        return new TableItem(
                view.tankId(plan.tank()) + "-day-plan",
                both ? apart : "A day of the pumps",
                columns,
                rows,
                true,
                List.of());
    }

    private static Row row(DayPlan.Dose dose, boolean changes) {
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.words(dose.at().toString()),
                Cell.words(dose.additive()),
                new Cell.Number(dose.proposedMl(), 2, "")));
        if (changes) {
            cells.add(new Cell.Number(dose.ml(), 2, ""));
        }
        return new Row(cells, List.of());
    }
}
