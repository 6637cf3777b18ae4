package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import soundings.chemistry.Names;

/** Columns of one table that hold the same test of the same tank: what sets their headings apart is the way of testing. */
final class Twins {
    private Twins() {}

    static Map<Integer, String> of(Shape shape) {
        Map<String, List<Field>> same = shape.all(Role.READING).stream()
                .collect(Collectors.groupingBy(
                        f -> f.label().parameter().map(p -> p.id()).orElse("") + "|"
                                + f.label().tank()));
        Map<Integer, String> ways = new HashMap<>();
        same.values().stream()
                .filter(f -> f.size() > 1)
                .forEach(fields -> fields.forEach(f -> ways.put(f.column(), way(f, fields))));
        return ways;
    }

    /** The words of a heading that not all of its twins have, in their order. */
    private static String way(Field field, List<Field> fields) {
        List<String> own = new ArrayList<>(words(field));
        Optional<TreeSet<String>> shared = fields.stream()
                .map(f -> new TreeSet<>(words(f)))
                .reduce((a, b) -> {
                    a.retainAll(b);
                    return a;
                });
        int first = 0;
        while (first < own.size() && shared.orElse(new TreeSet<>()).contains(own.get(first))) {
            first++;
        }
        return first == own.size() ? "" : field.header().strip();
    }

    private static List<String> words(Field field) {
        return List.of(Names.fold(field.header()).split("[^\\p{L}\\p{N}]+"));
    }
}
