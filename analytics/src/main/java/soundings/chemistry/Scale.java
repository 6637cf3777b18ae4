package soundings.chemistry;

import java.util.function.DoubleUnaryOperator;
import soundings.quantity.Interval;

/**
 * One way a parameter's results are written: a unit and, where it matters, the substance it counts.
 * Phosphate has {@code mg/L}, {@code mg/L P}, {@code ug/L} ...; salinity has {@code SG 25/25}, {@code mS/cm} ...
 *
 * @param id unique within the parameter; the canonical scale's id is the parameter's unit
 * @param label as shown to a keeper: {@code ppb P}
 * @param assumption what had to be assumed to convert, empty where nothing was (a specific gravity's reference temperatures)
 * @param usual whether a keeper who writes no unit may well mean it: only usual scales are tried when a unit must be inferred
 * @param toCanonical strictly increasing
 * @param fromCanonical its inverse
 */
public record Scale(
        Parameter parameter,
        String id,
        String label,
        String assumption,
        boolean usual,
        DoubleUnaryOperator toCanonical,
        DoubleUnaryOperator fromCanonical) {
    private static final int MOST_DIGITS = 6;
    private static final int COUNTING = 3;
    /** Nearer to a round figure than this is that figure, after there and back. */
    private static final double ROUND = 1e-9;

    public Scale(
            Parameter parameter,
            String id,
            String label,
            String assumption,
            DoubleUnaryOperator toCanonical,
            DoubleUnaryOperator fromCanonical) {
        this(parameter, id, label, assumption, true, toCanonical, fromCanonical);
    }

    public double canonical(double written) {
        return toCanonical.applyAsDouble(written);
    }

    public double written(double canonical) {
        return fromCanonical.applyAsDouble(canonical);
    }

    /** Whether its figures are those of the parameter's own unit, whatever it is called: total ammonia in mg/L and in mg/L N. */
    public boolean readsLikeCanonical() {
        double low = parameter.plausibleLow();
        double high = parameter.plausibleHigh();
        return Math.abs(written(low) - low) + Math.abs(written(high) - high) <= ROUND * high;
    }

    /** A level with its interval. */
    public Interval written(Interval canonical) {
        return new Interval(written(canonical.mid()), written(canonical.low()), written(canonical.high()));
    }

    /** A difference or a rate, none of an offset in it; on a curved scale as it is {@code around} that level. */
    public double change(double canonical, double around) {
        return written(around + canonical / 2) - written(around - canonical / 2);
    }

    /** @see #change(double, double) */
    public Interval change(Interval canonical, double around) {
        return new Interval(
                change(canonical.mid(), around), change(canonical.low(), around), change(canonical.high(), around));
    }

    /** Digits after the point that show as much as the parameter's own do: fewer where figures are larger. */
    public int decimals() {
        double low = parameter.plausibleLow();
        double high = parameter.plausibleHigh();
        double size = (written(high) - written(low)) / (high - low);
        return Math.max(0, parameter.decimals() - (int) Math.round(Math.log10(size)));
    }

    /**
     * Digits after the point for one figure: {@link #decimals()}, but no more than three that count where the scale is finer written than the
     * parameter's own, as copper in mg/L is; what lies before an offset scale's zero does not count.
     */
    public int decimalsAt(double written) {
        int usual = decimals();
        double size = Math.abs(written - written(0));
        if (usual <= parameter.decimals() || !(size > 0)) {
            return usual;
        }
        int counting = COUNTING - 1 - (int) Math.floor(Math.log10(size));
        return Math.max(0, Math.min(usual, counting));
    }

    /** Digits a bound needs: as somebody set it where that is a round figure on this scale, else {@link #decimalsAt(double)}. */
    public int decimalsOf(double written) {
        for (int digits = 0; digits <= MOST_DIGITS; digits++) {
            double step = Math.pow(10, -digits);
            if (Math.abs(Math.rint(written / step) * step - written) <= ROUND * Math.abs(written)) {
                return digits <= decimals() + 2 ? digits : decimalsAt(written);
            }
        }
        return decimalsAt(written);
    }

    @Override
    public String toString() {
        return parameter.id() + " in " + label;
    }
}
