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

    /** @param acted whether what to do names it; what nobody is asked to act on is to be watched */
    static Tone of(Verdict verdict, boolean acted) {
        Tone tone = of(verdict);
        return tone == Tone.ACT && !acted ? Tone.WATCH : tone;
    }
}
