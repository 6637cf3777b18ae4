package soundings.chemistry;

/** A fixed number of the chemistry with where it comes from. */
public record Constant(String id, double value, double uncertainty, String unit, String range, String source) {}
