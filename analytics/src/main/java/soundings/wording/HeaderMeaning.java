package soundings.wording;

/**
 * One thing a header can mean.
 *
 * @param tank a tank's name that stands in the header too, empty otherwise
 * @param score 0 to 1, from the words alone; the values below have the last word
 * @param because the words it rests on, as a sentence
 */
public record HeaderMeaning(Meaning meaning, String tank, double score, String because) {
    HeaderMeaning scored(double newScore, String newBecause) {
        return new HeaderMeaning(meaning, tank, newScore, newBecause);
    }
}
