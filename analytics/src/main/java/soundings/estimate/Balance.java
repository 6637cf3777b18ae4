package soundings.estimate;

import static soundings.estimate.Start.FIRST_BIAS;
import static soundings.estimate.Start.GROWTH;
import static soundings.estimate.Start.LEVEL;
import static soundings.estimate.Start.USE;

import java.util.Arrays;
import java.util.List;

/**
 * The mass balance of one test in one tank as a Gaussian belief that moves through time: the level, its use a day, the
 * growth of the use, the bias of each further source and, where asked, a step in the use at an event.
 *
 * <p>level' = level + rise - dt use - dt^2/2 growth, use' = use + dt growth; the use wanders as a Brownian motion, the level
 * a little besides. Below zero there is nothing left to use: the level is clipped there, mean and covariance matched, so that
 * an empty tank stops telling about the use.
 *
 * <p>Mutable, for one pass through one series; never leaves the package.
 */
final class Balance {
    private static final double CLIP_WITHIN = 5;
    private static final double TINY = 1e-12;
    /** Days' worth of growth by which the use may wander, in a day's square root, while nothing is left to see it by. */
    private static final double AT_ZERO = 5;

    private final Start start;
    private final Spread spread;
    private final double[] kits;
    private final Trust trust;
    private final int n;
    private final double[] mean;
    private final double[] p;
    /** Covariance of the state with what the last sight looks at; the direction in which that sight moves the state. */
    private final double[] towards;

    private double now;
    private double logLikelihood;
    private Observed last = Observed.NOTHING;

    Balance(Start start, Spread spread, Trust trust, double firstDay) {
        this.start = start;
        this.spread = spread;
        this.kits = spread.kits();
        this.trust = trust;
        this.n = start.size();
        this.mean = start.mean();
        this.p = start.covariance();
        this.towards = new double[n];
        this.now = firstDay;
    }

    private Balance(Balance other) {
        this.start = other.start;
        this.spread = other.spread;
        this.kits = other.kits;
        this.trust = other.trust;
        this.n = other.n;
        this.mean = other.mean.clone();
        this.p = other.p.clone();
        this.towards = other.towards.clone();
        this.now = other.now;
        this.logLikelihood = other.logLikelihood;
        this.last = other.last;
    }

    Balance copy() {
        return new Balance(this);
    }

    int size() {
        return n;
    }

    double logLikelihood() {
        return logLikelihood;
    }

    Observed last() {
        return last;
    }

    double mean(int i) {
        return mean[i];
    }

    double covariance(int i, int j) {
        return p[i * n + j];
    }

    double[] row(int i) {
        return Arrays.copyOfRange(p, i * n, (i + 1) * n);
    }

    double[] towards() {
        return towards.clone();
    }

    /** Everything of a stage; what the sights did is read with {@link #last()} by those who take the steps singly. */
    void take(Stage stage) {
        pass(stage);
        List<Sight> sights = stage.sights();
        for (int i = 0; i < sights.size(); i++) {
            look(sights.get(i));
        }
        change(stage);
    }

    /** Time passes. Returns the share of the level's ties that is left after clipping at zero: 1 where the floor is far. */
    double pass(Stage stage) {
        double dt = stage.dt();
        if (dt > 0) {
            move(dt, stepIsOn() ? dt : 0);
            wander(dt);
            mean[LEVEL] += stage.rise();
            now += dt;
        }
        p[0] += stage.jump();
        return clip(dt);
    }

    boolean stepIsOn() {
        return now >= start.eventDay();
    }

    private void move(double dt, double stepDays) {
        double half = dt * dt / 2;
        mean[LEVEL] -= dt * mean[USE] + half * mean[GROWTH];
        mean[USE] += dt * mean[GROWTH];
        moveCore(dt, half);
        for (int j = FIRST_BIAS; j < n; j++) {
            p[j] -= dt * p[n + j] + half * p[2 * n + j];
            p[n + j] += dt * p[2 * n + j];
            p[j * n] = p[j];
            p[j * n + 1] = p[n + j];
        }
        if (stepDays > 0) {
            tie(stepDays, start.step());
        }
    }

    /** Level, use and growth: F P F' written out, for most of all time goes by here. */
    private void moveCore(double dt, double half) {
        double levelUse = p[1] - dt * p[n + 1] - half * p[n + 2];
        double levelGrowth = p[2] - dt * p[n + 2] - half * p[2 * n + 2];
        double useGrowth = p[n + 2] + dt * p[2 * n + 2];
        p[0] += -dt * p[1] - half * p[2] - dt * levelUse - half * levelGrowth;
        p[n + 1] += dt * p[n + 2] + dt * useGrowth;
        p[1] = levelUse + dt * levelGrowth;
        p[2] = levelGrowth;
        p[n + 2] = useGrowth;
        p[n] = p[1];
        p[2 * n] = p[2];
        p[2 * n + 1] = p[n + 2];
    }

    /** The event's step works on the level like more use. */
    private void tie(double days, int step) {
        mean[LEVEL] -= days * mean[step];
        for (int j = 0; j < n; j++) {
            p[j] -= days * p[step * n + j];
        }
        for (int i = 0; i < n * n; i += n) {
            p[i] -= days * p[i + step];
        }
    }

    private void wander(double dt) {
        double use = spread.use() * spread.use() * dt;
        p[0] += use * dt * dt / 3 + spread.level() * spread.level() * dt;
        p[1] -= use * dt / 2;
        p[n] -= use * dt / 2;
        p[n + 1] += use;
    }

    /**
     * The ties are cut by the square of the share above zero, more than the matched covariance asks, and the use is let wander
     * while the level lies at zero: the match of moments there is rough, and a row of zeros would otherwise make the use look
     * known. Found on made-up tanks that ran empty; no source.
     */
    private double clip(double dt) {
        double variance = Math.max(p[0], TINY);
        double level = mean[LEVEL];
        if (!start.floor() || (level > 0 && level * level > CLIP_WITHIN * CLIP_WITHIN * variance)) {
            return 1;
        }
        double sd = Math.sqrt(variance);
        Gauss.Moments clipped = Gauss.clippedAtZero(mean[LEVEL], sd);
        mean[LEVEL] = clipped.mean();
        scaleLevel(clipped.probability() * clipped.probability());
        double unseen = AT_ZERO * spread.growth();
        p[n + 1] += (1 - clipped.probability()) * unseen * unseen * dt;
        p[0] = clipped.variance() + TINY;
        return clipped.probability() * clipped.probability();
    }

    private void scaleLevel(double factor) {
        for (int j = 1; j < n; j++) {
            double tie = p[j] * factor;
            p[j] = tie;
            p[j * n] = tie;
        }
        p[0] *= factor * factor;
    }

    /** Water changes mix the level toward the fresh water, single doses add to it. */
    void change(Stage stage) {
        if (stage.changes()) {
            mean[LEVEL] = mean[LEVEL] * stage.keep() + stage.add();
            scaleLevel(stage.keep());
            p[0] += stage.addVariance();
        }
        p[n + 1] += stage.shake();
    }

    /** A reading pulls the belief toward it, as far as it is believed. */
    void look(Sight sight) {
        double expected = mean[LEVEL];
        System.arraycopy(p, 0, towards, 0, n);
        if (sight.source() > 0) {
            int bias = FIRST_BIAS + sight.source() - 1;
            expected += mean[bias];
            for (int j = 0; j < n; j++) {
                towards[j] += p[bias * n + j];
            }
        }
        double own = seen(sight.source());
        double error = kits[sight.source()] * sight.looseness();
        last = trust.weigh(sight, expected, own, own + error * error + sight.extraVariance());
        logLikelihood += last.logLikelihood();
        pull(last.pull(), last.narrowing());
    }

    /** The same written out for level, use and growth alone, which is what most passes have. */
    private void pullCore(double by, double narrowing) {
        double level = towards[0];
        double use = towards[1];
        double growth = towards[2];
        mean[0] += level * by;
        mean[1] += use * by;
        mean[2] += growth * by;
        double levelNarrowed = level * narrowing;
        double useNarrowed = use * narrowing;
        p[0] -= levelNarrowed * level;
        p[1] -= levelNarrowed * use;
        p[2] -= levelNarrowed * growth;
        p[4] -= useNarrowed * use;
        p[5] -= useNarrowed * growth;
        p[8] -= growth * narrowing * growth;
        p[3] = p[1];
        p[6] = p[2];
        p[7] = p[5];
    }

    private double seen(int source) {
        return source == 0 ? towards[LEVEL] : towards[LEVEL] + towards[FIRST_BIAS + source - 1];
    }

    private void pull(double by, double narrowing) {
        if (n == FIRST_BIAS) {
            pullCore(by, narrowing);
            return;
        }
        for (int i = 0; i < n; i++) {
            mean[i] += towards[i] * by;
            double narrowed = towards[i] * narrowing;
            for (int j = i; j < n; j++) {
                double value = p[i * n + j] - narrowed * towards[j];
                p[i * n + j] = value;
                p[j * n + i] = value;
            }
        }
    }
}
