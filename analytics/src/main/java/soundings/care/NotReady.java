package soundings.care;

import java.util.List;
import soundings.log.AsWritten;
import soundings.quantity.Interval;

/** Why a new tank is not ready, in a sentence of its own. */
final class NotReady {
    private NotReady() {}

    static String because(NewTank tank) {
        return switch (tank.lacks()) {
            case AMMONIA_TESTS -> "its ammonia has not been tested";
            case NITRITE_TESTS -> "its nitrite has not been tested";
            case AMMONIA_GONE -> still(tank.clearings().get(0));
            case NITRITE_GONE -> still(tank.clearings().get(1));
            case ZERO_TESTS ->
                tank.zerosInARow() + " of the " + tank.zerosNeeded()
                        + " tests in a row without ammonia and nitrite that your rule asks for are done";
            case CHALLENGE ->
                tank.animals()
                        ? "its tests are clear; no challenge dose was noted before the animals went in, and with animals in none is to be given"
                        : "its tests are clear; what is left is a challenge dose of ammonia that is gone within a day";
            case CHALLENGE_CLEARED -> "the last challenge dose of ammonia was not gone within a day";
            case CHALLENGE_TESTED -> "the day after the challenge dose wants a test of ammonia and of nitrite";
            case NOTHING -> "";
        };
    }

    private static String still(Clearing clearing) {
        String name = CareActions.name(clearing.parameter()).replace("total ammonia (as N)", "ammonia");
        String last = clearing.last()
                .map(r -> name + " was "
                        + CareActions.figure(r.scale().written(r.amount().about())) + " "
                        + r.scale().label() + " on " + r.date())
                .orElse(name);
        String gone = clearing.on(Interval::mid)
                .map(d -> "; by its trend it is gone about " + d
                        + clearing.on(Interval::high)
                                .map(h -> ", " + h + " at the latest")
                                .orElse(""))
                .orElse("");
        return last + gone;
    }

    static List<String> restsOn(NewTank tank) {
        return tank.clearings().stream()
                .limit(2)
                .flatMap(c -> c.last().stream())
                .map(r -> r.at())
                .map(AsWritten::place)
                .toList();
    }
}
