package soundings.wording;

import java.util.Map;
import java.util.Set;
import soundings.chemistry.Alias;

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

    private static final Map<Alias.Kind, Set<String>> AHEAD =
            Map.of(Alias.Kind.JOB, Set.of("ahead", "wanted"), Alias.Kind.CARE, Set.of("ahead", "unsaid"));

    private Hedges() {}

    static boolean aim(String plainWord) {
        return AIMS.contains(plainWord);
    }

    /** A word of a plan, a wish, a condition or another's say: what stands beside it has not been done. */
    static boolean ahead(Clauses text, int i) {
        return word(text, i)
                || AHEAD.entrySet().stream()
                        .anyMatch(e -> Names.at(text.tokens, i, k -> text.vocabulary.find(e.getKey(), k))
                                .filter(m -> e.getValue().contains(m.means()))
                                .isPresent());
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
