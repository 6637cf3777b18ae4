package soundings.estimate;

import org.hipparchus.special.Erf;

/** The normal distribution cut off or clipped at limits. */
final class Gauss {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double ROOT_TWO = Math.sqrt(2);
    /** Beyond this many standard deviations a tail is followed by its asymptote. */
    private static final double FAR = 12;

    private Gauss() {}

    /** Mean, variance and the probability that was left. */
    record Moments(double mean, double variance, double probability) {}

    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    static double cumulative(double z) {
        return Erf.erfc(-z / ROOT_TWO) / 2;
    }

    /**
     * A normal variable known to lie between two limits, either of which may be infinite.
     *
     * <p>E = mu + sigma (phi(a) - phi(b)) / Z and Var = sigma^2 [1 + (a phi(a) - b phi(b)) / Z - ((phi(a) - phi(b)) / Z)^2],
     * a and b the standardised limits (Johnson, Kotz and Balakrishnan 1994, Continuous Univariate Distributions 1, 13.10.1).
     * When the interval lies so far out that nothing is left, the variable sits at the nearer limit.
     */
    static Moments truncated(double mean, double sd, double low, double high) {
        double a = (low - mean) / sd;
        double b = (high - mean) / sd;
        if (a > FAR) {
            return atLimit(low, sd, a);
        }
        if (b < -FAR) {
            return atLimit(high, sd, -b);
        }
        double left = a > 0 ? cumulative(-a) - cumulative(-b) : cumulative(b) - cumulative(a);
        double shift = (density(a) - density(b)) / left;
        double variance = 1 + (weighted(a) - weighted(b)) / left - shift * shift;
        return new Moments(mean + sd * shift, sd * sd * Math.max(variance, 0), left);
    }

    private static double weighted(double z) {
        return Double.isInfinite(z) ? 0 : z * density(z);
    }

    private static Moments atLimit(double limit, double sd, double away) {
        double narrow = sd / away;
        return new Moments(limit, narrow * narrow, Math.max(cumulative(-away), Double.MIN_NORMAL));
    }

    /** A normal variable with what falls below zero put at zero: max(0, X). The probability is that of X above zero. */
    static Moments clippedAtZero(double mean, double sd) {
        double z = mean / sd;
        double above = cumulative(z);
        double first = mean * above + sd * density(z);
        double second = (mean * mean + sd * sd) * above + mean * sd * density(z);
        return new Moments(first, Math.max(second - first * first, 0), above);
    }
}
