package soundings.chemistry;

import java.text.Normalizer;
import java.util.Locale;

/** Folding of names so that spellings meet: compatibility forms, case, accents of width, spaces. */
public final class Names {
    private Names() {}

    /** NFKC, lower case, micro sign to {@code u}, runs of white space to one, trimmed. {@code "PO₄ "} gives {@code "po4"}. */
    public static String fold(String text) {
        String compatible = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        return compatible.replace('μ', 'u').replaceAll("[\\s\\u00a0]+", " ").strip();
    }
}
