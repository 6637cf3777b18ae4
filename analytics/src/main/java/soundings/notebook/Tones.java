package soundings.notebook;

import soundings.advice.Verdict;
import soundings.log.Issue;

/** Which tone goes with which word. */
final class Tones {
    private Tones() {}

    static Tone of(Verdict verdict) {
        return switch (verdict) {
            case STEADY -> Tone.CALM;
            case RISING, FALLING -> Tone.WATCH;
            case HIGH, LOW, OVER_DOSED, UNDER_DOSED -> Tone.ACT;
            case CANNOT_TELL -> Tone.UNSURE;
        };
    }

    static Tone of(Issue.Severity severity) {
        return switch (severity) {
            case NOTE -> Tone.QUIET;
            case WARNING -> Tone.WATCH;
            case SERIOUS -> Tone.ACT;
        };
    }

    static Cell verdict(Verdict verdict, String target) {
        return new Cell.Words(verdict.words(), of(verdict), target);
    }
}
