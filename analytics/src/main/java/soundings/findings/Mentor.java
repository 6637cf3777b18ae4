package soundings.findings;

import java.util.List;
import soundings.setup.MentorRange;

/** A mentor's answers, and what became of the ranges they set. */
public record Mentor(List<MentorNotes.Answer> answers, List<MentorRange> ranges) {
    public static final Mentor NONE = new Mentor(List.of(), List.of());

    public Mentor {
        answers = List.copyOf(answers);
        ranges = List.copyOf(ranges);
    }

    public boolean isEmpty() {
        return answers.isEmpty() && ranges.isEmpty();
    }
}
