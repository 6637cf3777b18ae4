package soundings.chemistry;

/** Where a fact comes from; {@code commonPractice} marks a rule of thumb that has no source. */
public record Source(String key, String citation, String locator, boolean commonPractice) {}
