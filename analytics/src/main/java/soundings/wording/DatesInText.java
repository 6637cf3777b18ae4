package soundings.wording;

import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the day a text tells along the way: {@code Laboratory results 3 May 2026}, {@code 5.5. Alk 8.0}. */
public final class DatesInText {
    private static final int LONGEST = 40;
    private static final int MOST_WORDS = 7;
    private static final int MOST_WORDS_OF_TEXT = 40;
    private static final Pattern YEAR = Pattern.compile("(?<![0-9])(19|20)[0-9]{2}(?![0-9])");
    private static final Pattern ANY = Pattern.compile("");
    /** How much a text must look like a date. */
    public static final double SURE = 0.6;

    private DatesInText() {}

    /** A day and one past its last character. */
    public record Found(WrittenDate date, int end) {}

    /** The day a text begins with; what stands behind it is kept apart by a space or sign. */
    public static Optional<Found> leading(String text) {
        int from = text.length() - text.stripLeading().length();
        for (int to = Math.min(text.length(), from + LONGEST); to > from + 3; to--) {
            if (parts(text, to)) {
                Optional<WrittenDate> date = date(text.substring(from, to), text.substring(to));
                if (date.isPresent()) {
                    return Optional.of(new Found(date.get(), to));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean parts(String text, int at) {
        boolean behind = at == text.length() || " :,;-–—\n\t".indexOf(text.charAt(at)) >= 0;
        return behind && " \n\t".indexOf(text.charAt(at - 1)) < 0;
    }

    /** A day whose last figures are its own: in {@code 5 May 10 % WC} they belong to what follows. */
    private static Optional<WrittenDate> date(String head, String rest) {
        boolean lateFigures = head.matches("(?s).*[\\p{L}.] [0-9]{1,2}") && !rest.isEmpty() && figures(head) > 1;
        return lateFigures
                ? Optional.empty()
                : Dates.read(head).filter(d -> d.sure() >= SURE && !d.readings().isEmpty());
    }

    private static int figures(String text) {
        return text.replaceAll("[0-9]+", "#").replaceAll("[^#]", "").length();
    }

    /**
     * The only day a text names in full, year and all; empty where it names none or more than one. A year of four figures says more
     * than one of two.
     */
    public static Optional<WrittenDate> only(String text) {
        String[] words = text.strip().split("[\\s(),;]+");
        return words.length > MOST_WORDS_OF_TEXT
                ? Optional.empty()
                : YEAR.matcher(text).find() ? only(words, YEAR) : only(words, ANY);
    }

    /** @param needs what a day's words must hold */
    private static Optional<WrittenDate> only(String[] words, Pattern needs) {
        Optional<WrittenDate> found = Optional.empty();
        for (int i = 0; i < words.length; i++) {
            for (int n = Math.min(MOST_WORDS, words.length - i); n > 0; n--) {
                Optional<WrittenDate> here = full(words, i, n, needs);
                if (here.isPresent()) {
                    if (found.isPresent()) {
                        return Optional.empty();
                    }
                    found = here;
                    i += n - 1;
                    break;
                }
            }
        }
        return found;
    }

    private static Optional<WrittenDate> full(String[] words, int from, int count, Pattern needs) {
        String text = String.join(" ", java.util.Arrays.asList(words).subList(from, from + count));
        String bare = text.replaceAll("^[^\\p{L}\\p{N}]+|[:.]+$", "");
        boolean starts = !bare.isEmpty() && bare.equals(bare.strip());
        boolean loose = count > 1
                && bare.chars().noneMatch(Character::isLetter)
                && !YEAR.matcher(bare).find();
        return !starts || loose || !needs.matcher(bare).find()
                ? Optional.empty()
                : Dates.read(bare)
                        .filter(d -> d.sure() >= SURE && !d.days().isEmpty())
                        .filter(d -> d.origin() != WrittenDate.Origin.SERIAL)
                        .filter(d ->
                                d.days().stream().allMatch(day -> day.year().isPresent()));
    }
}
