package soundings.estimate;

import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;

/** Finds readings that were mistyped and changes of level that nobody wrote down, and tells one from the other. */
final class Doubts {
    private static final double EVEN = 0.5;
    /** How much likelier a jump must make the next readings before it is believed; a log ratio. */
    private static final double CONVINCED = 3;

    private static final int LOOK_AHEAD = 3;
    /** By so many errors of a test a reading may lie beyond its neighbours. */
    private static final double ERRORS = 2;

    private Doubts() {}

    /** The stages with each jump noted as an unexplained change before its tests. */
    static List<Stage> jumps(List<Stage> stages, Balance from) {
        List<Stage> out = new ArrayList<>(stages);
        for (int i = 0; i < out.size(); i++) {
            Balance before = from.copy();
            from.take(out.get(i));
            if (surprised(from, out.get(i)) && i > 0) {
                double size = from.last().surprise() * Math.sqrt(from.last().variance());
                Stage jumped = out.get(i).withJump(size * size);
                Balance jump = before.copy();
                jump.take(jumped);
                if (gain(jump, from, out.subList(i + 1, out.size())) > CONVINCED) {
                    out.set(i, jumped);
                    from = jump;
                }
            }
        }
        return out;
    }

    private static boolean surprised(Balance balance, Stage stage) {
        return !stage.sights().isEmpty() && balance.last().trust() < EVEN;
    }

    /** How much better the next readings fit after a jump than after a mistyped number. */
    private static double gain(Balance jump, Balance typo, List<Stage> next) {
        Balance a = jump.copy();
        Balance b = typo.copy();
        int seen = 0;
        for (Stage stage : next) {
            if (seen >= LOOK_AHEAD) {
                break;
            }
            a.take(stage);
            b.take(stage);
            seen += stage.sights().size();
        }
        return seen == 0 ? 0 : a.logLikelihood() - b.logLikelihood();
    }

    /** Readings that all others speak against; a rise of a poison is none, for it must not be missed. */
    static List<Estimate.Doubt> mistyped(List<Smoother.Smoothed> smoothed, Spread spread, Trust trust) {
        List<Smoother.LeftOut> all =
                smoothed.stream().flatMap(s -> s.readings().stream()).toList();
        List<Estimate.Doubt> doubts = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Smoother.LeftOut leftOut = all.get(i);
            if (weigh(leftOut, spread, trust).trust() < EVEN
                    && !isPoisonRising(leftOut)
                    && !isOnTheWay(all, i, spread)) {
                doubts.add(new Estimate.Doubt(leftOut.sight().reading(), because(leftOut)));
            }
        }
        return doubts;
    }

    /**
     * Whether it lies between the readings before and after it, a test's errors allowed for: then these bear it out, whatever the model
     * thinks of so steep a course; so may a poison's first. A kit's step
     * is the root of twelve times the variance that rounding to it brings.
     */
    private static boolean isOnTheWay(List<Smoother.LeftOut> all, int i, Spread spread) {
        Sight sight = all.get(i).sight();
        if (i == 0 || i == all.size() - 1) {
            return i == 0 && sight.reading().parameter().kind() == Parameter.Kind.TOXIN;
        }
        Sight before = all.get(i - 1).sight();
        Sight after = all.get(i + 1).sight();
        double slack = ERRORS * spread.kit(sight.source()) + Math.sqrt(12 * sight.extraVariance());
        return sight.low() >= Math.min(before.low(), after.low()) - slack
                && sight.high() <= Math.max(before.high(), after.high()) + slack;
    }

    private static boolean isPoisonRising(Smoother.LeftOut leftOut) {
        return leftOut.sight().reading().parameter().kind() == Parameter.Kind.TOXIN
                && leftOut.sight().low() > leftOut.others().mean();
    }

    private static Observed weigh(Smoother.LeftOut leftOut, Spread spread, Trust trust) {
        Sight sight = leftOut.sight();
        double error = spread.kit(sight.source()) * sight.looseness();
        double own = leftOut.others().variance();
        return trust.weigh(sight, leftOut.others().mean(), own, own + error * error + sight.extraVariance());
    }

    private static String because(Smoother.LeftOut leftOut) {
        Scale scale = leftOut.sight().reading().scale();
        double level = scale.written(Math.max(leftOut.others().mean(), 0));
        return "the readings around it say " + Said.amount(level, scale, 0);
    }
}
