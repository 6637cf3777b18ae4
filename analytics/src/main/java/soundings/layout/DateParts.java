package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import soundings.chemistry.Names;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.Dates;
import soundings.wording.WrittenDate;
import soundings.wording.WrittenMonth;

/** Days told in pieces: the month, and perhaps the year, stands in a column of its own, or above the days of a row of dates. */
final class DateParts {
    private static final Set<String> MONTH = Set.of("month", "monat", "mois", "mes", "maand");
    private static final Set<String> YEAR = Set.of("year", "jahr", "annee", "an", "ano", "jaar");

    private DateParts() {}

    /** The table with its columns of months, days and years known as such; as it is where a column holds whole dates. */
    static Shape settle(Shape shape) {
        boolean whole = shape.fields().stream()
                .anyMatch(f -> !f.role().gives() && shape.column(f).dated(false) >= 0.5);
        Optional<Field> month = whole
                ? Optional.empty()
                : first(shape, f -> months(shape, f)).or(() -> first(shape, f -> numbered(shape, f)));
        Optional<Field> day = month.flatMap(m -> first(shape, f -> f.column() != m.column() && days(shape, f)));
        return day.isPresent()
                ? parts(shape, month.orElseThrow(), day.get())
                : whole
                        ? shape.replace(
                                f -> open(f) && headed(f, YEAR) && years(shape, f),
                                f -> f.with(Label.of(Role.YEAR, 0.9)))
                        : shape;
    }

    /** The year that a line writes beside its day. */
    static OptionalInt year(Shape shape, Line line) {
        return shape.find(Role.YEAR)
                .flatMap(f -> line.at(f.column()))
                .map(DateParts::number)
                .orElse(OptionalInt.empty());
    }

    private static Shape parts(Shape shape, Field month, Field day) {
        Shape dated = shape.replace(month::equals, f -> f.with(Label.of(Role.MONTH, 0.9)))
                .replace(
                        day::equals,
                        f -> f.guessed(
                                Label.of(Role.DATE, 0.8), Set.of(Inferred.DATE), "days of the months beside it"));
        return dated.replace(f -> open(f) && years(dated, f), f -> f.with(Label.of(Role.YEAR, 0.9)));
    }

    private static Optional<Field> first(Shape shape, Predicate<Field> test) {
        return shape.fields().stream().filter(f -> open(f) && test.test(f)).findFirst();
    }

    private static boolean open(Field field) {
        return field.role() == Role.UNKNOWN
                || field.role() == Role.DATE
                || field.role().corner();
    }

    /** Every cell names a month. */
    private static boolean months(Shape shape, Field field) {
        List<Cell> cells = shape.column(field).cells();
        return !cells.isEmpty() && cells.stream().allMatch(c -> named(c).isPresent());
    }

    private static Optional<WrittenMonth> named(Cell cell) {
        return cell.value() instanceof Value.Text text ? Dates.month(text.text()) : Optional.empty();
    }

    private static boolean numbered(Shape shape, Field field) {
        return headed(field, MONTH) && all(shape, field, n -> n >= 1 && n <= 12);
    }

    private static boolean years(Shape shape, Field field) {
        return (headed(field, YEAR) || field.header().isEmpty()) && all(shape, field, n -> n >= 1990 && n < 2070);
    }

    private static boolean days(Shape shape, Field field) {
        Column column = shape.column(field);
        return column.size() > 0 && column.days() >= 0.8 * column.size();
    }

    private static boolean headed(Field field, Set<String> words) {
        return words.contains(Names.fold(field.header()).replaceAll("[^\\p{L}]", ""));
    }

    private static boolean all(Shape shape, Field field, Predicate<Double> test) {
        List<Cell> cells = shape.column(field).cells();
        return !cells.isEmpty()
                && cells.stream()
                        .allMatch(c -> c.value() instanceof Value.Numeric n
                                && n.number() == Math.rint(n.number())
                                && test.test(n.number()));
    }

    /** Each row's day; a month or year holds until the next one is written. */
    static List<Optional<WrittenDate>> written(Shape shape) {
        Optional<Field> months = shape.find(Role.MONTH);
        Optional<Field> years = shape.find(Role.YEAR);
        Optional<Field> days = shape.findDate();
        List<Optional<WrittenDate>> all = new ArrayList<>();
        int month = 0;
        OptionalInt year = OptionalInt.empty();
        for (Line line : shape.table().body()) {
            Optional<Cell> named = months.flatMap(f -> line.at(f.column()));
            month = named.map(DateParts::month).orElse(month);
            year = named.flatMap(DateParts::named)
                    .map(m -> m.year())
                    .filter(OptionalInt::isPresent)
                    .orElse(year);
            year = years.flatMap(f -> line.at(f.column()))
                    .map(DateParts::number)
                    .orElse(year);
            int day =
                    days.flatMap(f -> line.at(f.column())).map(DateColumn::day).orElse(0);
            all.add(Dates.ofParts(year, month, day));
        }
        return List.copyOf(all);
    }

    private static int month(Cell cell) {
        return named(cell).map(m -> m.month()).orElseGet(() -> number(cell).orElse(0));
    }

    private static OptionalInt number(Cell cell) {
        return cell.value() instanceof Value.Numeric n ? OptionalInt.of((int) n.number()) : OptionalInt.empty();
    }
}
