package soundings.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import soundings.log.Inferred;
import soundings.wording.WrittenDate;

/**
 * A table with its columns read: what each holds and what stands in it.
 *
 * @param doubt two ways of reading all of it that fit about as well; empty where one is clear
 */
record Shape(Table table, Topic topic, List<Field> fields, Map<Integer, Column> columns, String doubt) {
    /** Of one test in one water. */
    private static final int MOST_OF_A_DAY = 3;

    Shape {
        fields = List.copyOf(fields);
    }

    Column column(Field field) {
        return columns.getOrDefault(field.column(), Column.EMPTY);
    }

    Optional<Field> find(Role role) {
        return fields.stream().filter(f -> f.role() == role).findFirst();
    }

    /** The column that names each row's tank. */
    Optional<Field> findTank() {
        return fields.stream()
                .filter(f -> f.role() == Role.TANK && f.label().tank().isEmpty())
                .findFirst();
    }

    Optional<Field> findDate() {
        return find(Role.DATE).or(() -> find(Role.FROM));
    }

    /** Notes that each begin with their day, where no column holds dates. */
    Optional<Field> findDiary() {
        return findDate().isPresent()
                ? Optional.empty()
                : fields.stream()
                        .filter(f -> f.role() == Role.NOTE && f.inferred().contains(Inferred.DATE))
                        .findFirst();
    }

    /** The day written above results that have none of their own; where days stand among the results it is not theirs. */
    Optional<WrittenDate> titledDay() {
        boolean results = has(Role.READING)
                || (has(Role.TEST) && has(Role.RESULT))
                || !HeadedDays.in(fields).isEmpty();
        int others = columns.values().stream().mapToInt(c -> c.count(Kind.DATE)).sum();
        return findDate().isEmpty() && results && others < 2 && !repeats() ? topic.day() : Optional.empty();
    }

    /** Row after row of the same tests, told apart by nothing but numbers: rows of many days. */
    private boolean repeats() {
        boolean apart = has(Role.TANK)
                || has(Role.TIME)
                || fields.stream()
                        .anyMatch(f -> f.role() == Role.UNKNOWN && column(f).count(Kind.WORDS) >= 2);
        return !apart
                && all(Role.READING).stream()
                        .anyMatch(f -> column(f).count(Kind.NUMBER) > (counted() ? 1 : MOST_OF_A_DAY));
    }

    /** Whether more of its columns hold days that nothing is read by than it has dated rows. */
    boolean straysDates() {
        long stray = fields.stream()
                .filter(f -> f.role() == Role.UNKNOWN && column(f).share(Kind.DATE) >= 0.5)
                .count();
        int dated = findDate().map(f -> column(f).size()).orElse(0);
        return stray >= 2 && stray >= dated;
    }

    /** Whether it is a grid of days laid out anew. */
    boolean grid() {
        return findDate().filter(f -> f.because().equals(DayGrid.BECAUSE)).isPresent();
    }

    /** Whether it is one card of several, whose day is written on it. */
    boolean card() {
        return !fields.isEmpty() && fields.get(0).because().equals(Cards.BECAUSE);
    }

    /** Whether its rows have days. */
    boolean dated() {
        return findDate().isPresent() || findDiary().isPresent() || titledDay().isPresent() || calendar();
    }

    /** Whether it is a month's sheet of days under the names of the week's. */
    boolean calendar() {
        return findDate().isEmpty()
                && topic.month().isPresent()
                && topic.day().isEmpty()
                && !HeadedDays.in(fields).isEmpty();
    }

    /** A column that may name the tanks or something else: nothing beside it can be told apart until the keeper says. */
    Optional<Field> findUnclearTanks() {
        return fields.stream()
                .filter(f -> f.role() == Role.UNKNOWN && f.inferred().contains(Inferred.TANK))
                .findFirst();
    }

    List<Field> all(Role role) {
        return fields.stream().filter(f -> f.role() == role).toList();
    }

    boolean has(Role role) {
        return find(role).isPresent();
    }

    /** The same with every field that passes replaced. */
    Shape replace(Predicate<Field> which, java.util.function.UnaryOperator<Field> by) {
        return new Shape(
                table,
                topic,
                fields.stream().map(f -> which.test(f) ? by.apply(f) : f).toList(),
                columns,
                doubt);
    }

    Shape inYear(OptionalInt year) {
        return new Shape(table, topic.inYear(year), fields, columns, doubt);
    }

    /** Whether the rows are numbered, as those of several waters are. */
    private boolean counted() {
        if (fields.isEmpty() || fields.get(0).role() != Role.UNKNOWN) {
            return false;
        }
        Column first = column(fields.get(0));
        return first.size() > 1 && first.days() == first.size();
    }

    Shape doubted(String ways) {
        return new Shape(table, topic, fields, columns, ways);
    }
}
