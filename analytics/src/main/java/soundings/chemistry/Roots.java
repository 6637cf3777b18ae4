package soundings.chemistry;

import java.util.function.DoubleUnaryOperator;

/** Where a function takes a value. Deterministic, no library: the functions here are smooth and known to rise or fall. */
final class Roots {
    private static final int MOST_STEPS = 200;

    private Roots() {}

    /**
     * The zero between two points of opposite sign, by false position with halving (Illinois), bisecting when that is slow.
     *
     * @throws IllegalArgumentException when the ends have the same sign
     */
    static double zero(DoubleUnaryOperator f, double low, double high) {
        double a = low;
        double b = high;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa * fb > 0) {
            throw new IllegalArgumentException("no zero between " + low + " and " + high);
        }
        for (int i = 0; i < MOST_STEPS && fa != 0 && fb != 0 && Math.abs(b - a) > 4 * Math.ulp(b); i++) {
            double c = i % 3 == 2 ? (a + b) / 2 : (fa * b - fb * a) / (fa - fb);
            double fc = f.applyAsDouble(c);
            if (fc * fb <= 0) {
                a = b;
                fa = fb;
            } else {
                fa /= 2;
            }
            b = c;
            fb = fc;
        }
        return fa == 0 ? a : b;
    }

    /** Where a rising function takes a value; beyond the ends it is continued in a straight line, so that the answer stays rising. */
    static double inverse(DoubleUnaryOperator rising, double value, double low, double high) {
        double atLow = rising.applyAsDouble(low);
        double atHigh = rising.applyAsDouble(high);
        if (value < atLow || value > atHigh) {
            double slope = (atHigh - atLow) / (high - low);
            return value < atLow ? low + (value - atLow) / slope : high + (value - atHigh) / slope;
        }
        return zero(x -> rising.applyAsDouble(x) - value, low, high);
    }
}
