package soundings.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.Dates;

/** The cells below a heading, counted by what they look like. */
record Column(List<Cell> cells, Map<Kind, Integer> kinds, int serials, int days, int different, int manyWords) {
    static final Column EMPTY = new Column(List.of(), Map.of(), 0, 0, 0, 0);

    /** A day as a number: counted from 1900, between 1982 and 2064, or its figures in a row, {@code 20260503}. */
    static boolean serial(double number) {
        return Dates.serial(number).isPresent();
    }

    static boolean dayOfMonth(double number) {
        return number >= 1 && number <= 31 && number == Math.rint(number);
    }

    /** The columns of a table's body by number. */
    static Map<Integer, Column> of(List<Line> body, Words words) {
        Map<Integer, List<Cell>> cells = new HashMap<>();
        body.forEach(line -> line.cells()
                .forEach(c -> cells.computeIfAbsent(c.at().column(), k -> new ArrayList<>())
                        .add(c)));
        Map<Integer, Column> columns = new HashMap<>();
        cells.forEach((column, own) -> columns.put(column, count(own, words)));
        return columns;
    }

    private static Column count(List<Cell> cells, Words words) {
        Map<Kind, Integer> kinds = new EnumMap<>(Kind.class);
        Set<String> texts = new HashSet<>();
        int serials = 0;
        int days = 0;
        int manyWords = 0;
        for (Cell cell : cells) {
            kinds.merge(words.kind(cell), 1, Integer::sum);
            double number = cell.value() instanceof Value.Numeric numeric ? numeric.number() : 0;
            serials += serial(number) ? 1 : 0;
            days += DateColumn.day(cell) > 0 ? 1 : 0;
            if (cell.value() instanceof Value.Text text) {
                texts.add(text.text().strip());
                manyWords += text.text().strip().indexOf(' ') > 0 ? 1 : 0;
            }
        }
        return new Column(List.copyOf(cells), kinds, serials, days, texts.size(), manyWords);
    }

    int count(Kind kind) {
        return kinds.getOrDefault(kind, 0);
    }

    int size() {
        return cells.size();
    }

    /** The share of cells that are dates, dittos aside; a serial number is one, a plain day of the month only where {@code daysCount}. */
    double dated(boolean daysCount) {
        int dates = count(Kind.DATE) + serials + (daysCount ? days : 0);
        int said = size() - count(Kind.NOTHING);
        return said == 0 ? 0 : dates / (double) said;
    }

    double share(Kind kind) {
        return size() == 0 ? 0 : count(kind) / (double) size();
    }

    boolean textual() {
        return count(Kind.WORDS) + count(Kind.LABEL) + count(Kind.UNIT) > size() / 2;
    }
}
