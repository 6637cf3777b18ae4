package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.notebook.ActionList;
import soundings.notebook.Cell;
import soundings.notebook.ChartSpec;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.notebook.Tone;

/**
 * Tables as a spreadsheet wants them: one value a cell. An interval takes three columns, a sparkline none (the chart's numbers have a
 * sheet of their own), and what a row rests on takes the last.
 */
final class Flat {
    private static final Column RESTS_ON = Column.words("Rests on");

    private Flat() {}

    static TableItem of(TableItem table) {
        boolean rests = table.rows().stream().anyMatch(r -> !r.restsOn().isEmpty());
        List<Column> columns = new ArrayList<>();
        table.columns().forEach(c -> columns.addAll(columns(c)));
        if (rests) {
            columns.add(RESTS_ON);
        }
        List<Row> rows =
                table.rows().stream().map(r -> row(r, table.columns(), rests)).toList();
        return new TableItem(table.id(), table.caption(), columns, rows, table.folded(), table.restsOn());
    }

    private static List<Column> columns(Column column) {
        return switch (column.kind()) {
            case SPARK -> List.of();
            case INTERVAL ->
                List.of(
                        number(column, column.heading()),
                        number(column, column.heading() + ", from"),
                        number(column, column.heading() + ", to"));
            case WORDS, NUMBER, DATE, ANSWER -> List.of(column);
        };
    }

    private static Column number(Column column, String heading) {
        return new Column(heading, column.unit(), Kind.NUMBER, column.decimals());
    }

    private static Row row(Row row, List<Column> columns, boolean rests) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            cells.addAll(cells(row.cells().get(i), columns.get(i).kind()));
        }
        if (rests) {
            cells.add(new Cell.Words(String.join(", ", row.restsOn()), Tone.QUIET, ""));
        }
        return new Row(cells, List.of());
    }

    private static List<Cell> cells(Cell cell, Kind kind) {
        return switch (kind) {
            case SPARK -> List.of();
            case INTERVAL ->
                cell.match(
                        words -> List.of(words, Cell.NOTHING, Cell.NOTHING),
                        number -> List.of(number, Cell.NOTHING, Cell.NOTHING),
                        Flat::three,
                        day -> List.of(day, Cell.NOTHING, Cell.NOTHING),
                        spark -> List.of(Cell.NOTHING, Cell.NOTHING, Cell.NOTHING));
            case WORDS, NUMBER, DATE, ANSWER -> List.of(cell);
        };
    }

    private static List<Cell> three(Cell.Range range) {
        return List.of(
                new Cell.Number(range.value().mid(), range.decimals(), range.unit()),
                new Cell.Number(range.value().low(), range.decimals(), ""),
                new Cell.Number(range.value().high(), range.decimals(), ""));
    }

    /** The link stands in a cell of its own: a spreadsheet may not wrap a cell that leads somewhere. */
    static TableItem of(ActionList actions) {
        List<Column> columns = Stream.of("When", "Tank", "What to do", "Why, and how sure", "See", "Rests on")
                .map(Column::words)
                .toList();
        List<Row> rows = actions.entries().stream().map(Flat::row).toList();
        return new TableItem(actions.id(), actions.caption(), columns, rows, false, actions.restsOn());
    }

    private static Row row(ActionList.Entry entry) {
        Tone tone = entry.when() == ActionList.When.NOW ? Tone.ACT : Tone.PLAIN;
        return new Row(
                List.of(
                        new Cell.Words(entry.when().words(), tone, ""),
                        Cell.words(entry.tank()),
                        new Cell.Words(
                                Stream.concat(Stream.of(entry.what()), entry.steps().stream())
                                        .collect(Collectors.joining("\n")),
                                tone,
                                ""),
                        Cell.words(why(entry)),
                        new Cell.Words(entry.target().isEmpty() ? "" : "evidence", Tone.PLAIN, entry.target()),
                        new Cell.Words(String.join(", ", entry.restsOn()), Tone.QUIET, "")),
                List.of());
    }

    private static String why(ActionList.Entry entry) {
        String sure = entry.sure().isEmpty() ? "" : "How sure: " + entry.sure() + ".";
        return Stream.of(entry.reasons(), List.of(sure), List.of(entry.caution()))
                .flatMap(List::stream)
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    /** Tests in units of their own have no axis in common: side by side they are a table. */
    static TableItem of(ChartSpec.RangeChart chart, List<String> restsOn) {
        List<Column> columns = List.of(
                Column.words("Test"),
                new Column("Level", "", Kind.NUMBER, 2),
                new Column("Level, from", "", Kind.NUMBER, 2),
                new Column("Level, to", "", Kind.NUMBER, 2),
                new Column("Range, low", "", Kind.NUMBER, 2),
                new Column("Range, high", "", Kind.NUMBER, 2));
        List<Row> rows = chart.entries().stream().map(Flat::row).toList();
        return new TableItem(chart.id(), chart.title(), columns, rows, false, restsOn);
    }

    private static Row row(ChartSpec.RangeChart.Entry e) {
        Cell level = new Cell.Number(e.level().mid(), e.decimals(), e.unit());
        Stream<Cell> ends = Stream.of(e.level().low(), e.level().high(), e.low(), e.high())
                .map(v -> new Cell.Number(v, e.decimals(), ""));
        return new Row(
                Stream.concat(Stream.of(Cell.words(e.label()), level), ends).toList(), List.of());
    }

    static String header(Column column) {
        String unit = Figures.unit(column.unit());
        return unit.isEmpty() ? column.heading() : column.heading() + " (" + unit + ")";
    }
}
