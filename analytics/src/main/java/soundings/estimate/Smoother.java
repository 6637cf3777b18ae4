package soundings.estimate;

import static soundings.estimate.Start.FIRST_BIAS;
import static soundings.estimate.Start.GROWTH;
import static soundings.estimate.Start.LEVEL;
import static soundings.estimate.Start.USE;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The backward pass: what the later readings say about the earlier levels, and about each reading without itself.
 *
 * <p>Carries the score r and its precision N (Durbin and Koopman 2012, Time Series Analysis by State Space Methods, 4.4):
 * smoothed level = m + P r, variance = P - P N P. It needs no inverse, so states of zero variance are no trouble.
 * Leaving a reading out: de Jong 1988, Biometrika 75, 594-600.
 */
final class Smoother {
    /** Below this share of an ordinary reading's narrowing a reading moved nothing worth taking out again. */
    private static final double MOVED = 0.05;

    private final int n;
    private final int step;
    private final double[] r;
    private final double[] precision;
    private final Deque<Smoothed> out = new ArrayDeque<>();

    private Smoother(int n, int step) {
        this.n = n;
        this.step = step;
        this.r = new double[n];
        this.precision = new double[n * n];
    }

    /** A stage looked back on: the level at its tests and after its changes, and what its readings should have been. */
    record Smoothed(Stage stage, Belief before, Belief after, List<LeftOut> readings) {}

    record Belief(double mean, double variance) {}

    /** A reading and what all others say it should have been, the test's own error not counted. */
    record LeftOut(Sight sight, Observed did, Belief others) {}

    static List<Smoothed> back(Trace trace, Start start) {
        Smoother smoother = new Smoother(start.size(), start.step());
        List<Trace.Moment> moments = trace.moments();
        for (int i = moments.size() - 1; i >= 0; i--) {
            smoother.undo(moments.get(i));
        }
        return List.copyOf(smoother.out);
    }

    private void undo(Trace.Moment moment) {
        Belief after = belief(moment.levelAfter, moment.tiesAfter);
        scaleLevel(moment.stage.keep());
        List<LeftOut> readings = new ArrayList<>();
        for (int i = moment.seen.size() - 1; i >= 0; i--) {
            readings.add(0, undo(moment.seen.get(i)));
        }
        Belief before = belief(moment.levelBefore, moment.tiesBefore);
        scaleLevel(moment.left);
        moveBack(moment.stage.dt(), moment.stepDays);
        out.addFirst(new Smoothed(moment.stage, before, after, readings));
    }

    private Belief belief(double mean, double[] ties) {
        return new Belief(mean + dot(ties, r), Math.max(0, ties[LEVEL] - dot(ties, times(ties))));
    }

    private LeftOut undo(Trace.Seen seen) {
        double[] towards = seen.towards;
        double[] g = times(towards);
        double s = dot(towards, g);
        double along = dot(towards, r);
        double narrowing = seen.did.narrowing();
        double error = seen.did.pull() - narrowing * along;
        double weight = narrowing + narrowing * narrowing * s;
        LeftOut leftOut = new LeftOut(seen.sight, seen.did, others(seen.did, along, s, error / weight, weight));
        addScore(seen.sight.source(), error, g, narrowing, weight);
        return leftOut;
    }

    private static Belief others(Observed did, double along, double s, double off, double weight) {
        if (did.narrowing() * did.variance() < MOVED || weight <= 0) {
            return new Belief(did.expected() + along, Math.max(did.own() - s, 0));
        }
        double mean = did.expected() + did.pull() / did.narrowing() - off;
        return new Belief(mean, Math.max(1 / weight - 1 / did.narrowing() + did.own(), 0));
    }

    private void addScore(int source, double error, double[] g, double narrowing, double weight) {
        double[] sees = new double[n];
        sees[LEVEL] = 1;
        if (source > 0) {
            sees[FIRST_BIAS + source - 1] = 1;
        }
        for (int i = 0; i < n; i++) {
            r[i] += sees[i] * error;
            for (int j = 0; j < n; j++) {
                precision[i * n + j] += weight * sees[i] * sees[j] - narrowing * (sees[i] * g[j] + g[i] * sees[j]);
            }
        }
    }

    private void scaleLevel(double factor) {
        if (factor == 1) {
            return;
        }
        r[LEVEL] *= factor;
        for (int j = 0; j < n; j++) {
            precision[j] *= factor;
            precision[j * n] *= factor;
        }
    }

    /** The transpose of the transition in {@link Balance}. */
    private void moveBack(double dt, double stepDays) {
        double half = dt * dt / 2;
        r[GROWTH] += dt * r[USE] - half * r[LEVEL];
        r[USE] -= dt * r[LEVEL];
        if (stepDays > 0) {
            r[step] -= stepDays * r[LEVEL];
        }
        for (int i = 0; i < n; i++) {
            moveBack(i * n, 1, dt, stepDays);
        }
        for (int j = 0; j < n; j++) {
            moveBack(j, n, dt, stepDays);
        }
    }

    private void moveBack(int from, int stride, double dt, double stepDays) {
        double level = precision[from];
        double use = precision[from + USE * stride];
        precision[from + GROWTH * stride] += dt * use - dt * dt / 2 * level;
        precision[from + USE * stride] -= dt * level;
        if (stepDays > 0) {
            precision[from + step * stride] -= stepDays * level;
        }
    }

    private double[] times(double[] x) {
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                y[i] += precision[i * n + j] * x[j];
            }
        }
        return y;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
