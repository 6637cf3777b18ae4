package soundings.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soundings.log.Inferred;
import soundings.sheet.Cell;

/** The names that stand in tank columns and over the columns of a tank, with how often. */
final class MetTanks {
    private MetTanks() {}

    static Map<String, Integer> in(List<Shape> shapes) {
        Map<String, Integer> met = new HashMap<>();
        Map<String, Integer> written = new HashMap<>();
        for (Shape shape : shapes) {
            shape.fields().stream()
                    .filter(f -> shape.dated() && f.inferred().contains(Inferred.TANK))
                    .map(f -> f.label().tank())
                    .filter(t -> !t.isEmpty())
                    .forEach(t -> met.merge(t, 1, Integer::sum));
            shape.all(Role.TANK).stream()
                    .filter(f -> f.label().tank().isEmpty() && shape.dated())
                    .flatMap(f -> shape.column(f).cells().stream())
                    .map(Cell::shown)
                    .map(String::strip)
                    .filter(t -> !t.isEmpty())
                    .forEach(t -> written.merge(t, 1, Integer::sum));
        }
        written.keySet().removeIf(AllTanks::means);
        written.forEach((tank, times) -> met.merge(tank, times, Integer::sum));
        return met;
    }
}
