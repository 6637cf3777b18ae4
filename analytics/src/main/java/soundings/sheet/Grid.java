package soundings.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One sheet: its non-empty cells in reading order, found again by place, and its merged areas. */
public final class Grid {
    private final String name;
    private final boolean hidden;
    private final List<Cell> cells;
    private final List<Region> merges;
    private final Map<Integer, List<Cell>> rows;

    private Grid(String name, boolean hidden, List<Cell> cells, List<Region> merges) {
        this.name = name;
        this.hidden = hidden;
        this.cells = cells;
        this.merges = merges;
        this.rows = byRow(cells);
    }

    /** @param cells in any order, no two at one place */
    public static Grid of(String name, boolean hidden, List<Cell> cells, List<Region> merges) {
        List<Cell> sorted = new ArrayList<>(cells);
        sorted.sort(Comparator.comparing(Cell::at));
        return new Grid(name, hidden, List.copyOf(sorted), List.copyOf(merges));
    }

    private static Map<Integer, List<Cell>> byRow(List<Cell> sorted) {
        Map<Integer, List<Cell>> rows = new HashMap<>();
        int from = 0;
        for (int i = 1; i <= sorted.size(); i++) {
            if (i == sorted.size()
                    || sorted.get(i).at().row() != sorted.get(from).at().row()) {
                rows.put(sorted.get(from).at().row(), sorted.subList(from, i));
                from = i;
            }
        }
        return rows;
    }

    public String name() {
        return name;
    }

    public boolean hidden() {
        return hidden;
    }

    public List<Cell> cells() {
        return cells;
    }

    public List<Region> merges() {
        return merges;
    }

    /** The non-empty cells of one row from left to right; empty for a blank row. */
    public List<Cell> row(int row) {
        return rows.getOrDefault(row, List.of());
    }

    public Optional<Cell> findCell(int row, int column) {
        List<Cell> cellsOfRow = row(row);
        int low = 0;
        int high = cellsOfRow.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int order = Integer.compare(cellsOfRow.get(middle).at().column(), column);
            if (order == 0) {
                return Optional.of(cellsOfRow.get(middle));
            }
            if (order < 0) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return Optional.empty();
    }

    /** One past the last row that holds a value. */
    public int rowCount() {
        return cells.isEmpty() ? 0 : cells.get(cells.size() - 1).at().row() + 1;
    }
}
