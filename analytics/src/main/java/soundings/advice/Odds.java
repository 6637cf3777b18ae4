package soundings.advice;

import soundings.quantity.Interval;
import soundings.quantity.Normal;

/** Probabilities read off a 90 % interval, each side taken as half a normal distribution. */
final class Odds {
    private static final double REACH_90 = 1.6448536269514722;

    private Odds() {}

    static double below(Interval about, double limit) {
        double sd = spread(about, limit < about.mid());
        if (sd == 0) {
            return limit == about.mid() ? 0.5 : limit > about.mid() ? 1 : 0;
        }
        return Normal.below((limit - about.mid()) / sd);
    }

    static double above(Interval about, double limit) {
        return 1 - below(about, limit);
    }

    static double outside(Interval about, double low, double high) {
        return Math.min(1, below(about, low) + above(about, high));
    }

    /** A side cut off at zero tells nothing of the spread; the other side then stands for both. */
    private static double spread(Interval about, boolean lowSide) {
        double down = about.mid() - about.low();
        double up = about.high() - about.mid();
        double side = lowSide ? down : up;
        boolean cut = about.low() == 0 || side == 0;
        return (cut ? Math.max(down, up) : side) / REACH_90;
    }
}
