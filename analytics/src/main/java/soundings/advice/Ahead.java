package soundings.advice;

import java.util.List;
import java.util.stream.IntStream;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.quantity.Interval;

/** The days ahead. */
final class Ahead {
    private Ahead() {}

    /** The level on the last day looked ahead to, with the present dose and no water change. */
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

    /** The days ahead with so much more dosed a day, and a correction in equal daily parts on top. */
    static List<Estimate.Day> with(Estimate estimate, double morePerDay, double correction, int correctionDays) {
        List<Estimate.Day> days = estimate.aheadWith(morePerDay);
        return days.stream()
                .map(d -> new Estimate.Day(d.date(), d.level().plus(correction * given(estimate, d, correctionDays))))
                .toList();
    }

    /** The days ahead with so much more (or less) a day for some days, and another amount from then on. */
    static List<Estimate.Day> after(Estimate estimate, double meanwhile, int days, double from) {
        List<Estimate.Day> first = estimate.aheadWith(meanwhile);
        List<Estimate.Day> then = estimate.aheadWith(from);
        return IntStream.range(0, first.size())
                .mapToObj(i -> gone(estimate, first.get(i)) <= days
                        ? first.get(i)
                        : new Estimate.Day(
                                then.get(i).date(), then.get(i).level().plus((meanwhile - from) * days)))
                .toList();
    }

    private static double given(Estimate estimate, Estimate.Day day, int correctionDays) {
        return correctionDays == 0 ? 0 : Math.min(1, (double) gone(estimate, day) / correctionDays);
    }

    private static long gone(Estimate estimate, Estimate.Day day) {
        return day.date().toEpochDay() - estimate.asOf().toEpochDay();
    }
}
