package soundings.estimate;

import java.util.List;

/**
 * What happens from the stage before until and at one moment: time passes, then the tests, then what was changed.
 *
 * @param day days since 1970, noon where no time is written
 * @param dt days since the stage before
 * @param rise what the doses raise the level by in that time
 * @param jump variance of a change of level nobody wrote down, before the tests
 * @param keep share of the level left after the water changes of the moment
 * @param add what changes and single doses bring in
 * @param addVariance how unsure that is
 * @param shake variance by which the use may change here: a dose of unknown strength was altered
 */
record Stage(
        double day,
        double dt,
        double rise,
        double jump,
        List<Sight> sights,
        double keep,
        double add,
        double addVariance,
        double shake) {
    Stage {
        sights = List.copyOf(sights);
    }

    Stage withJump(double variance) {
        return new Stage(day, dt, rise, variance, sights, keep, add, addVariance, shake);
    }

    /** After its tests use and level may have moved by that much, variances. */
    Stage changing(double ofUse, double ofLevel) {
        return new Stage(day, dt, rise, jump, sights, keep, add, addVariance + ofLevel, shake + ofUse);
    }

    Stage withSights(List<Sight> others) {
        return new Stage(day, dt, rise, jump, others, keep, add, addVariance, shake);
    }

    Stage lasting(double days, double raised) {
        return new Stage(day, days, raised, jump, sights, keep, add, addVariance, shake);
    }

    boolean changes() {
        return keep != 1 || add != 0 || addVariance != 0;
    }
}
