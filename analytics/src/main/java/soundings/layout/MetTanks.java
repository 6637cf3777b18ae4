package soundings.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soundings.sheet.Cell;

/** The names that stand in tank columns, with how often. */
final class MetTanks {
    private MetTanks() {}

    static Map<String, Integer> in(List<Shape> shapes) {
        Map<String, Integer> met = new HashMap<>();
        for (Shape shape : shapes) {
            shape.all(Role.TANK).stream()
                    .filter(f -> f.label().tank().isEmpty() && shape.dated())
                    .flatMap(f -> shape.column(f).cells().stream())
                    .map(Cell::shown)
                    .map(String::strip)
                    .filter(t -> !t.isEmpty() && !AllTanks.means(t))
                    .forEach(t -> met.merge(t, 1, Integer::sum));
        }
        return met;
    }
}
