package soundings.advice;

import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.KitStep;
import soundings.estimate.NotEnough;
import soundings.estimate.TestsNeeded;
import soundings.log.Reading;
import soundings.quantity.Interval;

/** The verdict on one test from level, drift and dose together, with its probability. */
final class Judging {
    /** A verdict needs this probability; a choice of this program. */
    static final double SURE = 0.8;
    /** A drift counts when it crosses a quarter of the range in the days ahead. */
    private static final double SHARE_OF_RANGE = 0.25;

    private static final double STAYS = 0.95;
    private static final double LIKELY = 0.5;

    static final int DAYS_AHEAD = 30;

    /** Tests without a poison before it is called gone; common practice, no source. */
    private static final int NONE_IN_A_ROW = 2;

    private Judging() {}

    /** @param dose what the dose of it is worked out from, where it can be */
    static Judgement of(Matter matter, Optional<Sum> dose) {
        Optional<Estimate> estimate = matter.estimate().filter(e -> !matter.isStale());
        return byPoison(matter)
                .or(() -> noneFound(matter))
                .or(() -> estimate.map(e -> byEstimate(matter, e, dose)))
                .or(() -> byLastReading(matter))
                .orElseGet(() -> cannotTell(matter));
    }

    /** A poison's last reading counts more than the level estimated: a rise must not be smoothed away. */
    private static Optional<Judgement> byPoison(Matter matter) {
        return matter.parameter().kind() == Parameter.Kind.TOXIN ? byLastReading(matter) : Optional.empty();
    }

    /** A poison that none of the last tests found is gone as far as can be told, however coarse the kit. */
    private static Optional<Judgement> noneFound(Matter matter) {
        List<Reading> used = matter.used();
        boolean asked = matter.parameter().kind() == Parameter.Kind.TOXIN && !matter.isStale();
        if (!asked || used.size() < NONE_IN_A_ROW) {
            return Optional.empty();
        }
        boolean none = used.subList(used.size() - NONE_IN_A_ROW, used.size()).stream()
                .allMatch(r -> r.amount().match(e -> e.value() <= 0, b -> true, a -> false, b -> false));
        return none
                ? Optional.of(new Judgement(
                        matter.tank().tank(),
                        matter.parameter(),
                        Verdict.STEADY,
                        1,
                        "the last " + NONE_IN_A_ROW + " tests found none",
                        matter.target()))
                : Optional.empty();
    }

    /** A poison or a condition is judged on one reading; the others need an estimate. */
    private static Optional<Judgement> byLastReading(Matter matter) {
        boolean counts = !matter.parameter().balances() || matter.parameter().kind() == Parameter.Kind.TOXIN;
        if (!counts || matter.isStale() || matter.target().isEmpty()) {
            return Optional.empty();
        }
        TargetRange target = matter.target().get();
        return matter.last().flatMap(reading -> outOfRange(matter, reading, target));
    }

    private static Optional<Judgement> outOfRange(Matter matter, Reading reading, TargetRange target) {
        Interval seen = Interval.normal(reading.amount().about(), error(matter, reading));
        double high = Odds.above(seen, target.high());
        double low = Odds.below(seen, target.low());
        double out = Math.max(high, low);
        boolean exact = reading.amount().match(e -> true, b -> false, a -> true, b -> true);
        if (out <= 0.5 || !exact) {
            return Optional.empty();
        }
        String because = "the last reading, of " + reading.date() + ", is "
                + Phrases.level(reading.amount().about(), matter.scale()) + "; " + range(matter, target);
        return Optional.of(new Judgement(
                matter.tank().tank(),
                matter.parameter(),
                high > low ? Verdict.HIGH : Verdict.LOW,
                out,
                because,
                Optional.of(target)));
    }

    /** The kit's own error where the setup has it, else a twentieth of the reading; common practice, no source. */
    private static double error(Matter matter, Reading reading) {
        double kit = matter.history().setup().kits().stream()
                .filter(k -> k.parameter().equals(matter.parameter()))
                .mapToDouble(k -> k.error().orElse(0))
                .max()
                .orElse(0);
        boolean condition = !matter.parameter().balances();
        return Math.max(kit, Math.abs(reading.amount().about()) * (condition ? 0.005 : 0.05));
    }

    private static Judgement byEstimate(Matter matter, Estimate estimate, Optional<Sum> dose) {
        return matter.target()
                .map(target -> againstRange(matter, estimate, target, dose))
                .orElseGet(() -> withoutRange(matter, estimate));
    }

    private static Judgement againstRange(Matter matter, Estimate estimate, TargetRange target, Optional<Sum> dose) {
        boolean dosed = Feeds.isDosed(matter);
        Chances chances = Chances.of(estimate, target);
        Ruling ruling = dose.flatMap(sum -> byDose(sum, chances)).orElseGet(() -> ruling(chances, dosed));
        boolean open = ruling.verdict() == Verdict.CANNOT_TELL;
        Optional<KitStep> coarse = matter.parameter().balances()
                ? KitStep.tooCoarse(estimate, target.low(), target.high())
                : Optional.empty();
        return new Judgement(
                matter.tank().tank(),
                matter.parameter(),
                ruling.verdict(),
                ruling.probability(),
                because(matter, estimate, target, chances)
                        + coarse.filter(k -> !open)
                                .map(k -> Tests.coarse(matter, k))
                                .orElse(""),
                Optional.of(target),
                open ? TestsNeeded.until(estimate, later -> isTold(later, target, dosed)) : Optional.empty(),
                coarse);
    }

    private static boolean isTold(TestsNeeded.Later later, TargetRange target, boolean dosed) {
        return ruling(Chances.of(later.level(), later.then(), later.drift(), target), dosed)
                        .verdict()
                != Verdict.CANNOT_TELL;
    }

    /** A dose that is off for certain and moves the level, unless it brings back one that is out of its range. */
    private static Optional<Ruling> byDose(Sum sum, Chances chances) {
        double more = Odds.above(sum.keeps(), sum.feed().presentMlPerDay());
        boolean under = more > LIKELY;
        boolean back = under ? chances.high() > LIKELY : chances.low() > LIKELY;
        return sum.feed().isOn() && Dosing.matters(sum) && !back
                ? Optional.of(
                        under
                                ? new Ruling(Verdict.UNDER_DOSED, Math.max(more, chances.underDosed()))
                                : new Ruling(Verdict.OVER_DOSED, Math.max(1 - more, chances.overDosed())))
                : Optional.empty();
    }

    /** A verdict and its probability. */
    record Ruling(Verdict verdict, double probability) {}

    /**
     * Probabilities of the level now and in the days ahead with the present dose, and of a drift that counts.
     *
     * @param lowThen that it is below the range after the days ahead
     */
    record Chances(double low, double high, double lowThen, double highThen, double rising, double falling) {
        static Chances of(Estimate estimate, TargetRange target) {
            Interval drift = estimate.driftOver(DAYS_AHEAD).times(1.0 / DAYS_AHEAD);
            return of(estimate.level(), Ahead.last(estimate), drift, target);
        }

        static Chances of(Interval level, Interval then, Interval drift, TargetRange target) {
            double counts = SHARE_OF_RANGE * (target.high() - target.low()) / DAYS_AHEAD;
            return new Chances(
                    Odds.below(level, target.low()),
                    Odds.above(level, target.high()),
                    Odds.below(then, target.low()),
                    Odds.above(then, target.high()),
                    Odds.above(drift, counts),
                    Odds.below(drift, -counts));
        }

        double insideNow() {
            return 1 - low - high;
        }

        double insideThen() {
            return Math.max(0, 1 - lowThen - highThen);
        }

        double overDosed() {
            return Math.min(highThen, 1 - falling);
        }

        double underDosed() {
            return Math.min(lowThen, 1 - rising);
        }
    }

    static Ruling ruling(Chances c, boolean dosed) {
        if (dosed && c.overDosed() >= SURE) {
            return new Ruling(Verdict.OVER_DOSED, c.overDosed());
        }
        if (dosed && c.underDosed() >= SURE) {
            return new Ruling(Verdict.UNDER_DOSED, c.underDosed());
        }
        if (Math.max(c.high(), c.low()) >= SURE) {
            return c.high() > c.low() ? new Ruling(Verdict.HIGH, c.high()) : new Ruling(Verdict.LOW, c.low());
        }
        if (Math.max(c.rising(), c.falling()) >= SURE) {
            return c.rising() > c.falling()
                    ? new Ruling(Verdict.RISING, c.rising())
                    : new Ruling(Verdict.FALLING, c.falling());
        }
        double holding = Math.min(c.insideNow(), c.insideThen());
        return holding >= SURE ? new Ruling(Verdict.STEADY, holding) : undecided(c, dosed);
    }

    /** Cannot tell; the probability is that of the likeliest verdict, which was not enough. */
    private static Ruling undecided(Chances c, boolean dosed) {
        double best = Math.max(Math.max(c.high(), c.low()), Math.max(c.rising(), c.falling()));
        best = Math.max(best, Math.min(c.insideNow(), c.insideThen()));
        return new Ruling(Verdict.CANNOT_TELL, dosed ? Math.max(best, Math.max(c.overDosed(), c.underDosed())) : best);
    }

    private static Judgement withoutRange(Matter matter, Estimate estimate) {
        double counts = 0.1 * Math.abs(estimate.level().mid()) / DAYS_AHEAD;
        double rising = Odds.above(estimate.drift(), counts);
        double falling = Odds.below(estimate.drift(), -counts);
        double steady = Math.max(0, 1 - rising - falling);
        double most = Math.max(steady, Math.max(rising, falling));
        Verdict verdict = most < SURE
                ? Verdict.CANNOT_TELL
                : most == steady ? Verdict.STEADY : most == rising ? Verdict.RISING : Verdict.FALLING;
        String because = "the level is " + Phrases.between(estimate.level(), matter.scale()) + ", "
                + moving(matter, estimate) + "; no range is set for it";
        return new Judgement(matter.tank().tank(), matter.parameter(), verdict, most, because, Optional.empty());
    }

    private static String because(Matter matter, Estimate estimate, TargetRange target, Chances chances) {
        String ahead = chances.insideThen() >= STAYS
                ? "It is likely to stay inside for " + DAYS_AHEAD + " days"
                : leaving(chances);
        return "the level is " + Phrases.between(estimate.level(), matter.scale()) + ", " + moving(matter, estimate)
                + ". " + Phrases.capital(range(matter, target)) + ". " + ahead + " if nothing changes";
    }

    private static String leaving(Chances chances) {
        return chances.lowThen() > chances.highThen()
                ? "It is " + Phrases.percent(chances.lowThen()) + " likely to be below that in " + DAYS_AHEAD + " days"
                : "It is " + Phrases.percent(chances.highThen()) + " likely to be above that in " + DAYS_AHEAD
                        + " days";
    }

    private static String moving(Matter matter, Estimate estimate) {
        Parameter parameter = matter.parameter();
        Scale scale = matter.scale();
        Interval drift = estimate.drift();
        double shows = Math.pow(10, -parameter.decimals()) / 2;
        if (Math.max(Math.abs(drift.low()), Math.abs(drift.high())) * DAYS_AHEAD < shows) {
            return "holding still";
        }
        if (parameter.balances() && estimate.level().mid() <= 0 && drift.mid() < 0) {
            return "at zero as far as the tests tell";
        }
        if (drift.low() <= 0 && drift.high() >= 0) {
            Interval shown = scale.change(drift, estimate.level().mid());
            return "with no clear drift (" + Phrases.span(shown, Phrases.decimals(shown)) + Phrases.unit(scale)
                    + " a day)";
        }
        Interval size = scale.change(
                drift.mid() < 0 ? drift.times(-1) : drift, estimate.level().mid());
        return (drift.mid() < 0 ? "falling " : "rising ")
                + Phrases.rate(size, scale)
                + (estimate.course().usualChange().isPresent() ? " between water changes" : "");
    }

    private static String range(Matter matter, TargetRange target) {
        return "the range is " + Phrases.range(target.low(), target.high(), matter.scale());
    }

    private static Judgement cannotTell(Matter matter) {
        String because = matter.notEnough()
                .map(Judging::why)
                .orElseGet(() -> matter.isStale() && matter.last().isPresent()
                        ? "the last test is " + Phrases.days(matter.age()) + " old"
                        : "there is no usable reading");
        return new Judgement(
                matter.tank().tank(), matter.parameter(), Verdict.CANNOT_TELL, 1, because, matter.target());
    }

    private static String why(NotEnough none) {
        return none.why() + "; it needs " + none.wouldNeed();
    }
}
