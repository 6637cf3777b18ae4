package soundings.chart;

/** The values an axis runs over, {@code low < high}. */
record Span(double low, double high) {
    Span {
        if (!(low < high)) {
            throw new IllegalArgumentException("an axis runs from low to high, not " + low + " to " + high);
        }
    }

    /** The span of values, widened where they are all the same and by a share at both ends. */
    static Span around(double low, double high, double share) {
        double width = high - low;
        double pad = width > 0 ? width * share : Math.max(Math.abs(low) * 0.05, 1e-6);
        return new Span(low - pad, high + pad);
    }

    double clamp(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
