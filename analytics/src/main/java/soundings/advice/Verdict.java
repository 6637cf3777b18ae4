package soundings.advice;

/** One word for a test's state; the words come before any colour. */
public enum Verdict {
    STEADY("steady"),
    RISING("drifting up"),
    FALLING("drifting down"),
    HIGH("high"),
    LOW("low"),
    OVER_DOSED("over-dosed"),
    UNDER_DOSED("under-dosed"),
    CANNOT_TELL("cannot tell yet");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
