package soundings.layout;

import java.util.ArrayDeque;
import java.util.Deque;

/** The last values of one tank's series, to tell a low that was reached step by step from one that cannot be meant. */
final class Level {
    private static final int MEMORY = 5;

    private final Typical typical;
    private final Deque<Double> recent = new ArrayDeque<>();

    Level(Typical typical) {
        this.typical = typical;
    }

    /** Why a value must not be used, canonical unit; empty where it may. */
    String refuses(double value) {
        if (value > typical.parameter().plausibleHigh()) {
            return "no living tank reads as high as this";
        }
        if (value < typical.parameter().plausibleLow() && !reached(value)) {
            return "no living tank reads as low as this";
        }
        recent.addLast(value);
        if (recent.size() > MEMORY) {
            recent.removeFirst();
        }
        return "";
    }

    /** Not more than a quarter of the usual value under the lowest of the values before. */
    private boolean reached(double value) {
        if (recent.isEmpty() || value < 0) {
            return false;
        }
        double lowest = recent.stream().mapToDouble(d -> d).min().orElse(value);
        return lowest - value <= 0.25 * typical.mid();
    }
}
