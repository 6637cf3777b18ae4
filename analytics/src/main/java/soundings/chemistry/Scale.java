package soundings.chemistry;

import java.util.function.DoubleUnaryOperator;

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

    @Override
    public String toString() {
        return parameter.id() + " in " + label;
    }
}
