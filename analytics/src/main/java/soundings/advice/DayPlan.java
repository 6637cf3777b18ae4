package soundings.advice;

import java.time.LocalTime;
import java.util.List;

/**
 * When in the day each pump of a tank gives its doses, with alkalinity and calcium as far apart as they go.
 *
 * @param apartMinutes the least time between a dose of alkalinity and one of calcium or magnesium; the whole day where only one is dosed
 */
public record DayPlan(String tank, List<Dose> doses, int apartMinutes) {
    public DayPlan {
        doses = List.copyOf(doses);
    }

    /**
     * One dose.
     *
     * @param ml with the pump as it is set
     * @param proposedMl with what is proposed; the same where nothing else is
     */
    public record Dose(LocalTime at, String additive, double ml, double proposedMl) {}

    /** Whether any dose is to change. */
    public boolean isToChange() {
        return doses.stream().anyMatch(d -> d.ml() != d.proposedMl());
    }
}
