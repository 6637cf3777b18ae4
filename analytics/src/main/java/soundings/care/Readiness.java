package soundings.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.care.NewTank.Lacks;
import soundings.history.TankHistory;
import soundings.log.Reading;

/**
 * Whether a tank is ready: so many tests in a row without ammonia and without nitrite, and a challenge dose gone within a day. Common
 * practice without a source; the number is the keeper's.
 */
record Readiness(int zerosInARow, Optional<Challenge> challenge, Lacks lacks) {

    static Readiness on(LocalDate day, TankHistory tank, int needed, Rules rules) {
        List<Challenge> challenges = Challenge.of(tank, day, rules);
        List<Reading> ammonia = outside(challenges, Tests.of(tank, rules.parameter("ammonia"), day));
        List<Reading> nitrite = outside(challenges, Tests.of(tank, rules.parameter("nitrite"), day));
        int zeros = Math.min(
                Clearing.noneInARow(ammonia, rules.none("ammonia")),
                Clearing.noneInARow(nitrite, rules.none("nitrite")));
        Optional<Challenge> last =
                challenges.isEmpty() ? Optional.empty() : Optional.of(challenges.get(challenges.size() - 1));
        return new Readiness(zeros, last, lacks(ammonia, nitrite, zeros >= needed, last, rules));
    }

    /** What is tested on the day of a challenge dose shows the dose, not the tank. */
    private static List<Reading> outside(List<Challenge> challenges, List<Reading> tests) {
        return tests.stream()
                .filter(r -> challenges.stream().noneMatch(c -> c.on().equals(r.date())))
                .toList();
    }

    private static Lacks lacks(
            List<Reading> ammonia, List<Reading> nitrite, boolean enough, Optional<Challenge> challenge, Rules rules) {
        if (ammonia.isEmpty() || nitrite.isEmpty()) {
            return ammonia.isEmpty() ? Lacks.AMMONIA_TESTS : Lacks.NITRITE_TESTS;
        }
        if (Clearing.noneInARow(ammonia, rules.none("ammonia")) == 0) {
            return Lacks.AMMONIA_GONE;
        }
        if (Clearing.noneInARow(nitrite, rules.none("nitrite")) == 0) {
            return Lacks.NITRITE_GONE;
        }
        return enough ? ofChallenge(challenge) : Lacks.ZERO_TESTS;
    }

    private static Lacks ofChallenge(Optional<Challenge> challenge) {
        return challenge
                .map(Challenge::outcome)
                .map(outcome -> switch (outcome) {
                    case CLEARED -> Lacks.NOTHING;
                    case NOT_CLEARED -> Lacks.CHALLENGE_CLEARED;
                    case NOT_TESTED, PENDING -> Lacks.CHALLENGE_TESTED;
                })
                .orElse(Lacks.CHALLENGE);
    }

    /** The first day on which the tests in a row were enough, whatever came after. */
    static Optional<LocalDate> zerosOn(LocalDate asOf, TankHistory tank, int needed, Rules rules) {
        return days(tank, asOf, rules)
                .filter(d -> on(d, tank, needed, rules).zerosInARow() >= needed)
                .findFirst();
    }

    /** The first day since which it has been ready on every day of a test. */
    static Optional<LocalDate> readyOn(LocalDate asOf, TankHistory tank, int needed, Rules rules) {
        List<LocalDate> days = days(tank, asOf, rules).toList();
        int i = days.size();
        while (i > 0 && on(days.get(i - 1), tank, needed, rules).lacks() == Lacks.NOTHING) {
            i--;
        }
        return i < days.size() ? Optional.of(days.get(i)) : Optional.empty();
    }

    private static Stream<LocalDate> days(TankHistory tank, LocalDate asOf, Rules rules) {
        return Stream.of("ammonia", "nitrite")
                .flatMap(id -> Tests.of(tank, rules.parameter(id), asOf).stream())
                .map(Reading::date)
                .distinct()
                .sorted();
    }
}
