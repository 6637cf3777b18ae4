package soundings.wording;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Letters typed for figures: an O among figures for a zero, an l or I between figures for a one. */
public final class Lookalikes {
    private static final Pattern ZERO =
            Pattern.compile("(?<![\\p{L}\\p{N}])([0-9][0-9.,]*o[0-9o.,]*|o[.,][0-9]+)(?![\\p{L}\\p{N}])");
    private static final Pattern ONE =
            Pattern.compile("(?<![\\p{L}\\p{N}])[0-9.,]+[li][0-9.,]*[0-9](?![\\p{L}\\p{N}])");

    private Lookalikes() {}

    /** The text with figures for such letters; empty where there are none. */
    public static Optional<String> corrected(String text) {
        String plain = Plain.of(text);
        String zeros = ZERO.matcher(plain)
                .replaceAll(m -> Matcher.quoteReplacement(m.group().replace('o', '0')));
        String ones = ONE.matcher(zeros)
                .replaceAll(m -> Matcher.quoteReplacement(m.group().replaceAll("[li]", "1")));
        return ones.equals(plain) ? Optional.empty() : Optional.of(ones);
    }
}
