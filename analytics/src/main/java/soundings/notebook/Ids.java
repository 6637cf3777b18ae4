package soundings.notebook;

import java.util.Locale;

/** Ids of sections and items: letters, digits and hyphens, the same for the same words. */
final class Ids {
    private Ids() {}

    /** {@code Frag tank (2)} gives {@code frag-tank-2}; words without any such letter give {@code part}. */
    static String slug(String words) {
        String plain =
                words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return plain.isEmpty() ? "part" : Character.isDigit(plain.charAt(0)) ? "n" + plain : plain;
    }
}
