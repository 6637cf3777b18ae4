package soundings.chemistry;

import java.text.Normalizer;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A chemical formula as on a bottle: {@code NaHCO3}, {@code Ca(OH)2}, {@code MgCl2·6H2O}, {@code CaCl2.2H2O}, {@code MgSO4 x 7 H2O}.
 *
 * @param text as written, with {@code ·} before water of crystallisation
 * @param atoms how many of each element's symbol, in order of first appearance
 */
public record Formula(String text, Map<String, Double> atoms) {
    private static final Pattern SIMPLE = Pattern.compile("[A-Za-z0-9()]+");

    public Formula {
        atoms = Collections.unmodifiableMap(new LinkedHashMap<>(atoms));
    }

    /**
     * @throws IllegalArgumentException saying at which character the formula stops making sense; elements are not looked up here
     */
    public static Formula of(String written) {
        String plain = SIMPLE.matcher(written).matches() ? written : plain(written);
        return new Formula(plain, new FormulaReading(plain).read());
    }

    /** Every sign for "with water" to one dot, also {@code 0.5H2O}'s, which is none. */
    private static String plain(String written) {
        return Normalizer.normalize(written, Normalizer.Form.NFKC)
                .replaceAll("\\s+[xX×]\\s*(?=\\d|[A-Z(\\[])", "·")
                .replaceAll("\\s", "")
                .replaceAll("[.*•∙⋅・]", "·")
                .replaceAll("(?<=·\\d{1,2})·(?=\\d)", ".");
    }

    /** g/mol. @throws IllegalArgumentException naming an element without a weight */
    public double molarMass(Elements elements) {
        return atoms.entrySet().stream()
                .mapToDouble(a -> a.getValue() * elements.weight(a.getKey()))
                .sum();
    }

    public double count(String symbol) {
        return atoms.getOrDefault(symbol, 0.0);
    }

    /** Grams of an element in a gram of the substance. */
    public double massFraction(String symbol, Elements elements) {
        return count(symbol) * elements.weight(symbol) / molarMass(elements);
    }

    @Override
    public String toString() {
        return text;
    }
}
