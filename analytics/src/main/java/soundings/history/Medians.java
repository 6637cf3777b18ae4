package soundings.history;

import java.util.Arrays;

/** Medians of the first few entries of an array. */
final class Medians {
    private Medians() {}

    static double of(double[] values, int count) {
        double[] sorted = Arrays.copyOf(values, count);
        Arrays.sort(sorted);
        int half = count / 2;
        return count % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
