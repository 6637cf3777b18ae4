package soundings.estimate;

import java.util.Arrays;

/**
 * What is believed before the first reading, each a mean and a standard deviation.
 *
 * @param growth standard deviation of the steady change of the use, a day per day; its mean is zero
 * @param bias of each further source
 * @param eventDay from when on a step in the use may act; infinite: none asked for
 */
record Start(
        double level,
        double levelSd,
        double use,
        double useSd,
        double growth,
        double bias,
        int sources,
        double eventDay,
        double stepSd,
        boolean floor) {
    static final int LEVEL = 0;
    static final int USE = 1;
    static final int GROWTH = 2;
    static final int FIRST_BIAS = 3;

    int size() {
        return FIRST_BIAS + sources - 1 + (asksStep() ? 1 : 0);
    }

    boolean asksStep() {
        return Double.isFinite(eventDay);
    }

    /** Where the step in the use stands in the state. */
    int step() {
        return FIRST_BIAS + sources - 1;
    }

    double[] mean() {
        double[] mean = new double[size()];
        mean[LEVEL] = level;
        mean[USE] = use;
        return mean;
    }

    double[] covariance() {
        int n = size();
        double[] sd = new double[n];
        Arrays.fill(sd, bias);
        sd[LEVEL] = levelSd;
        sd[USE] = useSd;
        sd[GROWTH] = growth;
        if (asksStep()) {
            sd[step()] = stepSd;
        }
        double[] p = new double[n * n];
        for (int i = 0; i < n; i++) {
            p[i * n + i] = sd[i] * sd[i];
        }
        return p;
    }

    Start asking(double day, double sd) {
        return new Start(level, levelSd, use, useSd, growth, bias, sources, day, sd, floor);
    }

    Start growing(double sd) {
        return new Start(level, levelSd, use, useSd, sd, bias, sources, eventDay, stepSd, floor);
    }
}
