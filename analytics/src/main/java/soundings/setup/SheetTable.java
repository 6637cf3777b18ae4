package soundings.setup;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import soundings.chemistry.Names;
import soundings.log.AsWritten;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;

/** A sheet whose first row names its columns; names are matched folded, order is free. */
record SheetTable(Grid grid, Map<String, Integer> columns) {
    SheetTable {
        columns = Map.copyOf(columns);
    }

    static Optional<SheetTable> find(Book book, String sheet) {
        return book.grids().stream()
                .filter(g -> Names.fold(g.name()).equals(Names.fold(sheet)))
                .findFirst()
                .map(g -> new SheetTable(g, headers(g)));
    }

    private static Map<String, Integer> headers(Grid grid) {
        Map<String, Integer> columns = new HashMap<>();
        grid.row(0).forEach(c -> columns.putIfAbsent(Names.fold(c.shown()), c.at().column()));
        return columns;
    }

    boolean has(String column) {
        return columns.containsKey(Names.fold(column));
    }

    /** The rows under the header that hold anything in a column of ours. */
    List<Row> rows() {
        return IntStream.range(1, grid.rowCount())
                .filter(r -> grid.row(r).stream().anyMatch(c -> columns.containsValue(c.at().column())))
                .mapToObj(r -> new Row(this, r))
                .toList();
    }

    AsWritten headerPlace() {
        return new AsWritten(
                grid.name(),
                new CellRef(0, 0),
                grid.findCell(0, 0).map(Cell::shown).orElse(""));
    }

    /** One row under the header. */
    record Row(SheetTable table, int row) {
        /** The cell under a column's name; blank, struck-out and absent ones alike are empty. */
        Optional<Cell> cell(String column) {
            return Optional.ofNullable(table.columns.get(Names.fold(column)))
                    .flatMap(c -> table.grid.findCell(row, c))
                    .filter(c -> !c.look().struck() && !c.shown().isBlank());
        }

        String text(String column) {
            return cell(column).map(c -> c.shown().strip()).orElse("");
        }

        AsWritten at(String column) {
            int place = table.columns.getOrDefault(Names.fold(column), 0);
            return new AsWritten(table.grid.name(), new CellRef(row, place), text(column));
        }

        String place(String column) {
            return at(column).place();
        }
    }
}
