package soundings.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.sheet.Region;

/** Reads the heading band of a table column by column: each label stands for the columns below and, merged or sparse, to its right. */
final class Fields {
    private final Table table;
    private final Words words;
    private final Tanks tanks;
    private final int first;
    private final int densest;
    private final boolean company;

    private Fields(Table table, Words words, Tanks tanks) {
        this.table = table;
        this.words = words;
        this.tanks = tanks;
        this.first = table.usedColumns().stream().mapToInt(c -> c).min().orElse(0);
        this.densest = table.band().stream().mapToInt(this::beyondFirst).max().orElse(0);
        this.company = table.band().stream()
                        .flatMap(l -> l.cells().stream())
                        .filter(c -> words.label(c).role() == Role.READING)
                        .count()
                >= 2;
    }

    static List<Field> of(Table table, Words words, Tanks tanks) {
        Fields fields = new Fields(table, words, tanks);
        return table.usedColumns().stream().map(fields::field).toList();
    }

    private Field field(int column) {
        List<Cell> labels = new ArrayList<>();
        table.band().forEach(line -> over(line, column).ifPresent(labels::add));
        String header = labels.stream().map(c -> c.shown().strip()).collect(Collectors.joining(" "));
        return twoTests(labels)
                ? new Field(
                        column,
                        List.copyOf(labels),
                        header,
                        Label.UNKNOWN,
                        Set.of(Inferred.PARAMETER),
                        labels.stream()
                                .map(c -> "\"" + c.shown().strip() + "\"")
                                .collect(Collectors.joining(", or ")))
                : new Field(column, List.copyOf(labels), header, label(labels, header), Set.of(), "");
    }

    /** Two lines of headings, each over this column alone, name different tests. */
    private boolean twoTests(List<Cell> labels) {
        List<Cell> names =
                labels.stream().filter(c -> words.kind(c) != Kind.UNIT).toList();
        return names.size() > 1
                && names.stream().noneMatch(this::spans)
                && names.stream()
                                .map(this::tankAware)
                                .filter(l -> l.role() == Role.READING && l.score() > 0.6)
                                .flatMap(l -> l.parameter().stream())
                                .distinct()
                                .count()
                        > 1;
    }

    /** The label of a heading line that stands over a column: in it, merged across it, or left of it in a sparser line. */
    private Optional<Cell> over(Line line, int column) {
        Optional<Cell> own = line.at(column);
        if (own.isPresent()) {
            return own;
        }
        Optional<Cell> left =
                line.cells().stream().filter(c -> c.at().column() < column).max(Comparator.comparing(Cell::at));
        return left.filter(c -> reaches(line, c, column));
    }

    private boolean reaches(Line line, Cell cell, int column) {
        Optional<Region> merge = table.area().mergeAt(cell);
        if (merge.isPresent()) {
            return merge.get().last().column() >= column;
        }
        boolean sparse = beyondFirst(line) * 2 <= densest;
        return sparse
                && !lowest(line)
                && (words.kind(cell) != Kind.UNIT || words.label(cell).role() == Role.READING)
                && !words.label(cell).role().dates();
    }

    /** How many labels a line holds, the one in the corner aside. */
    private int beyondFirst(Line line) {
        return line.cells().size() - (line.firstColumn() == first ? 1 : 0);
    }

    private boolean lowest(Line line) {
        return line.equals(table.band().get(table.band().size() - 1));
    }

    /** All labels over a column taken together: one names the test or role, another the unit, another the tank. */
    private Label label(List<Cell> labels, String header) {
        if (labels.isEmpty()) {
            return Label.UNKNOWN;
        }
        if (labels.size() == 1) {
            return tankAware(labels.get(0));
        }
        Label best = Label.UNKNOWN;
        String unit = "";
        String tank = "";
        for (Cell cell : labels) {
            Label own = tankAware(cell);
            unit = words.kind(cell) == Kind.UNIT ? cell.shown().strip() : unit;
            tank = own.tank().isEmpty() ? tank : own.tank();
            best = better(best, own);
        }
        Label chosen = together(labels, header, best);
        return complete(chosen, unit, tank);
    }

    /** All words read as one, unless that says another test than the lowest label by itself. */
    private Label together(List<Cell> labels, String header, Label best) {
        Label whole = words.label(header);
        Label lowest = tankAware(labels.get(labels.size() - 1));
        if (aside(lowest) && spans(labels.get(0))) {
            return lowest;
        }
        if (whole.role() == Role.DERIVED
                && labels.stream().anyMatch(c -> tankAware(c).role() == Role.DERIVED)) {
            return whole;
        }
        boolean says = whole.role() == Role.READING || whole.role() == Role.DOSE || whole.role() == Role.WATER_CHANGE;
        boolean other = lowest.role() == Role.READING && !lowest.parameter().equals(whole.parameter());
        boolean contradicts = other && whole.role() == Role.READING;
        return (says && !contradicts) || !best.known() ? whole : best;
    }

    /** Under a heading of several columns, such as {@code Doses} or {@code Calcium}, the column's own word says that it is another part. */
    private static boolean aside(Label label) {
        Role role = label.role();
        return role.dates()
                || role == Role.UNTIL
                || role == Role.TIME
                || role == Role.ADDITIVE
                || role == Role.NOTE
                || role == Role.TANK && label.tank().isEmpty();
    }

    /** Whether a label stands over other columns too. */
    private boolean spans(Cell label) {
        return table.band().stream()
                .filter(l -> l.cells().contains(label))
                .anyMatch(l -> table.usedColumns().stream()
                                .filter(c -> over(l, c).filter(label::equals).isPresent())
                                .count()
                        > 1);
    }

    private static Label better(Label best, Label own) {
        boolean names = own.role() == Role.READING || own.role() == Role.DOSE || own.role() == Role.WATER_CHANGE;
        boolean named = best.role() == Role.READING || best.role() == Role.DOSE || best.role() == Role.WATER_CHANGE;
        if (own.role() == Role.TANK && !own.tank().isEmpty()) {
            return best;
        }
        return !best.known() || (names && !named) || (names && own.role() == Role.DOSE)
                ? (own.known() ? own : best)
                : best;
    }

    /** Whether a column's own headings name two tests, and neither was taken. */
    static boolean twoTests(Field field) {
        return field.role() == Role.UNKNOWN && field.inferred().contains(Inferred.PARAMETER);
    }

    private Label complete(Label chosen, String unit, String tank) {
        Label united = !unit.isEmpty() && chosen.unit().isEmpty() ? words.withUnit(chosen, unit) : chosen;
        return tank.isEmpty() ? united : united.withTank(tank);
    }

    /** A header that is a tank's name says so; the column then holds whatever the table is about. */
    private Label tankAware(Cell cell) {
        Label label = company ? words.inCompany(cell.shown()) : words.label(cell);
        if (label.known() && label.score() > 0.5) {
            return label;
        }
        return tanks.findKnown(cell.shown()).map(Label::tank).orElse(label);
    }
}
