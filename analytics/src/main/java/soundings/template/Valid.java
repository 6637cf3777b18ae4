package soundings.template;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What could have stood in the place of a name that does not exist. */
final class Valid {
    private Valid() {}

    /** {@code name} as written: {@code tank.lites} or {@code chrat}. */
    static String of(String name, Map<String, ?> model, List<Signature> items) {
        int dot = name.lastIndexOf('.');
        if (dot > 0) {
            return meant(name.substring(dot + 1), inner(model).stream()) + "Names that follow a dot: "
                    + String.join(", ", inner(model)) + ".";
        }
        return meant(name, Stream.concat(model.keySet().stream(), items.stream().map(Signature::name)))
                + "Names: " + String.join(", ", new TreeSet<>(model.keySet())) + ". Items: "
                + items.stream().map(Signature::toString).collect(Collectors.joining(", ")) + ".";
    }

    /** The name that differs least, where it differs by a slip. */
    private static String meant(String name, Stream<String> names) {
        return names.filter(n -> slips(name, n) <= Math.max(1, (n.length() + 1) / 3))
                .min(Comparator.comparingInt(n -> slips(name, n)))
                .map(n -> "Is '" + n + "' meant? ")
                .orElse("");
    }

    /** How many letters must be put in, taken out or changed: the edit distance of Levenshtein (1966). */
    private static int slips(String a, String b) {
        int[] before = IntStream.rangeClosed(0, b.length()).toArray();
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                now[j] = Math.min(change, 1 + Math.min(before[j], now[j - 1]));
            }
            before = now;
        }
        return before[b.length()];
    }

    private static Set<String> inner(Map<String, ?> model) {
        return model.values().stream().flatMap(Valid::keys).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> keys(Object value) {
        if (value instanceof Map<?, ?> map) {
            return Stream.concat(
                    map.keySet().stream().map(String::valueOf),
                    map.values().stream().flatMap(Valid::keys));
        }
        return value instanceof Collection<?> list ? list.stream().flatMap(Valid::keys) : Stream.empty();
    }
}
