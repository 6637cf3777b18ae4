package soundings.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.quantity.Interval;

/**
 * A dose proposed, or withheld with the reason.
 *
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
        List<String> restsOn) {
    public Recommendation {
        why = List.copyOf(why);
        working = List.copyOf(working);
        restsOn = List.copyOf(restsOn);
    }

    /** So many mL in all, in equal parts over so many days. */
    public record Correction(double ml, int days) {}

    /** Why no dose is proposed and what would lift it. */
    public record Withheld(Reason reason, String message, String wouldLift) {}

    /** The kinds of refusal. */
    public enum Reason {
        SALINITY_OFF,
        TOO_FEW_READINGS,
        READINGS_TOO_OLD,
        VOLUME_UNKNOWN,
        STRENGTH_UNKNOWN,
        NOT_TESTED,
        CONFLICTING_READINGS,
        MODEL_DOUBTED
    }

    /** One named number of the working: {@code use a day, 1.33 dKH, Log!D2:D98}. {@code id} names it in formulas. */
    public record WorkingLine(String id, String label, double value, String unit, String formula, String from) {}
}
