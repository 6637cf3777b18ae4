package soundings.layout;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Scale;

/**
 * Follows the results of one series, in the order written, and notices where they go on in another unit: three in a row
 * that leap under the scale so far and carry on smoothly under another.
 */
final class Regimes {
    private static final int RUN = 3;
    /** A step of more than this ratio (as a logarithm) is a leap. */
    private static final double LEAP = 0.7;
    /** Within this ratio of the values before, a series carries on. */
    private static final double SMOOTH = 0.25;

    private final Scales scales;
    private final Scale first;
    private final List<Double> recent = new ArrayList<>();
    private double median;

    private Regimes(Scales scales, Scale first) {
        this.scales = scales;
        this.first = first;
    }

    /** The scale of each figure. */
    static List<Scale> of(List<Double> figures, Scale first, Scales scales) {
        return new Regimes(scales, first).follow(figures);
    }

    private List<Scale> follow(List<Double> figures) {
        List<Scale> chosen = new ArrayList<>();
        Scale current = start(figures);
        for (int i = 0; i < figures.size(); i++) {
            Optional<Scale> other = changes(figures, i, current);
            current = other.orElse(current);
            chosen.add(current);
            remember(current.canonical(figures.get(i)), other.isPresent());
        }
        return chosen;
    }

    /** A heading's unit is given up from the start only when the first values cannot be meant in it and fit another well. */
    private Scale start(List<Double> figures) {
        List<Double> head = figures.stream().filter(f -> f > 0).limit(5).toList();
        Typical typical = scales.typical();
        boolean impossible = head.size() >= RUN && head.stream().noneMatch(f -> typical.plausible(first.canonical(f)));
        return impossible
                ? scales.rivals(first).stream()
                        .filter(s -> head.stream().allMatch(f -> typical.near(s.canonical(f))))
                        .findFirst()
                        .orElse(first)
                : first;
    }

    private Optional<Scale> changes(List<Double> figures, int from, Scale current) {
        if (recent.size() < RUN || !leaps(current.canonical(figures.get(from)))) {
            return Optional.empty();
        }
        List<Double> run = figures.subList(from, Math.min(figures.size(), from + RUN));
        List<Scale> others = new ArrayList<>(scales.rivals(current));
        others.add(first);
        return others.stream()
                .filter(s -> !s.equals(current) && run.size() == RUN)
                .filter(s -> run.stream().allMatch(f -> leaps(current.canonical(f)) && carriesOn(s.canonical(f))))
                .findFirst();
    }

    private boolean leaps(double canonical) {
        return canonical <= 0 || Math.abs(Math.log(canonical / median)) > LEAP;
    }

    private boolean carriesOn(double canonical) {
        Typical typical = scales.typical();
        return canonical > 0
                && Math.abs(Math.log(canonical / median)) < SMOOTH
                && typical.distance(canonical) < 2 * typical.spread();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    private void remember(double canonical, boolean changed) {
        if (canonical > 0 && (recent.size() < RUN || changed || !leaps(canonical))) {
            recent.add(canonical);
            if (recent.size() > 5) {
                recent.remove(0);
            }
            median = median(recent);
        }
    }
}
