package soundings.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Reference;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.log.WaterChange;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** Sheets written row by row in a test, and what the program makes of them. */
final class Sheets {
    static final Reference REFERENCE = ReferenceTables.load();
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private Sheets() {}

    /** A sheet of rows; an empty text or null leaves a cell blank. */
    static Grid sheet(String name, Object[]... rows) {
        return sheet(name, List.of(), rows);
    }

    static Grid sheet(String name, List<Region> merges, Object[]... rows) {
        List<Cell> cells = new ArrayList<>();
        for (int r = 0; r < rows.length; r++) {
            for (int c = 0; c < rows[r].length; c++) {
                Object value = rows[r][c];
                if (value != null && !value.equals("")) {
                    cells.add(value instanceof Cell cell ? at(cell, r, c) : Cell.of(r, c, value(value)));
                }
            }
        }
        return Grid.of(name, false, cells, merges);
    }

    private static Cell at(Cell cell, int row, int column) {
        return new Cell(new CellRef(row, column), cell.value(), cell.look(), cell.comment());
    }

    static Value value(Object value) {
        if (value instanceof LocalDate date) {
            return new Value.Moment(date.toEpochDay() + 25_569, date.atStartOfDay(), Value.Shows.DATE);
        }
        return value instanceof Number number
                ? new Value.Numeric(number.doubleValue())
                : new Value.Text(value.toString());
    }

    static Object[] row(Object... cells) {
        return cells;
    }

    static Book book(Grid... grids) {
        return new Book("club.xlsx", List.of(grids), List.of());
    }

    static Log read(Grid... grids) {
        return read(Setup.EMPTY, grids);
    }

    static Log read(Setup setup, Grid... grids) {
        Log log = Layouts.interpret(book(grids), REFERENCE, setup, new Settings(TODAY, Optional.empty()));
        for (Grid grid : grids) {
            List<String> lost = unaccounted(grid, log);
            if (!lost.isEmpty()) {
                throw new AssertionError("cells accounted for by nothing: " + lost);
            }
        }
        return log;
    }

    /** The cells of a sheet that are neither entry nor label nor part of an issue. */
    static List<String> unaccounted(Grid grid, Log log) {
        Set<CellRef> seen = new HashSet<>();
        log.entries().stream().filter(e -> e.at().sheet().equals(grid.name())).forEach(e -> seen.add(e.at().cell()));
        log.labels().stream().filter(l -> l.sheet().equals(grid.name())).forEach(l -> seen.add(l.cell()));
        List<Issue> here = log.issues().stream()
                .filter(i ->
                        i.where().filter(w -> w.sheet().equals(grid.name())).isPresent())
                .toList();
        here.forEach(i -> i.where().ifPresent(w -> seen.add(w.cell())));
        return grid.cells().stream()
                .filter(c -> !seen.contains(c.at()))
                .filter(c -> here.stream().noneMatch(i -> covers(i, c)))
                .map(c -> grid.name() + "!" + c.at() + " " + c.shown())
                .toList();
    }

    private static boolean covers(Issue issue, Cell cell) {
        return issue.covers()
                .filter(r -> r.contains(cell.at().row(), cell.at().column()))
                .isPresent();
    }

    /** Every reading as {@code tank date parameter value unit}, with {@code refused} where it may not be used; sorted. */
    static List<String> readings(Log log) {
        return entries(log, Reading.class).stream()
                .map(r -> r.tank() + " " + r.date() + " " + r.parameter().id() + " "
                        + rounded(r.amount().about()) + (r.refused().isEmpty() ? "" : " refused"))
                .sorted()
                .toList();
    }

    static List<String> doses(Log log) {
        return entries(log, DoseRate.class).stream()
                .map(d -> d.tank() + " " + d.date() + " " + d.additive() + " " + rounded(d.mlPerDay()))
                .sorted()
                .toList();
    }

    static List<String> changes(Log log) {
        return entries(log, WaterChange.class).stream()
                .map(w -> w.tank() + " " + w.date() + " "
                        + (w.fraction().isPresent()
                                ? rounded(w.fraction().getAsDouble())
                                : rounded(w.litres().orElse(0)) + " L"))
                .sorted()
                .toList();
    }

    static List<String> issues(Log log) {
        return log.issues().stream().map(Issue::kind).sorted().toList();
    }

    static <T> List<T> entries(Log log, Class<T> type) {
        return log.entries().stream().filter(type::isInstance).map(type::cast).toList();
    }

    private static String rounded(double number) {
        double scaled = Math.rint(number * 1000) / 1000;
        return scaled == Math.rint(scaled) ? Long.toString((long) scaled) : Double.toString(scaled);
    }

    static LocalDate day(int month, int day) {
        return LocalDate.of(2026, month, day);
    }
}
