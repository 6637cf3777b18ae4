package soundings.notebook;

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
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Additive"),
                new Column("Set to", "mL/d", Kind.NUMBER, 1),
                new Column("Doses a day", "", Kind.NUMBER, 0),
                new Column("Each", "mL", Kind.NUMBER, 2),
                new Column("Gives", "%", Kind.NUMBER, 0),
                new Column("Left", "mL", Kind.NUMBER, 0),
                new Column("Empty on", "", Kind.DATE, 0),
                new Column("Order by", "", Kind.DATE, 0));
        List<Row> rows =
                view.findings().advice().supplies().stream().map(PumpItems::row).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem("supplies", "Pumps and containers", columns, rows, false, List.of()));
    }

    private static Row row(Supply s) {
        return new Row(
                List.of(
                        Cell.words(s.tank()),
                        Cell.words(s.additive()),
                        new Cell.Number(s.mlPerDay(), 1, ""),
                        number(s.dosesPerDay(), 0),
                        number(s.mlPerDose(), 2),
                        number(
                                s.delivered().isPresent()
                                        ? OptionalDouble.of(100 * s.delivered().getAsDouble())
                                        : s.delivered(),
                                0),
                        number(s.mlLeft(), 0),
                        s.emptyOn().<Cell>map(Cell.Day::new).orElse(Cell.NOTHING),
                        s.orderBy().<Cell>map(Cell.Day::new).orElse(Cell.NOTHING)),
                s.cell().isEmpty() ? List.of() : List.of(s.cell()));
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
        List<Row> rows = plan.doses().stream()
                .map(d -> new Row(
                        List.of(
                                Cell.words(d.at().toString()),
                                Cell.words(d.additive()),
                                new Cell.Number(d.ml(), 2, "")),
                        List.of()))
                .toList();
        List<Column> columns =
                List.of(Column.words("At"), Column.words("Additive"), new Column("Dose", "mL", Kind.NUMBER, 2));
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
}
