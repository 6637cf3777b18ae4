package soundings.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.estimate.Estimate;
import soundings.quantity.Interval;

/**
 * A dose proposed, or withheld with the reason; or neither, where the present dose is good as it is.
 *
 * @param pause where the level is above its range and the tank uses it up; the proposed or present dose is for after it
 * @param correction a one-off amount toward the target, split over days; empty when none is needed
 * @param withheld empty when the advice stands
 * @param working the formula, the numbers put in, step by step
 * @param restsOn places such as {@code Sheet!C14}
 */
public record Recommendation(
        String tank,
        Parameter parameter,
        String additive,
        OptionalDouble presentMlPerDay,
        Optional<Interval> proposedMlPerDay,
        Optional<Correction> correction,
        List<String> why,
        Optional<Withheld> withheld,
        List<WorkingLine> working,
        List<String> restsOn,
        Optional<Outlook> outlook,
        Optional<Pause> pause) {
    public Recommendation {
        why = List.copyOf(why);
        working = List.copyOf(working);
        restsOn = List.copyOf(restsOn);
    }

    public Recommendation(
            String tank,
            Parameter parameter,
            String additive,
            OptionalDouble presentMlPerDay,
            Optional<Interval> proposedMlPerDay,
            Optional<Correction> correction,
            List<String> why,
            Optional<Withheld> withheld,
            List<WorkingLine> working,
            List<String> restsOn) {
        this(
                tank,
                parameter,
                additive,
                presentMlPerDay,
                proposedMlPerDay,
                correction,
                why,
                withheld,
                working,
                restsOn,
                Optional.empty(),
                Optional.empty());
    }

    /** Whether there is anything to do. */
    public boolean isChange() {
        return proposedMlPerDay().isPresent() || correction().isPresent() || pause().isPresent();
    }

    /**
     * The days ahead, the usual water changes among them.
     *
     * @param unchanged the level with the present dose
     * @param followed the level with what is proposed; the same where nothing is
     * @param leavesUnchanged probability (0 to 1) of being out of the range on the worst of the days
     */
    public record Outlook(
            List<Estimate.Day> unchanged, List<Estimate.Day> followed, double leavesUnchanged, double leavesFollowed) {
        public Outlook {
            unchanged = List.copyOf(unchanged);
            followed = List.copyOf(followed);
        }
    }

    /**
     * So many mL in all, in equal parts over so many days, besides the daily dose.
     *
     * @param ml as the pump is set
     * @param byHandMl measured by hand: what a pump that gives less or more than it is set to would truly give
     */
    public record Correction(double ml, int days, double byHandMl) {
        public double mlADay() {
            return ml / days;
        }
    }

    /**
     * Less than usual until a level above its range has come down to the middle.
     *
     * @param mlPerDay meanwhile, mostly none
     * @param days until then, with their 90 % interval
     * @param goal the level to wait for, canonical unit
     * @param testIn days until the next test, well before the end
     * @param fallPerDay by which the level falls meanwhile, canonical unit
     * @param mostPerDay by which it may fall at most
     */
    public record Pause(double mlPerDay, Interval days, double goal, int testIn, double fallPerDay, double mostPerDay) {
        public int wholeDays() {
            return (int) Math.max(1, Math.round(days.mid()));
        }
    }

    /** Why no dose is proposed and what would lift it. */
    public record Withheld(Reason reason, String message, String wouldLift) {}

    /** The kinds of refusal. */
    public enum Reason {
        SALINITY_OFF,
        TOO_FEW_READINGS,
        READINGS_TOO_OLD,
        VOLUME_UNKNOWN,
        STRENGTH_UNKNOWN,
        RECIPE_UNREAD,
        NOT_TESTED,
        TWO_ADDITIVES,
        CONFLICTING_READINGS,
        MODEL_DOUBTED,
        CHANGED_LATELY
    }

    /**
     * One named number of the working: {@code use a day, 1.33 dKH, Log!D2:D98}.
     *
     * @param id names it in formulas: a letter, then letters, digits and underscores; unique in the working
     * @param formula plain arithmetic over the ids above it ({@code + - * /}, parentheses); empty for a number put in
     * @param from where a number put in comes from; empty for one worked out
     */
    public record WorkingLine(String id, String label, double value, String unit, String formula, String from) {}
}
