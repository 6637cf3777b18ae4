package soundings.history;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.log.Reading;

/**
 * The readings of one parameter in one tank, oldest first, those set aside among them.
 *
 * @param scale what the keeper is shown it in; the readings' amounts are canonical all the same
 */
public record Series(Parameter parameter, Scale scale, List<Point> points) {
    /** So many of the last readings say what the keeper writes nowadays. */
    private static final int LATELY = 12;

    public Series {
        points = List.copyOf(points);
    }

    /** Shown as most of the last readings are written; on {@code canonical} where that reads the same. */
    public static Series asWritten(Scale canonical, List<Point> points) {
        return new Series(canonical.parameter(), scale(canonical, points), points);
    }

    private static Scale scale(Scale canonical, List<Point> points) {
        Map<String, List<Scale>> written = points.subList(Math.max(0, points.size() - LATELY), points.size()).stream()
                .map(p -> p.reading().scale())
                .collect(Collectors.groupingBy(Scale::id, LinkedHashMap::new, Collectors.toList()));
        return written.values().stream()
                .max(Comparator.comparingInt(List::size))
                .map(scales -> scales.get(0))
                .filter(scale -> !scale.readsLikeCanonical())
                .orElse(canonical);
    }

    public List<Point> used() {
        return points.stream().filter(Point::used).toList();
    }

    /** The used reading nearest to a day, at most so many days off; of two as near the earlier one. */
    public Optional<Reading> near(LocalDate day, int days) {
        return used().stream()
                .map(Point::reading)
                .filter(r -> apart(r, day) <= days)
                .min(Comparator.comparingLong((Reading r) -> apart(r, day)).thenComparing(Reading::date));
    }

    private static long apart(Reading reading, LocalDate day) {
        return Math.abs(ChronoUnit.DAYS.between(reading.date(), day));
    }
}
