package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** An area laid out anew with some of its cells taken apart, each part in a column of its own and with the place of the whole. */
final class Unfolding {
    private final Area area;
    private final IntUnaryOperator columns;
    private final Map<CellRef, CellRef> places = new HashMap<>();

    private Unfolding(Area area, IntUnaryOperator columns) {
        this.area = area;
        this.columns = columns;
    }

    /** A piece of a cell, so many columns right of where the cell would stand. */
    record Part(int offset, Value value) {
        /** One a text, blank ones left out. */
        static List<Part> of(List<String> texts) {
            return IntStream.range(0, texts.size())
                    .filter(i -> !texts.get(i).isBlank())
                    .mapToObj(i -> new Part(i, new Value.Text(texts.get(i).strip())))
                    .toList();
        }
    }

    /**
     * @param columns where each column of the area goes, in the same order and with room for its parts
     * @param parts those of a cell, from left to right; none for a cell that stays whole
     */
    static Area of(Area area, IntUnaryOperator columns, boolean dated, Function<Cell, List<Part>> parts) {
        Unfolding unfolding = new Unfolding(area, columns);
        List<Line> lines =
                area.lines().stream().map(l -> unfolding.line(l, parts)).toList();
        List<Region> merges = area.merges().stream()
                .map(m -> new Region(unfolding.moved(m.first(), 0), unfolding.moved(m.last(), 0)))
                .toList();
        return new Area(area.sheet(), Places.Moved.of(unfolding.places, dated), lines, merges);
    }

    private Line line(Line line, Function<Cell, List<Part>> parts) {
        List<Cell> cells = new ArrayList<>();
        for (Cell cell : line.cells()) {
            String comment = cell.comment();
            List<Part> some = parts.apply(cell);
            for (Part part : some.isEmpty() ? List.of(new Part(0, cell.value())) : some) {
                CellRef at = moved(cell.at(), part.offset());
                places.put(at, area.place(cell));
                cells.add(new Cell(at, part.value(), cell.look(), comment));
                comment = "";
            }
        }
        return new Line(line.row(), List.copyOf(cells));
    }

    private CellRef moved(CellRef at, int offset) {
        return new CellRef(at.row(), columns.applyAsInt(at.column()) + offset);
    }
}
