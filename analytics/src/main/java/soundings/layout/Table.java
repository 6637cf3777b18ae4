package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import soundings.sheet.Cell;

/**
 * One table of a sheet, records running down.
 *
 * @param titles text lines that stand above it
 * @param band the lines that head its columns; empty when it has none
 * @param repeats heading lines that come again inside it
 * @param body the rest, in order
 */
record Table(Area area, List<Line> titles, List<Line> band, List<Line> repeats, List<Line> body) {

    /** Only the columns {@code from} to {@code to}; titles stay where they begin. */
    Table columns(int from, int to) {
        return new Table(area, cut(titles, from, to), cut(band, from, to), cut(repeats, from, to), cut(body, from, to));
    }

    private static List<Line> cut(List<Line> lines, int from, int to) {
        return lines.stream().flatMap(l -> l.between(from, to).stream()).toList();
    }

    Table entitled(List<Line> more) {
        if (more.isEmpty()) {
            return this;
        }
        List<Line> all = new ArrayList<>(more);
        all.addAll(titles);
        return new Table(area, List.copyOf(all), band, repeats, body);
    }

    Table withBody(List<Line> more, List<Line> again) {
        List<Line> all = new ArrayList<>(body);
        all.addAll(more);
        List<Line> headings = new ArrayList<>(repeats);
        headings.addAll(again);
        return new Table(area, titles, band, List.copyOf(headings), List.copyOf(all));
    }

    /** Every column that holds a heading or a value, in order. */
    List<Integer> usedColumns() {
        List<Line> all = new ArrayList<>(band);
        all.addAll(body);
        return new Area(area.sheet(), area.places(), all, List.of()).usedColumns();
    }

    /** Every line of it, in order. */
    List<Line> lines() {
        List<Line> all = new ArrayList<>(titles);
        all.addAll(band);
        all.addAll(repeats);
        all.addAll(body);
        all.sort((a, b) -> Integer.compare(a.row(), b.row()));
        return all;
    }

    List<String> titleTexts() {
        return titles.stream().flatMap(l -> l.cells().stream()).map(Cell::shown).toList();
    }
}
