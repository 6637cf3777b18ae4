package soundings.estimate;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.log.Reading;

/**
 * The kits and laboratories a series comes from, the one the level is stated on first: a laboratory, else the most used.
 *
 * @param names folded; empty text for readings without one
 */
record Sources(List<String> names) {
    private static final int MOST = 3;
    /** A laboratory needs a few results before everything is stated on its footing. */
    private static final long ENOUGH = 2;

    Sources {
        names = List.copyOf(names);
    }

    static Sources of(List<Reading> readings) {
        Map<String, Long> counts =
                readings.stream().collect(Collectors.groupingBy(r -> Names.fold(r.method()), Collectors.counting()));
        ToLongFunction<String> count = name -> counts.getOrDefault(name, 0L);
        Comparator<String> laboratoryFirst =
                Comparator.comparing(n -> !(laboratory(n) && count.applyAsLong(n) >= ENOUGH));
        return new Sources(counts.keySet().stream()
                .sorted(laboratoryFirst
                        .thenComparing(Comparator.comparingLong(count).reversed())
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST)
                .toList());
    }

    static boolean laboratory(String name) {
        return name.startsWith("lab") || name.contains(" lab") || name.contains("icp");
    }

    /** Of a rare fourth source and on: the last. */
    int indexOf(String method) {
        int found = names.indexOf(Names.fold(method));
        return found >= 0 ? found : names.size() - 1;
    }

    int size() {
        return names.size();
    }
}
