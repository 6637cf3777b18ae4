package soundings.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import soundings.quantity.Interval;

/** Statistics that a few wrong numbers do not move. */
final class Robust {
    private static final double NORMAL_90 = 1.6448536269514722;
    private static final double MAD_TO_SD = 1.482602218505602;

    private Robust() {}

    /** A slope with its 90 % interval and the line's height at x = 0. */
    record Line(Interval slope, double intercept) {}

    static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        int n = sorted.size();
        return n % 2 == 1 ? sorted.get(n / 2) : (sorted.get(n / 2 - 1) + sorted.get(n / 2)) / 2;
    }

    /** Median distance from the median, times 1.4826: the standard deviation where the values are normal. */
    static double spread(List<Double> values) {
        double middle = median(values);
        return MAD_TO_SD * median(values.stream().map(v -> Math.abs(v - middle)).toList());
    }

    /**
     * Theil's slope, the median of all pairs, with Sen's interval: the slopes at ranks (N -+ z sqrt(Var S)) / 2
     * (Sen 1968, J. Am. Stat. Assoc. 63, 1379-1389).
     *
     * @param z standard normal quantile of the interval, 1.645 for 90 %
     */
    static Line line_S68(List<Double> x, List<Double> y, double z) {
        List<Double> slopes = new ArrayList<>();
        for (int i = 0; i < x.size(); i++) {
            for (int j = i + 1; j < x.size(); j++) {
                if (!x.get(i).equals(x.get(j))) {
                    slopes.add((y.get(j) - y.get(i)) / (x.get(j) - x.get(i)));
                }
            }
        }
        Collections.sort(slopes);
        double slope = median(slopes);
        double reach = z * Math.sqrt(MannKendall.variance(x, y));
        int n = slopes.size();
        int upper = Math.min((int) Math.round((n + reach) / 2), n - 1);
        int lower = Math.max((int) Math.round((n - reach) / 2) - 1, 0);
        Interval interval = new Interval(slope, slopes.get(lower), slopes.get(upper));
        return new Line(interval, median(y) - slope * median(x));
    }

    static Line line(List<Double> x, List<Double> y) {
        return line_S68(x, y, NORMAL_90);
    }

    /** Change a day from the middles of the first and the last third; empty where that spans no time. */
    static OptionalDouble roughSlope(List<Double> x, List<Double> y) {
        int third = Math.max(1, x.size() / 3);
        double run = median(x.subList(x.size() - third, x.size())) - median(x.subList(0, third));
        double rise = median(y.subList(y.size() - third, y.size())) - median(y.subList(0, third));
        return run > 0 ? OptionalDouble.of(rise / run) : OptionalDouble.empty();
    }
}
