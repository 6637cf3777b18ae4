package soundings.layout;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import soundings.sheet.Cell;
import soundings.sheet.Value;

/** Tells rows that were worked out from the rows above: by their words, or because every value is the mean, sum, lowest or highest of them. */
final class Derived {
    private static final DoubleSummaryStatistics NONE = new DoubleSummaryStatistics();

    private final Shape shape;
    private final Words words;
    private final Map<Integer, DoubleSummaryStatistics> section = new HashMap<>();
    private final Map<Integer, DoubleSummaryStatistics> whole = new HashMap<>();

    private Derived(Shape shape, Words words) {
        this.shape = shape;
        this.words = words;
    }

    /**
     * What a row may work out; tests are averaged where doses are summed.
     *
     * @param enough how many columns must agree; the lowest and highest are met by chance more easily
     */
    private record Worked(String name, int enough, List<ToDoubleFunction<DoubleSummaryStatistics>> of) {}

    private static final List<Worked> WORKED = List.of(
            new Worked("averages", 2, List.of(DoubleSummaryStatistics::getAverage)),
            new Worked("sums", 2, List.of(DoubleSummaryStatistics::getSum)),
            new Worked(
                    "averages and sums",
                    2,
                    List.of(DoubleSummaryStatistics::getAverage, DoubleSummaryStatistics::getSum)),
            new Worked("lowest values", 3, List.of(DoubleSummaryStatistics::getMin)),
            new Worked("highest values", 3, List.of(DoubleSummaryStatistics::getMax)));

    /** For each row why it is derived; empty where it is not. */
    static List<Optional<String>> of(Shape shape, List<Row> rows, Words words) {
        Derived derived = new Derived(shape, words);
        List<Optional<String>> why = new ArrayList<>();
        rows.forEach(row -> why.add(derived.next(row)));
        return why;
    }

    private Optional<String> next(Row row) {
        Map<Integer, Cell> values = values(row.line());
        boolean bare = !row.own() && !values.isEmpty() && row.line().cells().size() == values.size();
        Optional<String> why = byWord(row).or(() -> bare ? byValue(values) : Optional.empty());
        if (why.isPresent()) {
            section.clear();
        } else {
            values.forEach(this::remember);
        }
        return why;
    }

    private void remember(Integer column, Cell cell) {
        double number = number(cell);
        section.computeIfAbsent(column, c -> new DoubleSummaryStatistics()).accept(number);
        whole.computeIfAbsent(column, c -> new DoubleSummaryStatistics()).accept(number);
    }

    private Map<Integer, Cell> values(Line line) {
        Map<Integer, Cell> values = new HashMap<>();
        for (Field field : shape.fields()) {
            boolean counts =
                    field.role() == Role.READING || field.role() == Role.DOSE || field.role() == Role.WATER_CHANGE;
            line.at(field.column())
                    .filter(c -> counts && c.value() instanceof Value.Numeric)
                    .ifPresent(c -> values.put(field.column(), c));
        }
        return values;
    }

    private static double number(Cell cell) {
        return cell.value() instanceof Value.Numeric numeric ? numeric.number() : 0;
    }

    /** A word such as "average" where a date, a tank or nothing should stand. */
    private Optional<String> byWord(Row row) {
        return shape.fields().stream()
                .filter(f -> f.role().dates()
                        || f.role().corner() && f.role() != Role.UNIT
                        || unnamed(f)
                        || !row.own() && leads(f))
                .flatMap(f -> row.line().at(f.column()).stream().filter(c -> worked(f, c)))
                .findFirst()
                .map(c -> "the row says \"" + c.shown().strip() + "\"");
    }

    /** In a tank's place {@code blank} is another sample, not an empty cell. */
    private boolean worked(Field field, Cell cell) {
        return words.derived(cell)
                || field.role() == Role.TANK && words.label(cell).role() == Role.DERIVED;
    }

    /** The first column, whatever it holds: {@code Average} below the week's numbers. */
    private boolean leads(Field field) {
        return field.equals(shape.fields().get(0));
    }

    /** A column without a heading, or the first one. */
    private boolean unnamed(Field field) {
        return field.role() == Role.UNKNOWN && (field.labels().isEmpty() || leads(field));
    }

    private Optional<String> byValue(Map<Integer, Cell> values) {
        if (values.values().stream().allMatch(c -> c.look().formula())) {
            return Optional.of("a row without a date and made of formulas");
        }
        return Stream.of(section, whole)
                .flatMap(above -> WORKED.stream().filter(k -> matches(values, above, k)))
                .findFirst()
                .map(k -> "every value is that of the " + k.name() + " above");
    }

    /** Every value agrees to its last digit, and there is enough above for that to be no accident. */
    private static boolean matches(
            Map<Integer, Cell> values, Map<Integer, DoubleSummaryStatistics> above, Worked worked) {
        int telling = 0;
        for (Map.Entry<Integer, Cell> value : values.entrySet()) {
            DoubleSummaryStatistics column = above.getOrDefault(value.getKey(), NONE);
            double number = number(value.getValue());
            boolean agrees =
                    worked.of().stream().anyMatch(s -> Math.abs(s.applyAsDouble(column) - number) <= rounding(number));
            if (column.getCount() == 0 || !agrees) {
                return false;
            }
            telling += column.getCount() >= 2 ? 1 : 0;
        }
        return telling >= worked.enough();
    }

    /** Half of the last digit written. */
    private static double rounding(double number) {
        int digits = java.math.BigDecimal.valueOf(number).stripTrailingZeros().scale();
        return 0.51 * Math.pow(10, -Math.max(0, Math.min(digits, 6))) + 1e-9 * Math.abs(number);
    }
}
