package soundings.history;

import soundings.chemistry.Scale;

/**
 * The used readings on either side of one.
 *
 * @param before index of the nearest one before, -1 for none; {@code after} likewise
 * @param low the lower of the two sides' medians
 * @param high the higher
 */
record Around(int before, int after, int count, double low, double high, double levelBefore, double levelAfter) {
    static Around of(double[] before, int b, double[] after, int a, int[] nearest) {
        double left = Medians.of(b > 0 ? before : after, Math.max(1, b > 0 ? b : a));
        double right = Medians.of(a > 0 ? after : before, Math.max(1, a > 0 ? a : b));
        return new Around(
                nearest[0],
                nearest[1],
                a + b,
                Math.min(left, right),
                Math.max(left, right),
                b > 0 ? before[0] : after[0],
                a > 0 ? after[0] : before[0]);
    }

    boolean isEmpty() {
        return count == 0;
    }

    boolean bothSides() {
        return before >= 0 && after >= 0;
    }

    double middle() {
        return (low + high) / 2;
    }

    double width() {
        return high - low;
    }

    /** From the span between the two sides; zero within it. */
    double distance(double level) {
        return Math.max(0, Math.max(low - level, level - high));
    }

    /** From the nearer of the two next readings. */
    double nearest(double level) {
        return Math.min(Math.abs(level - levelBefore), Math.abs(level - levelAfter));
    }

    String words(Scale scale) {
        String one = Slips.shown(scale.written(low));
        String other = Slips.shown(scale.written(high));
        String levels = one.equals(other) ? one : one + " to " + other;
        return levels + " around it";
    }
}
