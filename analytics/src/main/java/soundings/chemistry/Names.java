package soundings.chemistry;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Folding of names so that spellings meet: width, case, accents, dashes, spaces. */
public final class Names {
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u200b\\ufeff]+");
    private static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2015\\u2212]");

    private Names() {}

    /**
     * Compatibility forms, lower case, no accents, micro sign to {@code u}, every dash to {@code -}, runs of white space to one,
     * trimmed. {@code "PO₄ "} gives {@code "po4"}, {@code "Härte"} gives {@code "harte"}, {@code "mg·L⁻¹"} gives {@code "mg·l-1"}.
     */
    public static String fold(String text) {
        if (isFolded(text)) {
            return text;
        }
        String plain = text.replace('µ', 'u').replace('\u00ba', '°').replace('\u02da', '°');
        return isPlain(plain) ? spaced(plain.toLowerCase(Locale.ROOT)) : foldAny(plain);
    }

    private static String foldAny(String text) {
        String bare =
                MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        String lower = Normalizer.normalize(bare.toLowerCase(Locale.ROOT), Normalizer.Form.NFKC);
        String plain = MARKS.matcher(lower)
                .replaceAll("")
                .replace('μ', 'u')
                .replace('’', '\'')
                .replace('∙', '·')
                .replace('⋅', '·');
        return spaced(DASHES.matcher(plain).replaceAll("-"));
    }

    private static String spaced(String text) {
        return SPACES.matcher(text).replaceAll(" ").strip();
    }

    /** Nothing in it that normalising would change, but case and spaces. */
    private static boolean isPlain(String text) {
        return text.chars().allMatch(c -> c < 128 || c == '°' || c == '·');
    }

    /** Most names of a log come back for a second and third look: nothing is to be made anew then. */
    private static boolean isFolded(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean inner = c == ' ' && i > 0 && i < text.length() - 1 && text.charAt(i - 1) != ' ';
            if (!inner && (c <= ' ' || c >= 127 || (c >= 'A' && c <= 'Z'))) {
                return false;
            }
        }
        return true;
    }
}
