package soundings.estimate;

/** The normal distribution cut off or clipped at limits. */
final class Gauss {
    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double ROOT_TWO = Math.sqrt(2);

    /** Fifteen digits from 5 root 2 on. */
    private static final int MILLS_TERMS = 24;

    private static final double[] HART_TOP = {
        3.52624965998911e-2,
        0.700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] HART_BOTTOM = {
        8.83883476483184e-2,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    /** Beyond this many standard deviations a tail is followed by its asymptote. */
    private static final double FAR = 12;

    private Gauss() {}

    /** Mean, variance and the probability that was left. */
    record Moments(double mean, double variance, double probability) {}

    static double density(double z) {
        return Math.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    /**
     * The share of a normal distribution below z, to 1e-15, a tail to 1e-8 of itself (Hart et al. 1968, Computer Approximations, 5666, with the
     * continued fraction of Abramowitz and Stegun 26.2.14 beyond; as West 2005, Wilmott Magazine, May, 70-76, has it).
     */
    static double cumulative(double z) {
        double x = Math.abs(z);
        double tail = x > 37.5 ? 0 : Math.exp(-x * x / 2) * (x < 5 * ROOT_TWO ? hart(x) : mills(x));
        return z > 0 ? 1 - tail : tail;
    }

    private static double hart(double x) {
        return polynomial(HART_TOP, x) / polynomial(HART_BOTTOM, x);
    }

    private static double mills(double x) {
        double fraction = x;
        for (int k = MILLS_TERMS; k >= 1; k--) {
            fraction = x + k / fraction;
        }
        return 1 / (fraction * ROOT_TWO_PI);
    }

    /** The highest power first. */
    private static double polynomial(double[] coefficients, double x) {
        double value = 0;
        for (double c : coefficients) {
            value = value * x + c;
        }
        return value;
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
