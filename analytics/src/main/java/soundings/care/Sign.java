package soundings.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.log.AsWritten;

/**
 * Whether a day showed signs of illness.
 *
 * @param count how many, where the keeper counted; empty where there were signs without a number
 */
public record Sign(LocalDate on, boolean seen, OptionalInt count, String text, AsWritten at) {
    private static final int ANY = Pattern.CASE_INSENSITIVE;
    private static final String WORDS =
            "(?:signs?|symptoms?|spots?|sores?|ulcers?|flashing|flashes|scratching|gasping|lethargic|clamped|twitching|panting|shedding|bloated"
                    + "|swollen|cloudy|frayed|cysts?|lesions?)";
    private static final Pattern WORD = Pattern.compile("\\b" + WORDS + "\\b", ANY);
    private static final Pattern FREE = Pattern.compile(
            "\\b(?:no|not|zero|without|free of|0)\\s+(?:more\\s+|any\\s+|new\\s+|visible\\s+|longer\\s+)?(?:[a-z]+\\s+){0,2}?"
                    + WORDS + "\\b" + "|\\b" + WORDS + "[- ](?:free|gone)\\b|\\b" + WORDS
                    + "\\s+(?:all|are|have|is)\\s+(?:all\\s+)?gone\\b|\\ball clear\\b",
            ANY);
    private static final Pattern COUNT =
            Pattern.compile("(?<![\\d.,])(\\d{1,3})\\s+(?:[a-z]+\\s+){0,2}?" + WORDS + "\\b", ANY);
    private static final Pattern COUNT_BEHIND = Pattern.compile(
            "\\b" + WORDS + "\\s*[:=x]?\\s*(\\d{1,3})(?![\\d.,]*\\s*(?:mg|g|ml|l|%|h|am|pm|°)\\b)", ANY);

    /** One a day, oldest first: a sign in any note of the day counts, and of several counts the highest. */
    static List<Sign> of(List<Note> notes) {
        Map<LocalDate, Sign> days = new LinkedHashMap<>();
        for (Note note : notes) {
            read(note).ifPresent(s -> days.merge(s.on(), s, Sign::worse));
        }
        return days.values().stream().sorted(Comparator.comparing(Sign::on)).toList();
    }

    private static Sign worse(Sign one, Sign other) {
        boolean second = other.seen()
                && (!one.seen() || other.count().orElse(0) > one.count().orElse(0));
        return second ? other : one;
    }

    /** Nothing where a note speaks of no sign. */
    static Optional<Sign> read(Note note) {
        String rest = FREE.matcher(note.text()).replaceAll(" ");
        boolean free = !rest.equals(note.text());
        boolean seen = WORD.matcher(rest).find() || (!free && note.kinds().contains("symptom"));
        if (!seen && !free) {
            return Optional.empty();
        }
        OptionalInt count = seen ? count(rest) : OptionalInt.of(0);
        boolean zero = count.isPresent() && count.getAsInt() == 0;
        return Optional.of(new Sign(note.on(), seen && !zero, count, note.text(), note.at()));
    }

    private static OptionalInt count(String text) {
        Matcher before = COUNT.matcher(text);
        if (before.find()) {
            return OptionalInt.of(Integer.parseInt(before.group(1)));
        }
        Matcher behind = COUNT_BEHIND.matcher(text);
        return behind.find() ? OptionalInt.of(Integer.parseInt(behind.group(1))) : OptionalInt.empty();
    }
}
