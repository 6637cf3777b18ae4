package soundings.advice;

import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;

/**
 * One thing to do.
 *
 * @param tank empty where it concerns no one tank
 * @param what an order in a few words, with the amount
 * @param steps what belongs to it, a short line each: a correction, what to buy; none for most
 * @param why a sentence each
 * @param sure probability (0 to 1) of what it rests on; 1 where it is plain fact
 * @param caution what can go wrong, empty for most
 * @param restsOn places such as {@code Log!C14}
 */
public record Action(
        Urgency urgency,
        String tank,
        Optional<Parameter> parameter,
        String what,
        List<String> steps,
        List<String> why,
        double sure,
        String caution,
        List<String> restsOn) {
    public Action {
        steps = List.copyOf(steps);
        why = List.copyOf(why);
        restsOn = List.copyOf(restsOn);
    }

    /** An order that is all said in its own words. */
    public Action(
            Urgency urgency,
            String tank,
            Optional<Parameter> parameter,
            String what,
            List<String> why,
            double sure,
            String caution,
            List<String> restsOn) {
        this(urgency, tank, parameter, what, List.of(), why, sure, caution, restsOn);
    }

    /** How pressing; in order. */
    public enum Urgency {
        /** Animals may die of it. */
        NOW("now"),
        /** Within the week. */
        SOON("this week"),
        MONTH("this month"),
        /** Something to enter, to test, to look at. */
        HANDY("when it suits");

        private final String words;

        Urgency(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
