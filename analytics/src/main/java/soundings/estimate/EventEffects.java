package soundings.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.log.Reading;
import soundings.quantity.Interval;

/** Whether something the keeper did (new carbon, other lights, a new bottle) changed what the tank uses. */
public final class EventEffects {
    private static final int DAYS_BEFORE = 90;
    private static final int DAYS_AFTER = 60;

    /** Tests needed on either side of an event. */
    public static final int FEWEST = 4;

    private EventEffects() {}

    /**
     * The change of the use.
     *
     * @param step canonical units a day, positive when more is used since; empty where the readings do not allow any
     * @param clear whether the 90 % interval leaves zero out; otherwise: cannot tell
     * @param because why it cannot be told, or what the figure rests on
     */
    public record EventEffect(
            String tank, Parameter parameter, LocalDate on, Optional<Interval> step, boolean clear, String because) {}

    /** Looks at the ninety days before and the sixty after; other changes in that time are not told apart from the event. */
    public static EventEffect of(
            History history, Reference reference, TankHistory tank, Parameter parameter, LocalDate on) {
        List<Reading> readings = tank.findSeries(parameter)
                .map(s -> Question.used(s, history.asOf()))
                .orElse(List.of());
        List<Reading> before = between(readings, on.minusDays(DAYS_BEFORE), on);
        List<Reading> after = between(readings, on.plusDays(1), on.plusDays(DAYS_AFTER));
        if (before.size() < FEWEST || after.size() < FEWEST) {
            String because = "only " + before.size() + " tests before and " + after.size() + " after; " + FEWEST
                    + " each are needed";
            return new EventEffect(tank.tank(), parameter, on, Optional.empty(), false, because);
        }
        List<Reading> both = between(readings, on.minusDays(DAYS_BEFORE), on.plusDays(DAYS_AFTER));
        Interval step = step(Question.of(tank, both, history, reference), on);
        boolean clear = step.low() > 0 || step.high() < 0;
        String because = before.size() + " tests before and " + after.size() + " after";
        return new EventEffect(tank.tank(), parameter, on, Optional.of(step), clear, because);
    }

    private static List<Reading> between(List<Reading> readings, LocalDate first, LocalDate last) {
        return readings.stream()
                .filter(r -> !r.date().isBefore(first) && !r.date().isAfter(last))
                .toList();
    }

    private static Interval step(Question question, LocalDate on) {
        double noon = Inflows.noon(on);
        Start start = question.start().asking(noon, question.scales().use() / 2);
        Fitted fitted = Fitted.of(question.asking(start).with(Timeline.splitAt(question.stages(), noon)));
        int step = start.step();
        return Mixture.of(fitted.nodes(), b -> b.mean(step), b -> b.covariance(step, step), 0)
                .interval();
    }
}
