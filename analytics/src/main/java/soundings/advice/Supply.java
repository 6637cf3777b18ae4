package soundings.advice;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One additive's pump and container, as of the report's day.
 *
 * @param mlPerDay as the pump is set
 * @param mlPerDose empty where the number of doses is not known
 * @param delivered what the pump gives of what it is set to; empty where it was never measured
 * @param mlLeft from the day it was filled on, by what the pump truly gives; none is zero
 * @param emptyOn the first day that is not served in full
 * @param orderBy a week before that; common practice, no source
 * @param cell where the container stands in the setup workbook
 */
public record Supply(
        String tank,
        String additive,
        double mlPerDay,
        OptionalDouble dosesPerDay,
        OptionalDouble mlPerDose,
        OptionalDouble delivered,
        OptionalDouble containerMl,
        OptionalDouble mlLeft,
        Optional<LocalDate> emptyOn,
        Optional<LocalDate> orderBy,
        String cell) {}
