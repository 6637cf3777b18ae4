package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.care.Clearing;
import soundings.care.NewTank;
import soundings.care.NotReady;
import soundings.chemistry.Scale;
import soundings.log.Reading;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** A tank that is run in: its ammonia, nitrite and nitrate since the first day, and when it is ready. */
final class NewTankItems {
    private NewTankItems() {}

    /** @throws IllegalArgumentException naming the new tanks */
    static List<Item> newTank(View view, String name) {
        List<NewTank> all = view.findings().care().newTanks();
        NewTank tank = all.stream()
                .filter(t -> t.tank().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + name + "' is no new tank; there are "
                        + String.join(", ", all.stream().map(NewTank::tank).toList())));
        List<Item> items = new ArrayList<>();
        chart(view, tank).ifPresent(items::add);
        items.add(standing(view, tank));
        free(view, tank).ifPresent(items::add);
        earlier(view, tank).ifPresent(items::add);
        items.add(rule(tank));
        return items;
    }

    private static String id(View view, NewTank tank, String part) {
        return view.tankId(tank.tank()) + "-new-" + part;
    }

    private static Optional<Item> chart(View view, NewTank tank) {
        List<Layer> main = new ArrayList<>();
        line(tank.clearings().get(0), Layer.Stroke.SOLID).ifPresent(main::addAll);
        line(tank.clearings().get(1), Layer.Stroke.DASHED).ifPresent(main::addAll);
        if (main.isEmpty()) {
            return Optional.empty();
        }
        Optional<ChartSpec.Panel> nitrate = line(tank.clearings().get(2), Layer.Stroke.SOLID)
                .map(layers -> panel(tank.clearings().subList(2, 3), layers));
        LocalDate until = tank.since().equals(tank.asOf()) ? tank.asOf().plusDays(1) : tank.asOf();
        return Optional.of(new ChartItem(
                new ChartSpec.TimeChart(
                        id(view, tank, "chart"),
                        "Ammonia and nitrite since the first day, " + tank.tank(),
                        "Ammonia (solid) and nitrite (dashed) in " + tank.tank() + " since " + Figures.day(tank.since())
                                + ". " + CareWords.newTank(tank),
                        tank.since(),
                        until,
                        panel(tank.clearings().subList(0, 2), main),
                        nitrate),
                places(tank)));
    }

    /** One unit on the axis where the tests share it, each its own beside its name where they do not. */
    private static ChartSpec.Panel panel(List<Clearing> shown, List<Layer> layers) {
        List<Scale> scales = shown.stream()
                .flatMap(c -> c.last().stream())
                .map(Reading::scale)
                .toList();
        boolean shared = scales.stream().map(Scale::label).distinct().count() == 1;
        String label = scales.stream()
                .map(s -> CareWords.name(s.parameter()) + (shared ? "" : " (" + Figures.unit(s.label()) + ")"))
                .collect(Collectors.joining(", "));
        int decimals = scales.stream().mapToInt(Scale::decimals).max().orElse(2);
        return new ChartSpec.Panel(
                Figures.capital(label), shared ? scales.get(0).label() : "", decimals, layers);
    }

    private static List<String> places(NewTank tank) {
        return Places.gathered(
                tank.clearings().stream().flatMap(c -> c.cells().stream()).toList());
    }

    private static Optional<List<Layer>> line(Clearing clearing, Layer.Stroke stroke) {
        List<Reading> tests = clearing.tests();
        if (tests.isEmpty()) {
            return Optional.empty();
        }
        String name = CareWords.name(clearing.parameter());
        List<ChartSpec.At> points = tests.stream()
                .map(r ->
                        new ChartSpec.At(r.date(), r.scale().written(r.amount().about())))
                .toList();
        List<Layer> layers = new ArrayList<>(List.of(new Layer.Line(name, stroke, points)));
        marks(tests, "test of " + name, Layer.Shape.DOT, false).ifPresent(layers::add);
        marks(tests, "test of " + name + ", above what the kit shows", Layer.Shape.ABOVE, true)
                .ifPresent(layers::add);
        return Optional.of(layers);
    }

    private static Optional<Layer> marks(List<Reading> tests, String name, Layer.Shape shape, boolean above) {
        List<Layer.Mark> marks = tests.stream()
                .filter(r -> r.amount().match(e -> false, b -> false, a -> true, b -> false) == above)
                .map(NewTankItems::mark)
                .toList();
        return marks.isEmpty() ? Optional.empty() : Optional.of(new Layer.Marks(name, shape, marks));
    }

    private static Layer.Mark mark(Reading reading) {
        double about = reading.scale().written(reading.amount().about());
        String title = Figures.day(reading.date()) + ": " + CareWords.name(reading.parameter()) + " "
                + CareWords.figure(reading) + ", " + reading.at().place();
        return new Layer.Mark(
                reading.date(), about, about, about, title, reading.at().place());
    }

    private static Item standing(View view, NewTank tank) {
        List<Column> columns = List.of(
                Column.words("Test"), Column.words("Last"), new Column("On", "", Kind.DATE, 0), Column.words("Gone"));
        List<Row> rows = tank.clearings().stream().map(NewTankItems::row).toList();
        return new TableItem(id(view, tank, "standing"), "Where it stands", columns, rows, false, places(tank));
    }

    private static Row row(Clearing clearing) {
        boolean nitrate = clearing.parameter().id().equals("nitrate");
        String gone = nitrate
                ? "it is what the other two turn into; only water changes and growth lower it"
                : Text.clause(NotReady.when(clearing));
        return new Row(
                List.of(
                        Cell.words(CareWords.heading(clearing.parameter())),
                        Cell.words(clearing.last().map(CareWords::figure).orElse("not tested")),
                        clearing.last().<Cell>map(r -> new Cell.Day(r.date())).orElse(Cell.NOTHING),
                        Cell.words(Figures.capital(gone))),
                Places.gathered(clearing.cells()));
    }

    private static Optional<Item> free(View view, NewTank tank) {
        List<Column> columns = List.of(
                new Column("Day", "", Kind.DATE, 0),
                Column.words("Total"),
                Column.words("Salinity"),
                Column.words("Temperature"),
                Column.words("pH"),
                new Column("Free", "mg/L", Kind.NUMBER, 3));
        List<Row> rows = tank.free().stream()
                .map(f -> new Row(
                        java.util.stream.Stream.concat(
                                        java.util.stream.Stream.concat(
                                                java.util.stream.Stream.<Cell>of(new Cell.Day(f.on())),
                                                f.from().stream().map(r -> Cell.words(CareWords.figure(r)))),
                                        java.util.stream.Stream.of(new Cell.Number(f.mgPerLitre(), 3, "")))
                                .toList(),
                        Places.gathered(f.from().stream().map(Reading::at).toList())))
                .toList();
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableItem(
                        id(view, tank, "free"),
                        "The free part of the ammonia, the poisonous one (as N; pH taken on the total scale: a meter set in plain buffers "
                                + "would give about a quarter less)",
                        columns,
                        rows,
                        true,
                        List.of()));
    }

    private static Optional<Item> earlier(View view, NewTank tank) {
        List<Column> columns = List.of(
                Column.words("Tank"),
                new Column("First day", "", Kind.DATE, 0),
                Column.words("Days to enough clear tests"));
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                List.of(
                        Cell.words(tank.tank()),
                        new Cell.Day(tank.since()),
                        Cell.words(tank.zerosOn()
                                .map(d -> days(java.time.temporal.ChronoUnit.DAYS.between(tank.since(), d)))
                                .orElse("not yet, on day " + tank.age()))),
                List.of()));
        for (NewTank.Earlier other : tank.earlier()) {
            rows.add(new Row(
                    List.of(
                            Cell.words(other.tank()),
                            new Cell.Day(other.since()),
                            Cell.words(
                                    other.daysToZeros().isPresent()
                                            ? days(other.daysToZeros().getAsLong())
                                            : "the log does not show it")),
                    List.of()));
        }
        return tank.earlier().isEmpty()
                ? Optional.empty()
                : Optional.of(new TableItem(
                        id(view, tank, "earlier"), "Beside your earlier tanks", columns, rows, false, List.of()));
    }

    private static String days(long days) {
        return Figures.count((int) days, "day", "days");
    }

    private static Item rule(NewTank tank) {
        String first = tank.sinceStated()
                ? ""
                : " The first day is that of its first entry; write Since into the setup workbook, sheet Tanks, if it was filled before.";
        return CareBlocks.prose(CareBlocks.block(
                Prose.Kind.PARAGRAPH,
                "Ready means " + tank.zerosNeeded()
                        + " tests in a row without ammonia and without nitrite, and a challenge dose of ammonia "
                        + "gone within a day. That is common practice without a source; the number is yours to set (Preferences, zero tests). "
                        + "Days to come are by the trend of the readings since the highest one; brackets hold 9 of 10."
                        + first));
    }
}
