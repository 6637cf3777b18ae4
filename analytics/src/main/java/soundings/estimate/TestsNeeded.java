package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import soundings.quantity.Interval;

/**
 * How many more tests there must be before something can be told, were the tank to go on as it is.
 *
 * @param on the days to test on, at the usual spacing
 */
public record TestsNeeded(int tests, List<LocalDate> on) {
    private static final int MOST = 40;
    private static final int LONGEST_DAYS = 120;

    public TestsNeeded {
        on = List.copyOf(on);
    }

    /**
     * What would be known after so many tests more, each as it is expected now.
     *
     * @param then the level as many days later as the estimate looks ahead
     * @param drift a day
     */
    public record Later(Interval level, Interval then, Interval drift) {}

    /** One at least. Empty when no number of tests within four months does it: the use itself wanders more than that, or the level lies on the border. */
    public static Optional<TestsNeeded> until(Estimate estimate, Predicate<Later> told) {
        Estimate.Fit fit = estimate.fit();
        double every = Math.max(1, Math.rint(fit.testEveryDays()));
        double[] p = {fit.levelSd() * fit.levelSd(), fit.levelUseCovariance(), fit.useSd() * fit.useSd()};
        List<LocalDate> on = new ArrayList<>();
        while (on.size() < MOST && on.size() * every < LONGEST_DAYS) {
            on.add(estimate.asOf().plusDays(Math.round(every * (on.size() + 1))));
            test(p, every, fit);
            if (told.test(later(estimate, p, on.size() * every))) {
                return Optional.of(new TestsNeeded(on.size(), on));
            }
        }
        return Optional.empty();
    }

    private static Later later(Estimate estimate, double[] p, double days) {
        List<Estimate.Day> ahead = estimate.ahead();
        int span = ahead.size();
        double level = estimate.level().mid();
        double moved = span == 0 ? 0 : ahead.get(span - 1).level().mid() - level;
        double at = Math.max(0, level + (span == 0 ? 0 : moved / span * days));
        double use = estimate.fit().useWander();
        double wander = estimate.fit().levelWander();
        double variance = p[0]
                - 2 * span * p[1]
                + (double) span * span * p[2]
                + use * use * Math.pow(span, 3) / 3
                + wander * wander * span;
        return new Later(
                Interval.normal(at, Math.sqrt(Math.max(p[0], 0))),
                Interval.normal(at + moved, Math.sqrt(Math.max(variance, 0))),
                Interval.normal(estimate.drift().mid(), Math.sqrt(p[2])));
    }

    /** Variances of level and use and their covariance, one spacing and one test on. */
    private static void test(double[] p, double dt, Estimate.Fit fit) {
        double use = fit.useWander() * fit.useWander() * dt;
        double level = fit.levelWander() * fit.levelWander() * dt;
        p[0] += -2 * dt * p[1] + dt * dt * p[2] + use * dt * dt / 3 + level;
        p[1] += -dt * p[2] - use * dt / 2;
        p[2] += use;
        double error = fit.kitError() * fit.kitError() + fit.kitStep() * fit.kitStep() / 12;
        double seen = p[0] + error;
        double levelGain = p[0] / seen;
        double useGain = p[1] / seen;
        p[2] -= useGain * p[1];
        p[1] -= levelGain * p[1];
        p[0] -= levelGain * p[0];
    }
}
