package soundings.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.log.AsWritten;
import soundings.log.TanksFromText;
import soundings.sheet.Cell;
import soundings.wording.DecimalMark;
import soundings.wording.LeadingNames;

/**
 * The tanks that only the notes tell apart, {@code Lagoon alk 8.2. Pier alk 7.9}. A name that leads results may be the tester's or
 * another water's: it is a tank's where the workbook says so elsewhere, where the word tank stands with it, or where it shares its
 * cells with other such names, for one hand writes one cell.
 */
final class ToldTanks {
    private static final int FEWEST_CELLS = 3;
    private static final int FEWEST_SHARED = 2;

    /** By key: every cell the name leads results in. */
    private final Map<String, Set<Cell>> cells = new LinkedHashMap<>();

    private final Map<String, Map<String, Integer>> spellings = new HashMap<>();
    private final Set<String> kinds = new HashSet<>();
    private final List<AsWritten> places = new ArrayList<>();

    private ToldTanks() {}

    static ToldTanks in(Collection<Shape> shapes, Words words, DecimalMark mark) {
        ToldTanks told = new ToldTanks();
        shapes.stream().filter(Shape::dated).forEach(s -> told.notes(s, words, mark));
        Set<String> said = told.saidElsewhere(shapes);
        told.cells.values().removeIf(in -> in.size() < FEWEST_CELLS);
        told.cells.keySet().removeIf(k -> !said.contains(k) && !told.kinds.contains(k) && !told.shares(k));
        return told;
    }

    private void notes(Shape shape, Words words, DecimalMark mark) {
        for (Field field : shape.all(Role.NOTE)) {
            for (Cell cell : shape.column(field).cells()) {
                List<String> names = LeadingNames.in(cell.shown(), mark, words.running());
                names.forEach(n -> name(n, cell));
                if (!names.isEmpty()) {
                    places.add(shape.table().area().written(cell));
                }
            }
        }
    }

    private void name(String name, Cell cell) {
        String key = Tanks.key(name);
        cells.computeIfAbsent(key, k -> new HashSet<>()).add(cell);
        spellings.computeIfAbsent(key, k -> new HashMap<>()).merge(name, 1, Integer::sum);
        if (Tanks.saysKind(name)) {
            kinds.add(key);
        }
    }

    private Set<String> saidElsewhere(Collection<Shape> shapes) {
        String said = shapes.stream()
                .flatMap(s -> Stream.concat(
                        s.table().titleTexts().stream(),
                        Stream.of(s.table().area().sheet())))
                .map(t -> " " + Tanks.key(t) + " ")
                .collect(Collectors.joining());
        return cells.keySet().stream().filter(k -> said.contains(" " + k + " ")).collect(Collectors.toSet());
    }

    private boolean shares(String key) {
        return cells.getOrDefault(key, Set.of()).stream()
                        .filter(c -> cells.entrySet().stream()
                                .anyMatch(e ->
                                        !e.getKey().equals(key) && e.getValue().contains(c)))
                        .count()
                >= FEWEST_SHARED;
    }

    /** Each name as it is mostly written, and how often. */
    Map<String, Integer> names() {
        Map<String, Integer> names = new LinkedHashMap<>();
        cells.forEach((key, in) -> names.put(mostly(spellings.getOrDefault(key, Map.of())), in.size()));
        return names;
    }

    private static String mostly(Map<String, Integer> spellings) {
        String name = spellings.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .orElseThrow()
                .getKey();
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    Optional<TanksFromText> issue() {
        return cells.isEmpty() || places.isEmpty()
                ? Optional.empty()
                : Optional.of(new TanksFromText(places.get(0), String.join(", ", new TreeSet<>(names().keySet()))));
    }
}
