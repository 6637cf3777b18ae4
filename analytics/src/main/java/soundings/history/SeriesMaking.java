package soundings.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import soundings.chemistry.Parameter;
import soundings.log.AsWritten;
import soundings.log.Reading;
import soundings.setup.Setup;

/** Makes a tank's series: what cannot be used is marked with its reason, nothing is dropped. */
record SeriesMaking(
        String tank, OptionalDouble litres, List<DoseCourse> doses, List<Change> changes, Histories.Ground ground) {

    /** One series a parameter, in the reference's order. */
    List<Series> series(List<Reading> inTime) {
        Map<Reading, String> copies = Copies.among(inTime);
        Map<String, List<Reading>> byParameter =
                inTime.stream().collect(Collectors.groupingBy(r -> r.parameter().id()));
        return ground.reference().parameters().stream()
                .filter(p -> byParameter.containsKey(p.id()))
                .map(p -> series(p, points(p, byParameter.getOrDefault(p.id(), List.of()), copies)))
                .toList();
    }

    /** In the unit the keeper prefers (a preference such as {@code alkalinity unit}), else as most of the last tests are written. */
    private Series series(Parameter parameter, List<Point> points) {
        return ground.setup()
                .findPreference(parameter.name() + " unit")
                .flatMap(unit -> ground.reference().findScale(parameter, unit))
                .map(scale -> new Series(parameter, scale, points))
                .orElseGet(() -> Series.asWritten(ground.reference().canonicalScale(parameter), points));
    }

    private List<Point> points(Parameter parameter, List<Reading> readings, Map<Reading, String> copies) {
        List<Reading> candidates = readings.stream()
                .filter(r -> r.refused().isEmpty() && !copies.containsKey(r))
                .toList();
        Iterator<Point> screened = Screening.of(parameter, candidates, disturbance(parameter), usualFloor(parameter))
                .iterator();
        return readings.stream()
                .map(r -> r.refused().isEmpty() && !copies.containsKey(r) ? screened.next() : setAside(r, copies))
                .map(this::notLater)
                .toList();
    }

    private static Point setAside(Reading reading, Map<Reading, String> copies) {
        return reading.refused().isEmpty()
                ? new Point(reading, Use.DUPLICATE, copies.getOrDefault(reading, ""))
                : new Point(reading, Use.EXCLUDED, reading.refused());
    }

    private Point notLater(Point point) {
        return point.used() && point.reading().date().isAfter(ground.asOf())
                ? new Point(point.reading(), Use.EXCLUDED, "later than this report")
                : point;
    }

    /** The least spread to expect of honest readings, canonical units: the kit's own step or error where the setup has them. */
    private double usualFloor(Parameter parameter) {
        return ground.setup().kits().stream()
                .filter(k -> k.parameter().equals(parameter))
                .mapToDouble(k -> Math.max(k.step().orElse(0), k.error().orElse(0)))
                .max()
                .orElse(0);
    }

    /** What the keeper did may move a level by as much. */
    private Disturbance disturbance(Parameter parameter) {
        return new Disturbance(
                doses.stream()
                        .flatMap(c -> c.additive().stream()
                                .filter(a -> a.parameter().equals(parameter))
                                .map(a -> new Disturbance.Fed(c, rise(a))))
                        .toList(),
                changes,
                ground.setup()
                        .findFreshMix(tank, parameter)
                        .map(Setup.FreshMix::value)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()));
    }

    private OptionalDouble rise(Setup.Additive additive) {
        return additive.risePerMlInOneLitre().isPresent() && litres.isPresent()
                ? OptionalDouble.of(additive.risePerMlInOneLitre().getAsDouble() / litres.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Readings that are copies of others. */
    static final class Copies {
        private Copies() {}

        /** The same result of one day at two places: a row or a column copied whole, or a result copied to another sheet. */
        static Map<Reading, String> among(List<Reading> readings) {
            Map<List<Object>, List<Reading>> alike =
                    readings.stream().filter(r -> r.refused().isEmpty()).collect(Collectors.groupingBy(Copies::result));
            Map<Reading, String> copies = new HashMap<>();
            if (alike.size() < readings.size()) {
                Map<List<Object>, List<List<Object>>> lines = lines(readings);
                alike.values().stream().filter(a -> a.size() > 1).forEach(a -> mark(a, lines, copies));
            }
            return copies;
        }

        private static void mark(
                List<Reading> alike, Map<List<Object>, List<List<Object>>> lines, Map<Reading, String> copies) {
            for (int i = 1; i < alike.size(); i++) {
                Reading later = alike.get(i);
                Optional<Reading> original = alike.subList(0, i).stream()
                        .filter(earlier -> isCopy(earlier, later, lines))
                        .findFirst();
                original.ifPresent(o -> copies.put(later, "the same result stands at " + o.at().place()));
            }
        }

        private static boolean isCopy(Reading earlier, Reading later, Map<List<Object>, List<List<Object>>> lines) {
            AsWritten a = earlier.at();
            AsWritten b = later.at();
            if (!a.sheet().equals(b.sheet())) {
                return true;
            }
            if (a.cell().equals(b.cell())) {
                return false;
            }
            return a.cell().column() == b.cell().column()
                    ? alikeLines(row(a), row(b), lines)
                    : a.cell().row() == b.cell().row() && alikeLines(column(a), column(b), lines);
        }

        private static boolean alikeLines(
                List<Object> one, List<Object> other, Map<List<Object>, List<List<Object>>> lines) {
            return Objects.equals(lines.get(one), lines.get(other));
        }

        private static Map<List<Object>, List<List<Object>>> lines(List<Reading> readings) {
            Map<List<Object>, List<List<Object>>> lines = new HashMap<>();
            for (Reading reading : readings) {
                lines.computeIfAbsent(row(reading.at()), k -> new ArrayList<>()).add(result(reading));
                lines.computeIfAbsent(column(reading.at()), k -> new ArrayList<>())
                        .add(result(reading));
            }
            return lines;
        }

        private static List<Object> row(AsWritten at) {
            return List.of("row", at.sheet(), at.cell().row());
        }

        private static List<Object> column(AsWritten at) {
            return List.of("column", at.sheet(), at.cell().column());
        }

        private static List<Object> result(Reading reading) {
            LocalDate date = reading.date();
            return List.of(reading.parameter().id(), date, reading.time(), reading.amount(), reading.method());
        }
    }
}
