package soundings.advice;

import java.util.List;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.quantity.Interval;

/** The days ahead. */
final class Ahead {
    private Ahead() {}

    /** The level on the last day looked ahead to, with the present dose and the usual water changes. */
    static Interval last(Estimate estimate) {
        List<Estimate.Day> ahead = estimate.ahead();
        return ahead.isEmpty() ? estimate.level() : ahead.get(ahead.size() - 1).level();
    }

    /** The probability of being out of the range on the worst of the days. */
    static double leaving(List<Estimate.Day> days, TargetRange target) {
        return days.stream()
                .mapToDouble(d -> Odds.outside(d.level(), target.low(), target.high()))
                .max()
                .orElse(0);
    }
}
