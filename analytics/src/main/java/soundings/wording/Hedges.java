package soundings.wording;

import java.util.Set;

/** Words that make a number something other than a result of today: aims, memories, conditions. */
final class Hedges {
    private static final Set<String> WORDS = Set.of(
            "target",
            "targets",
            "goal",
            "goals",
            "aim",
            "aiming",
            "should",
            "want",
            "wanted",
            "plan",
            "planned",
            "if",
            "expected",
            "ideal",
            "yesterday",
            "last",
            "was",
            "were",
            "ago",
            "usually",
            "normally",
            "before",
            "previous",
            "previously",
            "tomorrow",
            "next",
            "would",
            "could",
            "must",
            "need",
            "needs",
            "until",
            "nsw",
            "recommended",
            "calibrated",
            "calibration",
            "reference",
            "soll",
            "ziel",
            "gestern",
            "ayer",
            "gisteren",
            "friend",
            "label",
            "says",
            "wrong",
            "ignore",
            "mistake",
            "ro",
            "rodi",
            "tap",
            "shop",
            "store",
            "neighbour",
            "neighbor",
            "barrel");

    /** Words behind a number that make it no result: what is aimed at, not reached, given up. */
    private static final Set<String> AIMS = Set.of(
            "target",
            "targets",
            "goal",
            "goals",
            "aim",
            "should",
            "want",
            "wanted",
            "plan",
            "planned",
            "expected",
            "ideal",
            "would",
            "could",
            "recommended",
            "max",
            "maximum",
            "min",
            "minimum",
            "limit",
            "most",
            "least",
            "soll",
            "ziel",
            "wrong",
            "ignore",
            "mistake",
            "yesterday",
            "gestern",
            "ayer",
            "hier",
            "gisteren");

    private Hedges() {}

    static boolean aim(String plainWord) {
        return AIMS.contains(plainWord);
    }

    static boolean word(Clauses text, int i) {
        return text.in(i, WORDS);
    }

    /** A hedge that stands alone up to the next stop, not the head of another phrase: {@code (target)}, {@code last week}. */
    static boolean lone(Clauses text, int i) {
        if (!word(text, i)) {
            return false;
        }
        int at = i;
        boolean number = false;
        while (!text.stop(at)) {
            number |= text.number(at);
            at++;
        }
        return !number;
    }
}
