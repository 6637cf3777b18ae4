package soundings.estimate;

import java.util.ArrayList;
import java.util.List;

/**
 * Whether the readings scatter about what was foretold as the model says they should.
 *
 * @param meanSquare of the standardised one-step differences: near 1
 * @param lagOne their correlation with the one before: near 0
 */
record ResidualCheck(int count, double meanSquare, double lagOne) {
    private static final int ENOUGH = 12;
    /** Normal quantile for one false alarm in two hundred on each check. */
    private static final double LIMIT = 2.8;

    static ResidualCheck of(List<Double> standardised) {
        int n = standardised.size();
        double square = standardised.stream().mapToDouble(z -> z * z).sum();
        double product = 0;
        for (int i = 1; i < n; i++) {
            product += standardised.get(i) * standardised.get(i - 1);
        }
        return new ResidualCheck(n, n == 0 ? 1 : square / n, square == 0 ? 0 : product / square);
    }

    /** The surprises of all exact readings that were believed; the first two only settle the start. */
    static ResidualCheck of(Trace trace) {
        return of(surprises(trace));
    }

    static List<Double> surprises(Trace trace) {
        List<Double> surprises = new ArrayList<>();
        for (Trace.Moment moment : trace.moments()) {
            for (Trace.Seen seen : moment.seen) {
                if (seen.sight.exact() && seen.did.trust() > 0.5) {
                    surprises.add(seen.did.surprise());
                }
            }
        }
        return surprises.subList(Math.min(2, surprises.size()), surprises.size());
    }

    boolean tooLarge() {
        return count >= ENOUGH && (meanSquare - 1) / Math.sqrt(2.0 / count) > LIMIT;
    }

    boolean correlated() {
        return count >= ENOUGH && Math.abs(lagOne) * Math.sqrt(count) > LIMIT;
    }

    boolean sound() {
        return !tooLarge() && !correlated();
    }
}
