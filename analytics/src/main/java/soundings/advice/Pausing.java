package soundings.advice;

import java.util.Optional;
import soundings.advice.Recommendation.Pause;
import soundings.chemistry.Constant;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.quantity.Interval;

/** A level above its range brought back to the middle by what the tank uses: no dose meanwhile, or less of it. */
final class Pausing {
    private static final double LIKELY = 0.5;
    /** A test on the way: after a quarter of the time, in two days at the soonest, in a fortnight at the latest; common practice. */
    private static final double PART = 0.25;

    private static final int SOONEST = 2;
    private static final int LATEST = 14;
    /** Beyond this, waiting is no plan. */
    private static final double TOO_LONG = 180;

    private Pausing() {}

    /** Only where the level is more likely above the range than not, something is dosed, and the tank surely uses some of it. */
    static Optional<Pause> of(Sum sum, TargetRange target) {
        boolean falls = sum.use().low() - sum.others() > 0;
        return isAbove(sum.estimate(), target) && falls && sum.feed().isOn()
                ? Optional.of(pause(sum, target)).filter(p -> p.days().mid() <= TOO_LONG)
                : Optional.empty();
    }

    private static boolean isAbove(Estimate estimate, TargetRange target) {
        return Odds.above(estimate.level(), target.high()) > LIKELY;
    }

    /** A fall faster than a level may be changed in a day is held back by a part of the dose. */
    private static Pause pause(Sum sum, TargetRange target) {
        Correcting.gap(sum, target);
        Working working = sum.working();
        String unit = sum.parameter().unit();
        String fall = sum.others() == 0 ? "use" : "(use - others)";
        double most = most(sum, target);
        Optional<Double> limit = Optional.of(most).filter(m -> m < sum.use().mid() - sum.others());
        double meanwhile = 0;
        if (limit.isPresent()) {
            working.given("fall_a_day", "at most a day", limit.get(), unit, "common practice, no source");
            String per = sum.feed().delivered() == 1 ? "strength" : "(strength * delivered)";
            meanwhile = working.worked(
                    "dose_meanwhile", "mL a day meanwhile", "mL/d", "(" + fall + " - fall_a_day) * litres / " + per);
            fall = "fall_a_day";
        }
        double days = working.worked("pause", "days until the middle of the range", "d", "(level - goal) / " + fall);
        double falls = limit.orElse(sum.use().mid() - sum.others());

        return new Pause(meanwhile, days(sum, target, days, limit), middle(target), testIn(days), falls, most);
    }

    /** What a level may fall by in a day: as much as it may rise; where that is not known, a part of the middle of its range. */
    private static double most(Sum sum, TargetRange target) {
        double share = sum.matter()
                .reference()
                .findConstant("max_fall_per_day_share")
                .map(Constant::value)
                .orElse(1.0);
        return Correcting.limit(sum).orElse(share * middle(target));
    }

    private static double middle(TargetRange target) {
        return (target.low() + target.high()) / 2;
    }

    /** From the low end of the level at the quickest fall to the high end at the slowest. */
    private static Interval days(Sum sum, TargetRange target, double mid, Optional<Double> limit) {
        Interval level = sum.estimate().level();
        double quick = limit.orElse(sum.use().high() - sum.others());
        double slow = limit.orElse(sum.use().low() - sum.others());
        double low = Math.max(0, level.low() - middle(target)) / quick;
        double high = Math.max(0, level.high() - middle(target)) / slow;
        return new Interval(mid, Math.min(mid, low), Math.max(mid, high));
    }

    private static int testIn(double days) {
        return (int) Math.max(SOONEST, Math.min(LATEST, Math.round(days * PART)));
    }

    /** Said of a level above its range for which there is no pause. */
    static Optional<String> words(Sum sum, TargetRange target, Optional<Pause> pause) {
        return isAbove(sum.estimate(), target) && pause.isEmpty()
                ? Optional.of(
                        "the level is above its range and may not fall by itself in good time: water changes bring it down")
                : Optional.empty();
    }
}
