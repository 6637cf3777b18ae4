package soundings.xlsx;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.notebook.ActionList;
import soundings.notebook.Cell;
import soundings.notebook.ChartItem;
import soundings.notebook.ChartSpec;
import soundings.notebook.Item;
import soundings.notebook.Layer;
import soundings.notebook.Notebook;
import soundings.notebook.Prose;
import soundings.notebook.Section;
import soundings.notebook.TableItem;
import soundings.notebook.Tone;
import soundings.notebook.WorkingItem;
import soundings.quantity.Interval;

/** A made-up report with one of everything; its figures are invented. */
final class SampleReport {
    static final LocalDate START = LocalDate.of(2025, 1, 6);

    private SampleReport() {}

    static Notebook small() {
        return of(40, "Long tank");
    }

    /** @param readings how many rows the table of readings has */
    static Notebook of(int readings, String... tanks) {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("month", "This month", 2, List.of(finding(), actions(), overview())));
        for (String tank : tanks) {
            sections.add(new Section("tank-" + tank, tank, 2, List.of(prose(), ranges("ranges-" + tank))));
            sections.add(new Section(
                    "alk-" + tank, "Alkalinity", 3, List.of(chart("alk-chart-" + tank), working("w-" + tank))));
        }
        sections.add(new Section("readings", "Readings", 2, List.of(readings(readings))));
        return new Notebook("April 2026", "Report on club log.xlsx", sections);
    }

    static Item finding() {
        return new Prose(
                List.of(
                        new Prose.Block(
                                Prose.Kind.FINDING,
                                List.of(Prose.Span.plain(
                                        "Alkalinity in the long tank is used up faster than it is dosed."))),
                        new Prose.Block(
                                Prose.Kind.CAUTION,
                                List.of(
                                        Prose.Span.plain(
                                                "Concentrated solutions burn skin and eyes: read the label and keep to local rules.")))),
                List.of());
    }

    static Item prose() {
        return new Prose(
                List.of(
                        new Prose.Block(
                                Prose.Kind.PARAGRAPH, List.of(Prose.Span.plain("300 litres, tested twice a week."))),
                        new Prose.Block(Prose.Kind.BULLET, List.of(Prose.Span.plain("A point"))),
                        new Prose.Block(Prose.Kind.QUOTE, List.of(Prose.Span.plain("=1+1 looks odd, says the log")))),
                List.of("Notes!B4"));
    }

    static ActionList actions() {
        return new ActionList(
                "actions",
                "What to do this month",
                List.of(
                        new ActionList.Entry(
                                ActionList.When.NOW,
                                "Long tank",
                                "Raise the alkalinity dose from 30 to 38 mL a day",
                                List.of("On the first day 12 mL more."),
                                List.of("It falls by 0.11 dKH a day.", "Below 7 dKH is likely within 9 days."),
                                "very likely (96 %)",
                                "Not more than 1 dKH a day.",
                                "w-Long tank",
                                List.of("Tests!D2:D98")),
                        new ActionList.Entry(
                                ActionList.When.HANDY,
                                "",
                                "Replace the worn cord",
                                List.of(),
                                List.of(),
                                "",
                                "",
                                "",
                                List.of())),
                "Nothing to do.",
                List.of());
    }

    static TableItem overview() {
        List<TableItem.Column> columns = List.of(
                TableItem.Column.words("Tank"),
                TableItem.Column.words("Test"),
                new TableItem.Column("Level", "", TableItem.Kind.INTERVAL, 1),
                new TableItem.Column("Last test", "", TableItem.Kind.DATE, 0),
                TableItem.Column.words("Verdict"),
                new TableItem.Column("Trend", "", TableItem.Kind.SPARK, 0));
        return new TableItem(
                "overview",
                "Every test",
                columns,
                List.of(new TableItem.Row(
                        List.of(
                                Cell.words("Long tank"),
                                Cell.words("Alkalinity"),
                                new Cell.Range(new Interval(7.6, 7.3, 7.9), 1, "dKH"),
                                new Cell.Day(START),
                                new Cell.Words("drifting down", Tone.ACT, "alk-Long tank"),
                                new Cell.Spark(new ChartSpec.SparkLine(
                                        "s", "s", "falls", "dKH", 1, List.of(), Optional.empty()))),
                        List.of("Tests!D2:D98"))),
                false,
                List.of());
    }

    static ChartItem chart(String id) {
        List<Layer.Mark> marks = IntStream.range(0, 60)
                .mapToObj(i -> mark(START.plusDays(i * 3L), 8.4 - i * 0.011 + 0.25 * Math.sin(i * 2.7)))
                .toList();
        List<Layer.Span> spans = IntStream.range(0, 60)
                .mapToObj(i -> new Layer.Span(START.plusDays(i * 3L), 8.2 - i * 0.011, 8.6 - i * 0.011))
                .toList();
        List<ChartSpec.At> level = spans.stream()
                .map(s -> new ChartSpec.At(s.on(), (s.low() + s.high()) / 2))
                .toList();
        ChartSpec.Panel panel = new ChartSpec.Panel(
                "Alkalinity",
                "dKH",
                1,
                List.of(
                        new Layer.Target("Range to keep", new ChartSpec.Within(7, 9)),
                        new Layer.Verticals(
                                "Water change",
                                List.of(
                                        new Layer.Happening(START.plusDays(30), "10 %", "Log!C9"),
                                        new Layer.Happening(START.plusDays(60), "10 %", "Log!C19"))),
                        new Layer.Band("Level, 90 %", Layer.Stroke.SOLID, spans),
                        new Layer.Line("Level", Layer.Stroke.SOLID, level),
                        new Layer.Marks("Reading", Layer.Shape.DOT, marks),
                        new Layer.Marks("Set aside", Layer.Shape.CROSS, List.of(mark(START.plusDays(77), 6.2)))));
        ChartSpec.Panel doses = new ChartSpec.Panel(
                "Dose",
                "mL/day",
                0,
                List.of(new Layer.Line(
                        "Dose",
                        Layer.Stroke.STEP,
                        List.of(new ChartSpec.At(START, 24), new ChartSpec.At(START.plusDays(90), 30)))));
        return new ChartItem(
                new ChartSpec.TimeChart(
                        id,
                        "Alkalinity, long tank",
                        "Alkalinity fell from 8.4 to 7.7 dKH between January and July while the dose rose once.",
                        START,
                        START.plusDays(180),
                        panel,
                        Optional.of(doses)),
                List.of("Tests!D2:D98"));
    }

    static ChartItem ranges(String id) {
        return new ChartItem(
                new ChartSpec.RangeChart(
                        id,
                        "Long tank: each test against its range",
                        "1 of 2 tests lies inside its range; outside: alkalinity below.",
                        List.of(
                                new ChartSpec.RangeChart.Entry(
                                        "Alkalinity", "dKH", 2, new Interval(6.5, 6.4, 6.7), 7, 9, ""),
                                new ChartSpec.RangeChart.Entry(
                                        "Calcium", "mg/L", 0, new Interval(430, 410, 445), 400, 450, ""))),
                List.of());
    }

    private static Layer.Mark mark(LocalDate on, double value) {
        return new Layer.Mark(on, value, value - 0.1, value + 0.1, "", "Tests!D4");
    }

    static WorkingItem working(String id) {
        return new WorkingItem(
                id,
                "Maintenance dose of alkalinity, long tank",
                "37.9 mL a day keeps the level.",
                List.of(
                        new WorkingItem.Line("use", "use a day", 1.0 / 3, 3, "dKH", "", "Tests!D2:D98"),
                        new WorkingItem.Line("litres", "water in the tank", 300, 0, "L", "", "Setup, Tanks!B2"),
                        new WorkingItem.Line("rise", "rise of 1 mL in 1 L", 2.64, 2, "dKH", "", "Setup, Additives!D2"),
                        new WorkingItem.Line(
                                "dose", "dose a day", 1.0 / 3 * 300 / 2.64, 1, "mL", "use * litres / rise", "")),
                List.of());
    }

    static TableItem readings(int count) {
        List<TableItem.Column> columns = List.of(
                new TableItem.Column("Date", "", TableItem.Kind.DATE, 0),
                TableItem.Column.words("Tank"),
                TableItem.Column.words("Test"),
                new TableItem.Column("Result", "", TableItem.Kind.NUMBER, 2),
                TableItem.Column.words("Unit"),
                TableItem.Column.words("As written"),
                TableItem.Column.words("Used"),
                TableItem.Column.words("Cell"));
        List<TableItem.Row> rows = IntStream.range(0, count)
                .mapToObj(i -> new TableItem.Row(
                        Stream.of(
                                        new Cell.Day(START.plusDays(i / 8)),
                                        Cell.words("Long tank"),
                                        Cell.words("Alkalinity"),
                                        new Cell.Number(8 + (i % 17) * 0.05, 2, ""),
                                        Cell.words("dKH"),
                                        Cell.words(i == 3 ? "=HYPERLINK(\"http://example.org\",\"8.2\")" : "8.2"),
                                        Cell.words("used"),
                                        Cell.words("Tests!D" + (i + 2)))
                                .map(Cell.class::cast)
                                .toList(),
                        List.of()))
                .toList();
        return new TableItem("readings-table", "All readings", columns, rows, false, List.of());
    }
}
