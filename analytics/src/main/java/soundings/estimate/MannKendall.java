package soundings.estimate;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The rank test for a trend.
 *
 * @param s pairs that rise less pairs that fall
 * @param z standardised with the continuity correction; beyond 1.645 either way a trend at 90 %
 */
public record MannKendall(long s, double variance, double z) {

    public static MannKendall of(List<Double> y) {
        long s = 0;
        for (int i = 0; i < y.size(); i++) {
            for (int j = i + 1; j < y.size(); j++) {
                s += Long.signum((long) Math.signum(y.get(j) - y.get(i)));
            }
        }
        double variance = variance(List.of(), y);
        return new MannKendall(s, variance, s == 0 ? 0 : (s - Long.signum(s)) / Math.sqrt(variance));
    }

    /**
     * Variance of S with ties in either list: [n(n-1)(2n+5) - sum t(t-1)(2t+5)] / 18 (Sen 1968; Kendall 1975, Rank
     * Correlation Methods). {@code x} may be empty where it has no ties.
     */
    static double variance(List<Double> x, List<Double> y) {
        return (term(y.size()) - ties(x) - ties(y)) / 18;
    }

    private static double ties(List<Double> values) {
        Collection<Long> groups = values.stream()
                .collect(Collectors.groupingBy(v -> v, Collectors.counting()))
                .values();
        return groups.stream().mapToDouble(MannKendall::term).sum();
    }

    private static double term(double n) {
        return n * (n - 1) * (2 * n + 5);
    }
}
