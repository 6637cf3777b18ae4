package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How many more tests bring an interval down to a wanted width, were the tank to go on as it is.
 *
 * @param on the days to test on, at the usual spacing
 * @param halfWidth the half width of the 90 % interval then, canonical unit (a day)
 */
public record TestsNeeded(int tests, List<LocalDate> on, double halfWidth) {
    private static final double NORMAL_90 = 1.6448536269514722;
    private static final int MOST = 40;
    private static final int LONGEST_DAYS = 120;

    public TestsNeeded {
        on = List.copyOf(on);
    }

    /** Empty when no number of tests within four months does it: the use itself wanders more than that. */
    public static Optional<TestsNeeded> forDrift(Estimate estimate, double halfWidthPerDay) {
        return search(estimate, halfWidthPerDay, 1);
    }

    /** For the level on the day of the last of the tests. */
    public static Optional<TestsNeeded> forLevel(Estimate estimate, double halfWidth) {
        return search(estimate, halfWidth, 0);
    }

    private static Optional<TestsNeeded> search(Estimate estimate, double wanted, int state) {
        Estimate.Fit fit = estimate.fit();
        double every = Math.max(1, Math.rint(fit.testEveryDays()));
        double[] p = {fit.levelSd() * fit.levelSd(), fit.levelUseCovariance(), fit.useSd() * fit.useSd()};
        List<LocalDate> on = new ArrayList<>();
        double half = NORMAL_90 * Math.sqrt(p[2 * state]);
        while (half > wanted) {
            if (on.size() >= MOST || on.size() * every >= LONGEST_DAYS) {
                return Optional.empty();
            }
            on.add(estimate.asOf().plusDays(Math.round(every * (on.size() + 1))));
            test(p, every, fit);
            half = NORMAL_90 * Math.sqrt(p[2 * state]);
        }
        return Optional.of(new TestsNeeded(on.size(), on, half));
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
