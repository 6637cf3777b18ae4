package soundings.findings;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import soundings.setup.WrittenRange;

/** What was written into earlier reports, oldest first: answers beside questions, and ranges to use from then on. */
public record MentorNotes(List<Answer> answers, List<WrittenRange> ranges) {
    public static final MentorNotes NONE = new MentorNotes(List.of(), List.of());

    public MentorNotes {
        answers = List.copyOf(answers);
        ranges = List.copyOf(ranges);
    }

    /** Those of several reports, oldest first. */
    public static MentorNotes all(Collection<MentorNotes> reports) {
        return new MentorNotes(
                reports.stream().flatMap(n -> n.answers().stream()).toList(),
                reports.stream().flatMap(n -> n.ranges().stream()).toList());
    }

    /**
     * One answer.
     *
     * @param by who signed it, empty where nobody did
     * @param place the report and the cell
     */
    public record Answer(
            String tank, String question, String answer, String by, Optional<LocalDate> on, String place) {}
}
