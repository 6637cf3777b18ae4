package soundings.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import soundings.care.Plans.Treatment;
import soundings.log.Reading;

/**
 * A course of treatment, as written down: nothing here says what to give.
 *
 * @param plan the keeper's row in the setup; for a course known from notes alone, blank but for the tank
 * @param stated whether the first day stands in the setup; otherwise it is the day of the first note of a dose
 * @param until the last day the record speaks of: the day it ended, or the report's
 * @param missing days a dose was due by the keeper's own rhythm and none is noted
 * @param water what is left after each dose and water change, in their order
 * @param whyNoLevel why {@code water} is empty or breaks off; empty where it does not
 * @param disputes notes that count the days otherwise
 * @param tested the last test of what the medicine is named after, on or after the last step
 */
public record Course(
        Treatment plan,
        String tank,
        LocalDate started,
        boolean stated,
        LocalDate until,
        boolean running,
        List<Given> doses,
        List<LocalDate> missing,
        List<Step> water,
        String whyNoLevel,
        List<Sign> signs,
        SignFree signFree,
        List<Relapse> relapses,
        Better better,
        List<Dispute> disputes,
        OptionalDouble litres,
        Optional<Tested> tested) {
    public Course {
        doses = List.copyOf(doses);
        missing = List.copyOf(missing);
        water = List.copyOf(water);
        signs = List.copyOf(signs);
        relapses = List.copyOf(relapses);
        disputes = List.copyOf(disputes);
    }

    /** The day it was started is day 1. */
    public long day(LocalDate on) {
        return ChronoUnit.DAYS.between(started, on) + 1;
    }

    /** mg/L left on the last day, as far as it is known: nothing but doses and water changes is counted. */
    public OptionalDouble left() {
        return water.isEmpty() || !whyNoLevel.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(water.get(water.size() - 1).after());
    }

    /**
     * Milligrams that would bring the water back to what the keeper wants in it; none where it holds as much, and empty where a test
     * tells what it holds.
     */
    public OptionalDouble toKeepAt() {
        return tested.isEmpty() && left().isPresent() && plan.keepAt().isPresent() && litres.isPresent()
                ? OptionalDouble.of(
                        Math.max(0, plan.keepAt().getAsDouble() - left().getAsDouble()) * litres.getAsDouble())
                : OptionalDouble.empty();
    }

    /** What a test found in the water, which counts for more than any reckoning. */
    public record Tested(Reading reading, double mgPerLitre) {}

    /**
     * A dose or a water change.
     *
     * @param before mg/L
     * @param after mg/L
     * @param fraction of the water changed; zero for a dose
     * @param takenOut mg a water change took out, which is what would have to be given again: concentration x fraction x litres
     */
    public record Step(
            LocalDate on, double before, double after, double fraction, double takenOut, String what, String place) {}

    /**
     * Days without a sign.
     *
     * @param since the day after the last sign, or the first day; empty where no day was noted without a sign since
     * @param lastNoted the last day noted without a sign
     * @param noted how many days were noted without a sign since
     * @param end the earliest end by the keeper's rule, empty without a rule
     */
    public record SignFree(
            Optional<LocalDate> since, Optional<LocalDate> lastNoted, int noted, Optional<LocalDate> end) {
        /** Whether less than half of the days since the last sign are noted, so that nothing should rest on them. */
        public boolean isThin() {
            return 2L * noted < days();
        }

        /** Days from the first without a sign to the last that was noted. */
        public long days() {
            return since.flatMap(s -> lastNoted.map(l -> ChronoUnit.DAYS.between(s, l) + 1))
                    .orElse(0L);
        }
    }

    /** Signs from a day on, after days without one, and how they moved the earliest end. */
    public record Relapse(LocalDate on, LocalDate endBefore, LocalDate endAfter, String place) {}

    /** A note that calls a day by another number than the dates make it. */
    public record Dispute(LocalDate on, int called, long isDay, String place) {}

    /**
     * Whether the daily signs fall, by the rank test of Mann and Kendall.
     *
     * @param days noted days it rests on
     * @param counted whether the keeper counted the signs; otherwise each day is only with or without
     * @param byChance how often so clear a change would come about if nothing changed, 0 to 1
     */
    public record Better(
            Answer answer, int days, boolean counted, double byChance, OptionalInt first, OptionalInt last) {
        /** What the test says, allowing one error in twenty either way. */
        public enum Answer {
            BETTER,
            WORSE,
            CANNOT_TELL,
            TOO_FEW
        }
    }
}
