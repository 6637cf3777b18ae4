package soundings.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import soundings.sheet.Cell;

/**
 * Weighs whether a column of a few names that come again and again names tanks, though its heading does not say so: several
 * rows on one day, each with another name, and each name's values running on more smoothly than all of them together.
 */
final class RepeatedNames {
    private static final int MOST_NAMES = 12;
    private static final int LONGEST_NAME = 30;
    /** Values of two names lie apart when their middles differ by this many usual steps from one test to the next. */
    private static final double APART = 2;

    private static final Set<String> TIMES_OF_DAY = Set.of(
            "am",
            "pm",
            "a m",
            "p m",
            "morning",
            "noon",
            "midday",
            "afternoon",
            "evening",
            "night",
            "day",
            "before",
            "after",
            "first",
            "second",
            "morgens",
            "mittags",
            "abends",
            "vorher",
            "nachher",
            "matin",
            "midi",
            "soir",
            "avant",
            "apres",
            "manana",
            "tarde",
            "noche",
            "antes",
            "despues",
            "ochtend",
            "middag",
            "avond",
            "voor",
            "na",
            "yes",
            "no",
            "ok",
            "good",
            "bad",
            "fine",
            "low",
            "high");

    private final Shape shape;
    private final Words words;
    private final List<Entry> entries;

    private RepeatedNames(Shape shape, Field field, Words words) {
        this.shape = shape;
        this.words = words;
        this.entries = entries(field);
    }

    /** How a column of names looks. */
    enum Verdict {
        NO,
        /** Rows of one day differ by it, and the values do not tell whether it is tanks. */
        UNDECIDED,
        TANKS
    }

    /** One row that holds a name; {@code day} as written, carried down. */
    private record Entry(String name, String day, String test, Line line) {}

    /** Whether a word, in its plain form, says at what time or how something was found. */
    static boolean tellsWhen(String plain) {
        return TIMES_OF_DAY.contains(plain);
    }

    static Verdict weigh(Shape shape, Field field, Words words) {
        Column column = shape.column(field);
        if (standOver(shape, field)) {
            return Verdict.UNDECIDED;
        }
        boolean few = column.different() >= 2 && column.different() <= MOST_NAMES * 2;
        boolean filled = column.size() * 10 >= shape.table().body().size() * 7;
        return few && filled && column.textual() ? new RepeatedNames(shape, field, words).weigh() : Verdict.NO;
    }

    /** A different name over each of a few days side by side, without a word before them. */
    private static boolean standOver(Shape shape, Field field) {
        Column column = shape.column(field);
        return shape.table().area().turned()
                && field.header().isEmpty()
                && column.size() >= 2
                && column.size() <= MOST_NAMES
                && column.size() == shape.table().body().size()
                && column.different() == column.size()
                && column.count(Kind.WORDS) == column.size();
    }

    private Verdict weigh() {
        if (!names()) {
            return Verdict.NO;
        }
        boolean sameDay = sharedDays();
        boolean mixed = sameDay || alternates();
        return mixed && apart() ? Verdict.TANKS : sameDay && measured() ? Verdict.UNDECIDED : Verdict.NO;
    }

    private List<Entry> entries(Field field) {
        Optional<Field> date = shape.findDate();
        Optional<Field> test = shape.find(Role.TEST).filter(t -> t.column() != field.column());
        List<Entry> all = new ArrayList<>();
        String day = "";
        for (Line line : shape.table().body()) {
            day = date.flatMap(f -> line.at(f.column()))
                    .filter(c -> !words.ditto(c))
                    .map(this::day)
                    .orElse(day);
            String name = line.at(field.column()).map(c -> Tanks.key(c.shown())).orElse("");
            if (!name.isEmpty() && !day.isEmpty() && words.label(name).role() != Role.DERIVED) {
                String tested =
                        test.flatMap(f -> line.at(f.column())).map(Cell::shown).orElse("");
                all.add(new Entry(name, day, tested, line));
            }
        }
        return all;
    }

    /** The day of a cell without its time. */
    private String day(Cell cell) {
        return words.date(cell)
                .filter(d -> !d.days().isEmpty())
                .map(d -> d.days().toString())
                .orElse(cell.shown());
    }

    /** Few, short, each more than once, and no words of another sense. */
    private boolean names() {
        Map<String, Integer> counts = new HashMap<>();
        entries.forEach(e -> counts.merge(e.name(), 1, Integer::sum));
        boolean again = counts.size() >= 2
                && counts.size() <= MOST_NAMES
                && counts.values().stream().filter(n -> n < 2).count() * 4 <= counts.size();
        return again && counts.keySet().stream().allMatch(this::name);
    }

    private boolean name(String text) {
        Role role = words.label(text).role();
        boolean measure = role == Role.READING || role == Role.DOSE || role == Role.WATER_CHANGE;
        return text.length() <= LONGEST_NAME
                && text.chars().anyMatch(Character::isLetter)
                && !TIMES_OF_DAY.contains(text)
                && !measure
                && words.kind(text) != Kind.UNIT;
    }

    /** On a good part of the days more than one name, and hardly ever the same name (and test) twice. */
    private boolean sharedDays() {
        Map<String, Set<String>> byDay = new HashMap<>();
        Set<String> keys = new HashSet<>();
        int twice = 0;
        for (Entry entry : entries) {
            byDay.computeIfAbsent(entry.day(), d -> new HashSet<>()).add(entry.name());
            twice += keys.add(entry.day() + "|" + entry.name() + "|" + entry.test()) ? 0 : 1;
        }
        long shared = byDay.values().stream().filter(n -> n.size() > 1).count();
        return shared >= 2 && shared * 4 >= byDay.size() && twice * 10 <= entries.size();
    }

    /** The names take turns down the rows rather than one following the other for good. */
    private boolean alternates() {
        int turns = 0;
        for (int i = 1; i < entries.size(); i++) {
            turns += entries.get(i).name().equals(entries.get(i - 1).name()) ? 0 : 1;
        }
        return entries.size() >= 8 && turns * 3 >= entries.size();
    }

    private boolean measured() {
        return shape.fields().stream().anyMatch(f -> f.role().gives() && f.role() != Role.NOTE);
    }

    /** In some column the names' values lie clearly apart. */
    private boolean apart() {
        return shape.fields().stream()
                .filter(f -> f.role() == Role.READING || f.role() == Role.RESULT)
                .flatMap(f -> series(f).values().stream())
                .anyMatch(RepeatedNames::apart);
    }

    /** The values of a column, test by test and name by name. */
    private Map<String, Map<String, List<Double>>> series(Field field) {
        Map<String, Map<String, List<Double>>> all = new LinkedHashMap<>();
        for (Entry entry : entries) {
            entry.line()
                    .at(field.column())
                    .map(words::number)
                    .filter(OptionalDouble::isPresent)
                    .ifPresent(v -> all.computeIfAbsent(entry.test(), t -> new LinkedHashMap<>())
                            .computeIfAbsent(entry.name(), n -> new ArrayList<>())
                            .add(v.getAsDouble()));
        }
        return all;
    }

    /** Whether two names' middles differ by much more than a name's values do from one row to the next. */
    private static boolean apart(Map<String, List<Double>> byName) {
        List<List<Double>> known =
                byName.values().stream().filter(v -> v.size() >= 2).toList();
        List<Double> steps = known.stream().flatMap(RepeatedNames::steps).toList();
        if (known.size() < 2) {
            return false;
        }
        List<Double> middles =
                known.stream().map(RepeatedNames::middle).sorted().toList();
        double widest = middles.get(middles.size() - 1) - middles.get(0);
        return widest > APART * Math.max(middle(steps), finest(known));
    }

    /** The least that two values differ by: how finely the test is read off. */
    private static double finest(List<List<Double>> known) {
        List<Double> all =
                known.stream().flatMap(v -> v.stream()).distinct().sorted().toList();
        return steps(all).min(Double::compare).orElse(0.0);
    }

    private static Stream<Double> steps(List<Double> values) {
        return Stream.iterate(1, i -> i < values.size(), i -> i + 1)
                .map(i -> Math.abs(values.get(i) - values.get(i - 1)));
    }

    private static double middle(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }
}
