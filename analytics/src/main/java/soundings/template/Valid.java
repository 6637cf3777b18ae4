package soundings.template;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What could have stood in the place of a name that does not exist. */
final class Valid {
    private Valid() {}

    /** {@code name} as written: {@code tank.lites} or {@code chrat}. */
    static String of(String name, Map<String, ?> model, List<Signature> items) {
        int dot = name.lastIndexOf('.');
        if (dot > 0) {
            return "Names that follow a dot: " + String.join(", ", inner(model)) + ".";
        }
        return "Names: " + String.join(", ", new TreeSet<>(model.keySet())) + ". Items: "
                + items.stream().map(Signature::toString).collect(Collectors.joining(", ")) + ".";
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
