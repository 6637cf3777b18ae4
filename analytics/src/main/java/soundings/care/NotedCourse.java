package soundings.care;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.care.Plans.Treatment;
import soundings.history.Note;

/**
 * A course of treatment as notes alone tell of it: a dose, and another one or signs noted on some days, none more than a pause after the
 * one before; a dose alone is a bath.
 *
 * @param doses the days of doses
 * @param signs the days on which signs or their absence are noted
 * @param notes how many notes it was made of
 */
record NotedCourse(List<LocalDate> doses, List<LocalDate> signs, int notes) {
    /** Days; common practice, no source. */
    private static final int PAUSE = 14;

    /** Signs noted on so many days beside one dose make a course. */
    private static final int FEWEST_SIGNS = 3;

    /** A treatment is spoken of at most so many days before its first dose. */
    private static final int BEFORE = 7;

    /** @param notes of one tank, oldest first */
    static List<NotedCourse> of(List<Note> notes, Treatment blank, OptionalDouble litres, Vocabulary words) {
        List<NotedCourse> all = new ArrayList<>();
        int i = 0;
        while (i < notes.size()) {
            boolean begins = isOfTreatment(notes, i, words)
                    && Given.of(notes.get(i), blank, litres, words).isPresent();
            NotedCourse run = begins
                    ? from(notes.subList(i, notes.size()), blank, litres, words)
                    : new NotedCourse(List.of(), List.of(), 1);
            if (run.doses().size() > 1 || (begins && run.signs().size() >= FEWEST_SIGNS)) {
                all.add(run);
            }
            i += run.notes();
        }
        return all;
    }

    /** The first note is of a dose. */
    private static NotedCourse from(List<Note> notes, Treatment blank, OptionalDouble litres, Vocabulary words) {
        List<LocalDate> doses = new ArrayList<>();
        List<LocalDate> signs = new ArrayList<>();
        LocalDate last = notes.get(0).on();
        int n = 0;
        while (n < notes.size() && !notes.get(n).on().isAfter(last.plusDays(PAUSE))) {
            Note note = notes.get(n);
            boolean dose = Given.of(note, blank, litres, words).isPresent();
            boolean sign = Sign.read(note, words).isPresent();
            if (dose && !doses.contains(note.on())) {
                doses.add(note.on());
            }
            if (sign) {
                signs.add(note.on());
            }
            last = dose || sign ? note.on() : last;
            n++;
        }
        return new NotedCourse(doses, signs, n);
    }

    /** Whether this note or one of the days before it speaks of a treatment. */
    private static boolean isOfTreatment(List<Note> notes, int at, Vocabulary words) {
        LocalDate from = notes.get(at).on().minusDays(BEFORE);
        int first = at;
        while (first > 0 && !notes.get(first - 1).on().isBefore(from)) {
            first--;
        }
        return notes.subList(first, at + 1).stream().anyMatch(words::speaksOfTreatment);
    }

    LocalDate first() {
        return doses.get(0);
    }

    /** A pause after its last note, where that has come. */
    Optional<LocalDate> ended(LocalDate asOf) {
        return Stream.concat(doses.stream(), signs.stream())
                .max(Comparator.naturalOrder())
                .map(last -> last.plusDays(PAUSE))
                .filter(end -> end.isBefore(asOf));
    }
}
