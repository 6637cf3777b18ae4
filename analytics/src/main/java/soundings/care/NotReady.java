package soundings.care;

import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import soundings.log.AsWritten;
import soundings.quantity.Interval;

/** Why a new tank is not ready, in words without a capital or a full stop; days as {@code 2026-11-04}. */
public final class NotReady {
    private NotReady() {}

    public static String because(NewTank tank) {
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
        return last + "; " + when(clearing);
    }

    /** When a substance is gone by its trend, or why that cannot be said. */
    public static String when(Clearing clearing) {
        return switch (clearing.standing()) {
            case UNTESTED -> "not tested";
            case NONE ->
                "none since " + clearing.noneSince().map(LocalDate::toString).orElse("the first test");
            case FALLING -> "by its trend it is gone about " + day(clearing, Interval::mid) + latest(clearing);
            case RISING -> "it has not begun to fall, so there is no day yet";
            case TOO_FEW -> "too few tests since its highest for a trend";
            case UNCLEAR -> "its fall is no clearer than the scatter of its tests, so there is no day yet";
        };
    }

    private static String latest(Clearing clearing) {
        String latest = day(clearing, Interval::high);
        return latest.equals(day(clearing, Interval::mid)) ? "" : ", " + latest + " at the latest";
    }

    private static String day(Clearing clearing, ToDoubleFunction<Interval> end) {
        return clearing.on(end).map(LocalDate::toString).orElse("");
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
