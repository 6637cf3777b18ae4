package soundings.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.advice.Recommendation.Correction;
import soundings.chemistry.TargetRange;
import soundings.quantity.Interval;

/** A level out of its range brought back to the middle: a dose split over days. */
final class Correcting {
    private static final double LIKELY = 0.5;

    private Correcting() {}

    /** Only upward, only where the level is more likely below the range than not, and only with a known limit for a day's rise. */
    static Optional<Correction> of(Sum sum, TargetRange target) {
        Optional<Double> limit = limit(sum);
        if (Odds.below(sum.estimate().level(), target.low()) <= LIKELY || limit.isEmpty()) {
            return Optional.empty();
        }
        Working working = sum.working();
        String unit = sum.parameter().unit();
        gap(sum, target);
        working.worked("rise", "to be raised", unit, "goal - level");
        String per = sum.feed().delivered() == 1 ? "strength" : "(strength * delivered)";
        double ml = working.worked("correction", "mL in all, once", "mL", "rise * litres / " + per);
        working.given("rise_a_day", "at most a day", limit.get(), unit, limitFrom(sum));
        double exact = working.worked("days_exact", "days at that rate", "d", "rise / rise_a_day");
        int days = (int) Math.max(1, Math.ceil(exact - 1e-9));
        working.given("days", "days, rounded up", days, "d", "");
        working.worked("correction_a_day", "mL a day besides the daily dose", "mL/d", "correction / days");
        return Optional.of(new Correction(ml, days, ml * sum.feed().delivered()));
    }

    /** By how much a level that is likelier below its range than not is to be raised to its middle, canonical unit; else 0. */
    static double lift(Sum sum, TargetRange target) {
        Interval level = sum.estimate().level();
        return Odds.below(level, target.low()) > LIKELY ? (target.low() + target.high()) / 2 - level.mid() : 0;
    }

    static void gap(Sum sum, TargetRange target) {
        Working working = sum.working();
        String unit = sum.parameter().unit();
        String cells = String.join(", ", sum.matter().places());
        working.given(
                "level",
                "level now, estimated from the tests",
                sum.estimate().level().mid(),
                unit,
                cells);
        working.given("range_low", "range, low end", target.low(), unit, from(sum, target));
        working.given("range_high", "range, high end", target.high(), unit, from(sum, target));
        working.worked("goal", "middle of the range", unit, "(range_low + range_high) / 2");
    }

    private static String from(Sum sum, TargetRange target) {
        return sum.matter()
                .history()
                .setup()
                .findTarget(sum.matter().tank().tank(), sum.parameter())
                .map(t -> t.cell())
                .orElseGet(() -> sum.matter().reference().citation(target.source()));
    }

    static Optional<Double> limit(Sum sum) {
        return sum.feed().row().maxRisePerDay().isPresent()
                ? Optional.of(sum.feed().row().maxRisePerDay().getAsDouble())
                : sum.matter().usualMaxRise();
    }

    private static String limitFrom(Sum sum) {
        return sum.feed().row().maxRisePerDay().isPresent() ? sum.feed().row().cell() : "common practice, no source";
    }

    static List<String> words(Sum sum, TargetRange target, Optional<Correction> correction) {
        List<String> words = new ArrayList<>();
        correction.ifPresent(c -> words.add("to come back to the middle of the range it needs " + Phrases.ml(c.ml())
                + " besides the daily dose" + (c.days() == 1 ? "" : ", in equal parts over " + c.days() + " days")));
        if (correction.isEmpty() && Odds.below(sum.estimate().level(), target.low()) > LIKELY) {
            words.add("the level is low, but no limit for a day's rise is known: enter Max rise a day");
        }
        return words;
    }
}
