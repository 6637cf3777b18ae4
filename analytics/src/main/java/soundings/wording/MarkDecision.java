package soundings.wording;

/**
 * Which decimal mark a column of texts uses.
 *
 * @param sure 0 to 1; zero when undecided
 * @param because the evidence as a sentence
 */
public record MarkDecision(DecimalMark mark, double sure, String because) {}
