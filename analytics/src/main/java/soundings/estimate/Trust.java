package soundings.estimate;

/**
 * How far a reading is believed: either the test as it should be, or, rarely, a mistyped number that says nothing.
 *
 * @param mistyped share of readings that are mistyped, before looking
 * @param density of mistyped numbers, per canonical unit: they may fall anywhere over about twice the usual level
 */
record Trust(double mistyped, double density) {
    /** A mistyped number comes out as "below" or "between" about this often. */
    private static final double MISTYPED_LIMIT = 0.2;

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);

    static Trust full() {
        return new Trust(0, 0);
    }

    Observed weigh(Sight sight, double expected, double own, double variance) {
        return sight.exact()
                ? exact(sight.low() - expected, expected, own, variance)
                : limits(sight, expected, own, variance);
    }

    /**
     * A mixture of "believed" and "ignored" with its mean and variance matched by one normal: weight w moves the mean by
     * w K v and leaves P - w K F K' + w (1 - w) K v v' K'.
     */
    private Observed exact(double off, double expected, double own, double variance) {
        double z2 = off * off / variance;
        double sd = Math.sqrt(variance);
        double good = (1 - mistyped) * Math.exp(-z2 / 2) / (ROOT_TWO_PI * sd);
        double all = Math.max(good + mistyped * density, Double.MIN_NORMAL);
        double w = mistyped == 0 ? 1 : good / all;
        double log = mistyped == 0 ? -(Math.log(2 * Math.PI * variance) + z2) / 2 : Math.log(all);
        double narrowing = w / variance - w * (1 - w) * z2 / variance;
        return new Observed(expected, own, variance, w * off / variance, narrowing, w, off / sd, log);
    }

    private Observed limits(Sight sight, double expected, double own, double variance) {
        Gauss.Moments cut = Gauss.truncated(expected, Math.sqrt(variance), sight.low(), sight.high());
        double good = (1 - mistyped) * cut.probability();
        double all = Math.max(good + mistyped * MISTYPED_LIMIT, Double.MIN_NORMAL);
        double w = good / all;
        double shift = (cut.mean() - expected) / variance;
        double narrowing = w * (1 / variance - cut.variance() / (variance * variance)) - w * (1 - w) * shift * shift;
        return new Observed(expected, own, variance, w * shift, narrowing, w, 0, Math.log(all));
    }
}
