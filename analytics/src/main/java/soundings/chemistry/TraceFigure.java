package soundings.chemistry;

/** What one compilation says of a trace in the open sea at S = 35; canonical units; low and high alike where it gives one figure. */
public record TraceFigure(Parameter parameter, String compilation, double low, double high, String source) {
    public TraceFigure {
        if (!(low <= high)) {
            throw new IllegalArgumentException(parameter.id() + " runs from " + low + " down to " + high);
        }
    }
}
