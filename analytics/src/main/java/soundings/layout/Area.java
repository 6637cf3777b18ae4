package soundings.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import soundings.log.AsWritten;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Region;

/**
 * A part of a sheet as lines of cells, either upright or turned, so that what follows can always take records to run
 * down. Places handed out are those of the sheet.
 */
record Area(String sheet, Places places, List<Line> lines, List<Region> merges) {

    static Area of(Grid grid) {
        return new Area(grid.name(), Places.UPRIGHT, lines(grid.cells()), grid.merges());
    }

    /** The same cells with rows and columns exchanged. */
    Area turn() {
        List<Cell> cells = new ArrayList<>();
        lines.forEach(line -> line.cells().forEach(c -> cells.add(turn(c))));
        cells.sort(Comparator.comparing(Cell::at));
        return new Area(
                sheet,
                places.turn(),
                lines(cells),
                merges.stream()
                        .map(m -> new Region(turn(m.first()), turn(m.last())))
                        .toList());
    }

    static Cell turn(Cell cell) {
        return new Cell(turn(cell.at()), cell.value(), cell.look(), cell.comment());
    }

    private static CellRef turn(CellRef at) {
        return Places.TURNED.of(at);
    }

    /** Whether rows and columns are exchanged. */
    boolean turned() {
        return places.turned();
    }

    private static List<Line> lines(List<Cell> sorted) {
        List<Line> lines = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            if (i == sorted.size()
                    || sorted.get(i).at().row() != sorted.get(from).at().row()) {
                lines.add(new Line(sorted.get(from).at().row(), sorted.subList(from, i)));
                from = i;
            }
        }
        return List.copyOf(lines);
    }

    /** The columns {@code from} to {@code to}, both included. */
    Area columns(int from, int to) {
        List<Line> kept = new ArrayList<>();
        lines.forEach(line -> line.between(from, to).ifPresent(kept::add));
        return new Area(sheet, places, List.copyOf(kept), merges);
    }

    /** Every column that holds something, in order. */
    List<Integer> usedColumns() {
        TreeSet<Integer> used = new TreeSet<>();
        lines.forEach(line -> line.cells().forEach(c -> used.add(c.at().column())));
        return List.copyOf(used);
    }

    CellRef place(Cell cell) {
        return places.of(cell.at());
    }

    AsWritten written(Cell cell) {
        return new AsWritten(sheet, place(cell), cell.shown());
    }

    /** The smallest rectangle of the sheet around some lines; the lines are not empty. */
    Region around(List<Line> some) {
        IntSummaryStatistics rows = new IntSummaryStatistics();
        IntSummaryStatistics columns = new IntSummaryStatistics();
        for (Line line : some) {
            for (Cell cell :
                    List.of(line.cells().get(0), line.cells().get(line.cells().size() - 1))) {
                rows.accept(place(cell).row());
                columns.accept(place(cell).column());
            }
        }
        return new Region(new CellRef(rows.getMin(), columns.getMin()), new CellRef(rows.getMax(), columns.getMax()));
    }

    /** The merged area, in this area's own directions, that starts at a cell. */
    Optional<Region> mergeAt(Cell cell) {
        return merges.stream().filter(m -> m.first().equals(cell.at())).findFirst();
    }
}
