package soundings.wording;

/**
 * One phrase of a text: characters {@code from} to {@code to} (one past the last).
 *
 * @param tank the tank named before it in the text, empty where none is
 * @param sure 0 to 1
 */
public record Phrase(int from, int to, String tank, double sure, Said said) {}
