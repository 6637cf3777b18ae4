package soundings.estimate;

import java.util.ArrayList;
import java.util.List;
import soundings.quantity.Interval;

/**
 * Whether the last readings all err to one side: then the use has perhaps just changed, and the filter, which learns slowly,
 * does not know yet.
 *
 * @param by how far, in standard deviations of the last few surprises' mean; positive where the readings lie above
 */
record Leaning(double by) {
    private static final int FEWEST = 2;
    private static final int MOST = 6;
    /** What pure chance brings about every second time. */
    private static final double USUAL = 1.4;
    /** How much wider for each standard deviation more; set on the made-up tanks of the bench. */
    private static final double WIDER = 1;

    static Leaning of(Trace trace) {
        return of(ResidualCheck.surprises(trace));
    }

    static Leaning of(List<Double> surprises) {
        double most = 0;
        double sum = 0;
        List<Double> last = new ArrayList<>(surprises);
        for (int m = 1; m <= Math.min(MOST, last.size()); m++) {
            sum += last.get(last.size() - m);
            double mean = sum / Math.sqrt(m);
            most = m >= FEWEST && Math.abs(mean) > Math.abs(most) ? mean : most;
        }
        return new Leaning(most);
    }

    /** The side toward which the truth has perhaps moved is made wider; {@code up}: readings above speak for higher figures. */
    Interval widen(Interval interval, boolean up) {
        double wider = 1 + WIDER * Math.max(0, Math.abs(by) - USUAL);
        boolean high = by > 0 == up;
        double mid = interval.mid();
        return high
                ? new Interval(mid, interval.low(), mid + wider * (interval.high() - mid))
                : new Interval(mid, mid - wider * (mid - interval.low()), interval.high());
    }
}
