package soundings.upkeep;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import soundings.chemistry.Part.Harm;
import soundings.log.AsWritten;

/**
 * Something to mend, from the first note of it to the last.
 *
 * @param what in the keeper's own words
 * @param noticed the day of the first note; empty where a row of the setup workbook has none
 * @param notes each time it was noted, oldest first; a job of the setup workbook has its row
 * @param about the equipment's name, empty where none is named
 * @param risk what comes of it, a sentence's end; empty where that is not known
 * @param done the day it was done; empty while it is open, or where a done job has no day
 */
public record Job(
        String tank,
        String what,
        Optional<LocalDate> noticed,
        List<Note> notes,
        String about,
        Harm harm,
        String risk,
        boolean open,
        Optional<LocalDate> done) {
    public Job {
        notes = List.copyOf(notes);
    }

    /** The keeper's words on one day. */
    public record Note(LocalDate on, String text, AsWritten at) {}

    /** Days from noticing to {@code on}. */
    public OptionalLong ageDays(LocalDate on) {
        return days(Optional.of(on));
    }

    /** Days from noticing to doing; empty while it is not done or a day is not known. */
    public OptionalLong daysToDo() {
        return days(done);
    }

    private OptionalLong days(Optional<LocalDate> until) {
        return noticed.isPresent() && until.isPresent()
                ? OptionalLong.of(Math.max(0, ChronoUnit.DAYS.between(noticed.get(), until.get())))
                : OptionalLong.empty();
    }

    public boolean isPressing() {
        return open && harm.isLifeThreatening();
    }

    public List<String> restsOn() {
        return notes.stream().map(n -> n.at().place()).distinct().toList();
    }
}
