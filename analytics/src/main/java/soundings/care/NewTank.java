package soundings.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import soundings.chemistry.Parameter;
import soundings.log.Reading;

/**
 * A tank that is run in.
 *
 * @param sinceStated whether the first day stands in the setup; otherwise it is the day of its first entry
 * @param animals whether a note or the setup says that animals are in
 * @param clearings ammonia, nitrite, nitrate
 * @param free the un-ionised part of the ammonia readings, where pH, temperature and salinity were tested near them
 * @param zerosInARow tests in a row that show none, of ammonia and of nitrite, the smaller of the two
 * @param zerosOn the day the tests in a row first were enough
 * @param readyOn the day it was ready by the rule, and has stayed so
 * @param lacks the first thing that is missing
 * @param earlier the keeper's other tanks, the latest first
 */
public record NewTank(
        String tank,
        LocalDate since,
        boolean sinceStated,
        LocalDate asOf,
        boolean animals,
        List<Clearing> clearings,
        List<Free> free,
        int zerosNeeded,
        int zerosInARow,
        Optional<LocalDate> zerosOn,
        Optional<Challenge> challenge,
        Optional<LocalDate> readyOn,
        Lacks lacks,
        List<Earlier> earlier) {
    public NewTank {
        clearings = List.copyOf(clearings);
        free = List.copyOf(free);
        earlier = List.copyOf(earlier);
    }

    /** Why a tank is not ready yet. */
    public enum Lacks {
        AMMONIA_TESTS,
        NITRITE_TESTS,
        AMMONIA_GONE,
        NITRITE_GONE,
        ZERO_TESTS,
        CHALLENGE,
        CHALLENGE_CLEARED,
        CHALLENGE_TESTED,
        NOTHING
    }

    /** Un-ionised ammonia in the unit of the total; the pH is taken as one on the total scale, which gives the higher figure. */
    public record Free(LocalDate on, double mgPerLitre, List<Reading> from) {
        public Free {
            from = List.copyOf(from);
        }
    }

    /**
     * Another tank of the keeper.
     *
     * @param daysToZeros from its first day until its tests in a row were enough; empty where the log does not show it
     */
    public record Earlier(String tank, LocalDate since, OptionalLong daysToZeros) {}

    /** Empty of animals and not ready: what is in its water is meant to be there. */
    public boolean isRunIn() {
        return !animals && lacks != Lacks.NOTHING;
    }

    public Clearing clearing(Parameter parameter) {
        return clearings.stream()
                .filter(c -> c.parameter().equals(parameter))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(parameter.id() + " is not looked at in a new tank"));
    }

    /** Days since the first one. */
    public long age() {
        return ChronoUnit.DAYS.between(since, asOf);
    }
}
