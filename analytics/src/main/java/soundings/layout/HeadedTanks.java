package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.wording.Amounts;

/**
 * Tanks that only the headings tell apart: {@code Reef KH, Reef Ca, Nano KH, Nano Ca}. Columns of one test that differ by a
 * name are different waters where the name comes again over other tests; where it does not, they are one water only as long
 * as their values agree, else the keeper is asked.
 */
final class HeadedTanks {
    static final String BECAUSE = "columns of one test stand under different names";

    /** Two tests of one water lie closer than this, as a share, on the day in the middle. */
    private static final double AGREE = 0.03;

    private static final Set<Inferred> TANK = Set.of(Inferred.TANK);

    private final Shape shape;
    private final Words words;
    private final Map<Integer, String> names = new HashMap<>();

    private HeadedTanks(Shape shape, Words words) {
        this.shape = shape;
        this.words = words;
    }

    static Shape settle(Shape shape, Words words) {
        return shape.findTank().isPresent() || !shape.dated() ? shape : new HeadedTanks(shape, words).settle();
    }

    /** Whether a column may stand for a tank that nobody wrote down plainly. */
    static boolean unclear(Field field) {
        return field.role() == Role.READING
                && field.inferred().contains(Inferred.TANK)
                && field.label().tank().isEmpty();
    }

    private Shape settle() {
        List<List<Field>> groups = groups();
        if (groups.isEmpty()) {
            return shape;
        }
        Set<String> tanks = tanks(groups);
        Shape named = shape.replace(
                f -> f.label().tank().isEmpty() && tanks.contains(name(f)),
                f -> f.guessed(f.label().withTank(name(f)), TANK, BECAUSE));
        Set<Integer> open = groups.stream()
                .flatMap(g -> doubtful(g, tanks))
                .map(Field::column)
                .collect(Collectors.toSet());
        return named.replace(f -> open.contains(f.column()), f -> f.guessed(f.label(), TANK, BECAUSE));
    }

    /** The columns of one test that different names set apart, not all of them ways or times of testing. */
    private List<List<Field>> groups() {
        Map<String, List<Field>> byTest = shape.all(Role.READING).stream()
                .filter(f -> f.label().tank().isEmpty()
                        && !HeadedDays.in(shape.fields()).containsKey(f.column()))
                .collect(Collectors.groupingBy(
                        f -> f.label().parameter().map(p -> p.id()).orElse(""),
                        LinkedHashMap::new,
                        Collectors.toList()));
        return byTest.values().stream()
                .filter(g -> g.stream().map(this::name).distinct().count() > 1 || !alike(g))
                .filter(g -> g.stream().map(this::name).anyMatch(this::tellsNoWay)
                        || g.stream().map(this::name).allMatch(String::isEmpty))
                .toList();
    }

    /** The names that come over two tests at least, and those that stand beside them over one. */
    private static Stream<String> crossing(List<Field> group, Map<String, Long> tests, HeadedTanks headed) {
        List<String> own =
                group.stream().map(headed::name).filter(n -> !n.isEmpty()).toList();
        boolean any = own.stream().anyMatch(n -> tests.getOrDefault(n, 0L) >= 2);
        return any && (own.stream().allMatch(headed::tellsNoWay) || headed.alternate(group))
                ? own.stream()
                : Stream.of();
    }

    private Set<String> tanks(List<List<Field>> groups) {
        Map<String, Long> tests = groups.stream()
                .flatMap(g -> g.stream().map(this::name).distinct())
                .collect(Collectors.groupingBy(n -> n, Collectors.counting()));
        return groups.stream()
                .flatMap(g -> crossing(g, tests, this))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Named columns of a group that are no tank's for certain and whose values are not those of one water. */
    private Stream<Field> doubtful(List<Field> group, Set<String> tanks) {
        boolean settled = group.stream().map(this::name).anyMatch(tanks::contains);
        boolean scales = group.stream().map(f -> f.label().unit()).distinct().count() > 1;
        boolean nameless = group.stream().map(this::name).allMatch(String::isEmpty);
        return settled || scales || agree(group)
                ? Stream.of()
                : group.stream().filter(f -> nameless || !name(f).isEmpty());
    }

    /** Whether columns headed alike hold nearly the same, or each has a heading of its own. */
    private boolean alike(List<Field> group) {
        boolean same =
                group.stream().map(f -> Names.fold(f.header())).distinct().count() == 1;
        return group.size() < 2 || !same || agree(group);
    }

    /** Every column holds, on its middle day, nearly what the first holds on the same rows. */
    private boolean agree(List<Field> group) {
        Map<Integer, Double> first = values(group.get(0));
        return group.stream().skip(1).allMatch(f -> {
            Map<Integer, Double> other = values(f);
            List<Double> apart = new ArrayList<>();
            first.forEach((row, value) -> Optional.ofNullable(other.get(row))
                    .ifPresent(o -> apart.add(Math.abs(o - value) / Math.max(1e-9, Math.max(o, value)))));
            apart.sort(Double::compare);
            return apart.isEmpty() || apart.get(apart.size() / 2) <= AGREE;
        });
    }

    private Map<Integer, Double> values(Field field) {
        Map<Integer, Double> byRow = new HashMap<>();
        for (Cell cell : shape.column(field).cells()) {
            OptionalDouble number = words.number(cell);
            number.ifPresent(n -> byRow.put(cell.at().row(), n));
        }
        return byRow;
    }

    /** The words of a heading that say neither test nor unit, as written. */
    private String name(Field field) {
        return names.computeIfAbsent(field.column(), c -> nameIn(field.header()));
    }

    private String nameIn(String header) {
        List<String> all = Stream.of(header.strip().split("[^\\p{L}\\p{N}'#]+"))
                .filter(w -> !w.isEmpty())
                .toList();
        // No unit stands before the test: the L of L Alk is whose it is.
        boolean initial = all.size() > 1
                && all.get(0).length() == 1
                && words.kind(all.get(0)) == Kind.UNIT
                && words.inCompany(all.get(1)).role() == Role.READING;
        List<String> kept = IntStream.range(0, all.size())
                .filter(i -> initial && i == 0 || words.titleWord(all.get(i), "tank") || !says(all.get(i)))
                .mapToObj(all::get)
                .toList();
        return kept.stream().allMatch(w -> words.titleWord(w, "tank")) ? "" : String.join(" ", kept);
    }

    private boolean says(String word) {
        Role role = words.inCompany(word).role();
        return role == Role.READING
                || role == Role.RESULT
                || role == Role.TEST
                || role == Role.UNIT
                || words.kind(word) == Kind.UNIT
                || words.filler(word);
    }

    /** A name beside {@code Lab}, and both tested about as often: a laboratory is not asked every week. */
    private boolean alternate(List<Field> group) {
        IntSummaryStatistics sizes =
                group.stream().mapToInt(f -> shape.column(f).size()).summaryStatistics();
        TankTitles titles = new TankTitles(words);
        boolean named = group.stream().map(this::name).anyMatch(n -> tellsNoWay(n) && !titles.general(n));
        boolean laboratory =
                group.stream().map(this::name).filter(n -> !tellsNoWay(n)).allMatch(Topic::laboratory);
        return named && laboratory && sizes.getMin() * 2 >= sizes.getMax();
    }

    private boolean tellsNoWay(String name) {
        return !name.isEmpty() && !tellsHow(name);
    }

    /** A kit, a time of day, a count of steps, a number alone: the same water tested in another way or once more. */
    private boolean tellsHow(String name) {
        return tellsHow(name, words);
    }

    static boolean tellsHow(String name, Words words) {
        return name.chars().noneMatch(Character::isLetter) && !name.isEmpty()
                || Stream.of(name.split(" ")).anyMatch(w -> how(w, words));
    }

    private static boolean how(String word, Words words) {
        Role role = words.label(word).role();
        return role == Role.METHOD
                || role == Role.DERIVED
                || role == Role.TIME
                || role == Role.NOTE
                || Topic.laboratory(word)
                || RepeatedNames.tellsWhen(Names.fold(word))
                || Amounts.step(Names.fold(word));
    }
}
