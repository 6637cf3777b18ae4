package soundings.advice;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One additive's pump and container, as of the report's day.
 *
 * @param mlPerDay as the pump is set
 * @param proposedMlPerDay empty where no other dose is proposed
 * @param correctionMl what is proposed to be given once besides, from the same container; zero for most
 * @param mlPerDose empty where the number of doses is not known
 * @param delivered what the pump gives of what it is set to; empty where it was never measured
 * @param mlLeft from the day it was filled on, by what the pump truly gives; none is zero
 * @param emptyOn the first day that is not served in full, with what is proposed
 * @param emptyUnchanged the same with the pump as it is set; empty where nothing else is proposed
 * @param orderBy a week before that; common practice, no source
 * @param cell where the container stands in the setup workbook
 */
public record Supply(
        String tank,
        String additive,
        double mlPerDay,
        OptionalDouble proposedMlPerDay,
        double correctionMl,
        OptionalDouble dosesPerDay,
        OptionalDouble mlPerDose,
        OptionalDouble delivered,
        OptionalDouble containerMl,
        OptionalDouble mlLeft,
        Optional<LocalDate> emptyOn,
        Optional<LocalDate> emptyUnchanged,
        Optional<LocalDate> orderBy,
        String cell) {
    /** Whether something else is proposed than the pump is set to. */
    public boolean isToChange() {
        return proposedMlPerDay.isPresent() || correctionMl > 0;
    }

    /** mL a day as proposed, else as set. */
    public double aheadMlPerDay() {
        return proposedMlPerDay.orElse(mlPerDay);
    }
}
