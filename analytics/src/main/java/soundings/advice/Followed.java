package soundings.advice;

import java.time.LocalDate;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.quantity.Interval;

/**
 * A dose proposed at the last month's end beside what was dosed since, and what it did.
 *
 * @param presentMlPerDay the dose on the day of the proposal
 * @param sinceMlPerDay the dose at this month's end
 * @param changedOn when the dose first differed; empty: it never did
 * @param driftNow what the level does a day now; empty where it can't be told
 */
public record Followed(
        String tank,
        Parameter parameter,
        String additive,
        LocalDate advisedOn,
        double presentMlPerDay,
        Interval proposedMlPerDay,
        double sinceMlPerDay,
        Optional<LocalDate> changedOn,
        Kept kept,
        Interval levelThen,
        Optional<Interval> levelNow,
        Interval driftThen,
        Optional<Interval> driftNow) {

    /** How far advice was followed. */
    public enum Kept {
        FOLLOWED("followed"),
        PARTLY("partly followed"),
        OTHERWISE("changed the other way"),
        NOT("not followed");

        private final String words;

        Kept(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
