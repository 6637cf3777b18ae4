package soundings.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import soundings.layout.Unfolding.Part;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** Columns that hold several tests, {@code 8.2 / 420 / 1300} under {@code Alk/Ca/Mg}, taken apart into one a test. */
final class JoinedColumns {
    /** Between names, but not within brackets, where units stand. */
    private static final Pattern NAMES = Pattern.compile("\\s*[/|+&;,]\\s*(?![^()\\[\\]]*[)\\]])");

    private static final List<Pattern> BETWEEN = List.of(
            Pattern.compile("\\s*/\\s*"),
            Pattern.compile("\\s*[|;]\\s*"),
            Pattern.compile("\\s+[-–]\\s+"),
            Pattern.compile(",\\s+"),
            Pattern.compile("\\s+"));
    /** A figure of its own: no name has one. */
    private static final Pattern FIGURE = Pattern.compile("\\s[0-9]");

    private static final int LONGEST = 80;
    private static final int LONGEST_NAME = 30;
    private static final double MOST = 0.6;

    private final Area area;
    private final Words words;
    private final Map<Integer, Joined> columns = new TreeMap<>();

    private JoinedColumns(Area area, Words words) {
        this.area = area;
        this.words = words;
    }

    /**
     * @param row of the first heading
     * @param pair whether it is a column of a tank and a test
     */
    private record Joined(int row, int tests, boolean pair) {}

    /** The area with a column a test; as it is where none is shared. A cell that does not hold them all stays whole behind them. */
    static Area apart(Area area, Words words) {
        JoinedColumns joined = new JoinedColumns(area, words);
        joined.find();
        joined.columns.entrySet().removeIf(e -> !joined.filled(e.getKey(), e.getValue()));
        return joined.columns.isEmpty() ? area : Unfolding.of(area, joined::moved, false, joined::parts);
    }

    private void find() {
        for (Line line : area.lines()) {
            if (line.cells().stream().anyMatch(c -> !(c.value() instanceof Value.Text))) {
                continue;
            }
            for (Cell cell : line.cells()) {
                int column = cell.at().column();
                List<String> names = columns.containsKey(column) ? List.of() : names(cell);
                if (names.size() > 1) {
                    boolean pair = words.inCompany(names.get(0)).role() != Role.READING;
                    columns.put(column, new Joined(line.row(), names.size(), pair));
                }
            }
        }
    }

    /** The tests a heading names; empty where it is no heading of several different ones. */
    private List<String> names(Cell cell) {
        if (!(cell.value() instanceof Value.Text text) || text.text().length() > LONGEST || !starts(text.text())) {
            return List.of();
        }
        List<String> names = Arrays.asList(NAMES.split(text.text().strip()));
        if (names.size() < 2
                || names.stream()
                        .anyMatch(n ->
                                n.length() > LONGEST_NAME || FIGURE.matcher(n).find())) {
            return List.of();
        }
        List<Label> labels = names.stream().map(words::inCompany).toList();
        long tests = labels.stream()
                .filter(l -> l.role() == Role.READING)
                .flatMap(l -> l.parameter().stream())
                .distinct()
                .count();
        boolean pair = names.size() == 2
                && labels.stream().filter(l -> l.role() == Role.TANK).count() == 1
                && labels.stream().anyMatch(l -> l.role() == Role.TEST || l.role() == Role.UNKNOWN);
        return tests == names.size() || pair ? names : List.of();
    }

    private static boolean starts(String text) {
        return text.chars().anyMatch(c -> "/|+&;,".indexOf(c) >= 0)
                && Character.isLetter(text.strip().charAt(0));
    }

    private boolean filled(int column, Joined joined) {
        List<Cell> below = area.lines().stream()
                .filter(l -> l.row() > joined.row())
                .flatMap(l -> l.at(column).stream())
                .toList();
        long whole = below.stream().filter(c -> results(c, joined).isPresent()).count();
        return whole >= 2 && whole >= MOST * below.size();
    }

    private int moved(int column) {
        return column
                + columns.entrySet().stream()
                        .filter(e -> e.getKey() < column)
                        .mapToInt(e -> e.getValue().tests())
                        .sum();
    }

    private List<Part> parts(Cell cell) {
        Joined joined = columns.get(cell.at().column());
        if (joined == null || cell.at().row() < joined.row()) {
            return List.of();
        }
        List<String> names = names(cell);
        if (names.size() == joined.tests()) {
            return Part.of(names);
        }
        return results(cell, joined).map(Part::of).orElse(List.of(new Part(joined.tests(), cell.value())));
    }

    private Optional<List<String>> results(Cell cell, Joined joined) {
        return cell.value() instanceof Value.Text text
                        && text.text().length() <= LONGEST
                        && words.kind(cell) != Kind.UNIT
                ? BETWEEN.stream()
                        .map(b -> Arrays.asList(b.split(text.text().strip(), -1)))
                        .filter(p -> p.size() == joined.tests()
                                && (joined.pair() ? pair(p) : p.stream().allMatch(this::result)))
                        .findFirst()
                : Optional.empty();
    }

    /** A name and a test. */
    private boolean pair(List<String> parts) {
        return parts.stream().noneMatch(String::isBlank)
                && parts.stream()
                                .filter(p ->
                                        words.inCompany(p.strip()).parameter().isPresent())
                                .count()
                        == 1;
    }

    private boolean result(String part) {
        Kind kind = words.kind(part.strip());
        return part.isBlank() || kind == Kind.NUMBER || kind == Kind.NOTHING || kind == Kind.UNIT;
    }
}
