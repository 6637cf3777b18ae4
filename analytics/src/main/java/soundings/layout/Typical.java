package soundings.layout;

import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.TargetRange;

/**
 * Where a parameter's values usually lie, canonical unit.
 *
 * @param mid the middle of the range to keep it in, by ratio
 * @param spread the ratio, as a natural logarithm, within which a value is no surprise
 */
record Typical(Parameter parameter, double mid, double spread) {
    static Typical of(Parameter parameter, Reference reference) {
        return reference
                .findTarget(parameter)
                .map(t -> ofTarget(parameter, t))
                .orElseGet(
                        () -> new Typical(parameter, middle(parameter.plausibleLow(), parameter.plausibleHigh()), 2));
    }

    private static Typical ofTarget(Parameter parameter, TargetRange target) {
        boolean tight = parameter.kind() == Parameter.Kind.ION || parameter.kind() == Parameter.Kind.CONDITION;
        return new Typical(parameter, middle(target.low(), target.high()), tight ? 0.35 : 1);
    }

    /** Geometric where it can be; a range from zero has its middle at a fifth. */
    private static double middle(double low, double high) {
        return low > 0 ? Math.sqrt(low * high) : high / 5;
    }

    /** 1 at the middle, falling with the ratio; a zero tells nothing and counts little. */
    double fit(double canonical) {
        if (!plausible(canonical)) {
            return 0;
        }
        return canonical <= 0 ? 0.2 : Math.exp(-distance(canonical) / spread);
    }

    /** How far from the middle, as the logarithm of the ratio. */
    double distance(double canonical) {
        return canonical <= 0 ? 10 : Math.abs(Math.log(canonical / mid));
    }

    boolean near(double canonical) {
        return distance(canonical) <= spread;
    }

    boolean plausible(double canonical) {
        return canonical >= parameter.plausibleLow() && canonical <= parameter.plausibleHigh();
    }
}
