package soundings.chemistry;

import java.util.List;

/**
 * A constituent of sea salt.
 *
 * @param massFraction grams in a gram of sea salt
 * @param countsFor ids of the parameters it counts in, one of the parameter's own substance each
 * @param equivalents of alkalinity
 */
public record SeaSpecies(
        String name, Formula formula, double massFraction, List<String> countsFor, double equivalents, String source) {
    public SeaSpecies {
        countsFor = List.copyOf(countsFor);
    }
}
