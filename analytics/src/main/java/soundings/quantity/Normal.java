package soundings.quantity;

/** The normal distribution, as far as a verdict's probability needs it. */
public final class Normal {
    private Normal() {}

    /** Probability below z standard deviations; Abramowitz & Stegun 1964, 7.1.26, absolute error under 1e-7. */
    public static double below(double z) {
        double x = Math.abs(z) / Math.sqrt(2);
        double t = 1 / (1 + 0.3275911 * x);
        double poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
        double upperHalf = poly * Math.exp(-x * x) / 2;
        return z < 0 ? upperHalf : 1 - upperHalf;
    }
}
