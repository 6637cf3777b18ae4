package soundings.notebook;

import java.util.List;
import java.util.function.Function;

/**
 * A table; every row has a cell for every column.
 *
 * @param id unique in the notebook
 * @param caption a sentence or a noun, without "Table 3"
 * @param folded shown closed at first where the medium can; on paper only its caption stands
 */
public record TableItem(
        String id, String caption, List<Column> columns, List<Row> rows, boolean folded, List<String> restsOn)
        implements Item {
    public TableItem {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        restsOn = List.copyOf(restsOn);
        for (Row row : rows) {
            if (row.cells().size() != columns.size()) {
                throw new IllegalArgumentException("table " + id + " has " + columns.size() + " columns, a row has "
                        + row.cells().size());
            }
        }
    }

    @Override
    public <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions) {
        return table.apply(this);
    }

    /** A column; {@code unit} and {@code decimals} hold for its numbers unless a cell says otherwise. */
    public record Column(String heading, String unit, Kind kind, int decimals) {
        public static Column words(String heading) {
            return new Column(heading, "", Kind.WORDS, 0);
        }
    }

    /** What a column holds, as far as width and alignment go. */
    public enum Kind {
        WORDS,
        NUMBER,
        INTERVAL,
        DATE,
        SPARK,
        /** Left blank for somebody to write in. */
        ANSWER
    }

    /** A row; the first cell is its header. */
    public record Row(List<Cell> cells, List<String> restsOn) {
        public Row {
            cells = List.copyOf(cells);
            restsOn = List.copyOf(restsOn);
        }
    }
}
