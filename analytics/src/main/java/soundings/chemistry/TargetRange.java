package soundings.chemistry;

/** A range to keep a parameter in, canonical unit; {@code source} is a key of the sources, {@code setup} for the keeper's own. */
public record TargetRange(Parameter parameter, double low, double high, String source) {
    public TargetRange {
        if (!(low <= high)) {
            throw new IllegalArgumentException(
                    parameter.id() + ": target runs from low to high, not " + low + " to " + high);
        }
    }
}
