package soundings.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import soundings.history.Note;
import soundings.log.AsWritten;

/**
 * Whether a day showed signs of illness.
 *
 * @param count how many, where the keeper counted; empty where there were signs without a number
 */
public record Sign(LocalDate on, boolean seen, OptionalInt count, String text, AsWritten at) {
    /** One a day, oldest first: a sign in any note of the day counts, and of several counts the highest. */
    static List<Sign> of(List<Note> notes, Vocabulary words) {
        Map<LocalDate, Sign> days = new LinkedHashMap<>();
        for (Note note : notes) {
            read(note, words).ifPresent(s -> days.merge(s.on(), s, Sign::worse));
        }
        return days.values().stream().sorted(Comparator.comparing(Sign::on)).toList();
    }

    private static Sign worse(Sign one, Sign other) {
        boolean second = other.seen()
                && (!one.seen() || other.count().orElse(0) > one.count().orElse(0));
        return second ? other : one;
    }

    /** Nothing where a note speaks of no sign. */
    static Optional<Sign> read(Note note, Vocabulary words) {
        String whole = Vocabulary.folded(words.told(note.text()));
        String rest = words.signFree.matcher(whole).replaceAll(" ");
        boolean free = !rest.equals(whole) || words.speaksOfNone(whole);
        boolean seen = words.sign.matcher(rest).find() || (!free && note.kinds().contains("symptom"));
        if (!seen && !free) {
            return Optional.empty();
        }
        OptionalInt count = seen ? count(rest, words) : OptionalInt.of(0);
        boolean zero = count.isPresent() && count.getAsInt() == 0;
        return Optional.of(new Sign(note.on(), seen && !zero, count, note.text(), note.at()));
    }

    private static OptionalInt count(String text, Vocabulary words) {
        Matcher before = words.countBefore.matcher(text);
        if (before.find()) {
            return OptionalInt.of(Integer.parseInt(before.group(1)));
        }
        Matcher behind = words.countBehind.matcher(text);
        return behind.find()
                ? Stream.of(1, 2, 3)
                        .map(behind::group)
                        .filter(Objects::nonNull)
                        .mapToInt(Integer::parseInt)
                        .findFirst()
                : OptionalInt.empty();
    }
}
