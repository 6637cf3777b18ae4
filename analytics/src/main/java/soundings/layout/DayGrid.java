package soundings.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Look;
import soundings.sheet.Region;
import soundings.sheet.Value;

/**
 * A grid whose every cell has a day of its own, told by its column and its row together, laid out anew as one line for each cell: the
 * day, what stands before the grid's columns, the cell.
 */
final class DayGrid {
    static final String BECAUSE = "the day is told by the column and the row together";
    private static final int DATE = 0;
    private static final int FIRST = 1;

    private final Area area;
    private final List<Integer> columns;
    private final List<Integer> before;
    private final Map<CellRef, CellRef> places = new HashMap<>();
    private final List<Line> body = new ArrayList<>();
    private final List<Line> heads = new ArrayList<>();
    private final List<Line> titles = new ArrayList<>();
    private int row;

    /**
     * @param columns whose cells have days of their own
     * @param before the columns that say what a line is about
     */
    DayGrid(Area area, List<Integer> columns, List<Integer> before) {
        this.area = area;
        this.columns = List.copyOf(columns);
        this.before = List.copyOf(before);
    }

    void title(Line line) {
        titles.add(moved(line));
    }

    void head(Line line) {
        heads.add(moved(line));
    }

    /** Gives each cell of a line that has a day a line of its own; what has none stays together. */
    void line(Line line, IntFunction<Optional<LocalDate>> days) {
        List<Cell> rest = new ArrayList<>();
        for (Cell cell : line.cells()) {
            Optional<LocalDate> day =
                    columns.contains(cell.at().column()) ? days.apply(cell.at().column()) : Optional.empty();
            if (day.isPresent()) {
                dated(line, cell, day.get());
            } else {
                rest.add(cell);
            }
        }
        boolean said = rest.size() < line.cells().size();
        List<Cell> open = rest.stream()
                .filter(c -> !said || !before.contains(c.at().column()))
                .toList();
        if (!open.isEmpty()) {
            body.add(moved(new Line(line.row(), open)));
        }
    }

    private void dated(Line line, Cell cell, LocalDate day) {
        List<Cell> cells = new ArrayList<>();
        double serial = day.toEpochDay() + 25_569.0;
        Value moment = new Value.Moment(serial, day.atStartOfDay(), Value.Shows.DATE);
        cells.add(put(new Cell(cell.at(), moment, Look.PLAIN, ""), DATE));
        for (int i = 0; i < before.size(); i++) {
            int to = FIRST + i;
            line.at(before.get(i)).ifPresent(c -> cells.add(put(new Cell(c.at(), c.value(), c.look(), ""), to)));
        }
        cells.add(put(cell, value()));
        body.add(new Line(row++, List.copyOf(cells)));
    }

    private int value() {
        return FIRST + before.size();
    }

    private Cell put(Cell cell, int column) {
        CellRef at = new CellRef(row, column);
        places.put(at, area.place(cell));
        return new Cell(at, cell.value(), cell.look(), cell.comment());
    }

    /** A line as it is, behind the columns of the others. */
    private Line moved(Line line) {
        List<Cell> cells = line.cells().stream()
                .map(c -> put(c, value() + 1 + c.at().column()))
                .toList();
        return new Line(row++, cells);
    }

    boolean empty() {
        return body.isEmpty();
    }

    /** @param labels what the columns before the grid are headed by */
    Shape shape(Map<Integer, Label> labels, Words words) {
        Area laid = new Area(area.sheet(), Places.Moved.of(places, false), List.copyOf(body), List.<Region>of());
        Table table = new Table(laid, titles, List.of(), heads, body);
        List<Field> fields = new ArrayList<>();
        for (int column : table.usedColumns()) {
            Label label = column == DATE ? Label.of(Role.DATE, 0.9) : label(column, labels);
            boolean day = column == DATE;
            fields.add(new Field(
                    column, List.of(), "", label, day ? Set.of(Inferred.DATE) : Set.of(), day ? BECAUSE : ""));
        }
        return new Shape(table, Topic.of(table, words), fields, Column.of(body, words), "");
    }

    /** Behind the grid's own cells stands what has no day. */
    private Label label(int column, Map<Integer, Label> labels) {
        int own = column - FIRST;
        return own < before.size()
                ? labels.getOrDefault(before.get(own), Label.UNKNOWN)
                : column == value() ? Label.UNKNOWN : Label.of(Role.IGNORED, 0.5);
    }
}
