package soundings.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.advice.Recommendation.Correction;
import soundings.advice.Recommendation.Outlook;
import soundings.advice.Recommendation.Pause;
import soundings.advice.Recommendation.Withheld;
import soundings.chemistry.Parameter;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.UsualChange;
import soundings.quantity.Interval;

/** The dose that keeps a level, the correction that brings it back, or why neither can be told. */
final class Dosing {
    /** A better dose counts when the present one would shift the level by this share of the range in the days ahead. */
    private static final double SHARE_OF_RANGE = 0.25;

    private static final double LIKELY = 0.5;
    private static final double MARKEDLY = 0.1;
    /** A difference smaller than this is a hair; a choice of this program. */
    private static final double HAIR = 0.1;

    private Dosing() {}

    /**
     * What there is to ask of one test's dose.
     *
     * @param feed the additive that carries it; empty where none does
     * @param refusal why no dose can be worked out
     * @param sum what a dose is worked out from, where it can be
     */
    record Asked(Optional<Feed> feed, Optional<Withheld> refusal, Optional<Sum> sum) {
        private static final Asked NOTHING = new Asked(Optional.empty(), Optional.empty(), Optional.empty());
    }

    static Asked asked(Matter matter) {
        boolean dosed = matter.parameter().balances() && matter.parameter().kind() != Parameter.Kind.TOXIN;
        List<Feed> feeds = dosed ? Feeds.all(matter) : List.of();
        return feeds.stream()
                .findFirst()
                .map(feed -> asked(matter, feed, others(feeds, matter)))
                .orElse(Asked.NOTHING);
    }

    private static Asked asked(Matter matter, Feed feed, OptionalDouble others) {
        Optional<Withheld> refusal = Refusals.of(matter, feed);
        Optional<Interval> use = matter.estimate().flatMap(Estimate::use);
        if (refusal.isPresent() || use.isEmpty() || others.isEmpty()) {
            return new Asked(Optional.of(feed), refusal.or(() -> unknownBesides(matter)), Optional.empty());
        }
        Sum sum = new Sum(matter, feed, matter.estimate().orElseThrow(), use.get(), others.getAsDouble());
        return new Asked(Optional.of(feed), Optional.empty(), Optional.of(sum));
    }

    private static Optional<Withheld> unknownBesides(Matter matter) {
        return Optional.of(new Withheld(
                Recommendation.Reason.STRENGTH_UNKNOWN,
                "an additive of unknown strength goes in as well",
                "Enter the strength of every additive that raises " + Phrases.name(matter.parameter())));
    }

    /** One for the additive that carries the parameter; none where nothing is dosed and nothing needs to be. */
    static Optional<Recommendation> of(Matter matter, Asked asked, Judgement judgement) {
        return asked.feed()
                .filter(f -> f.isOn() || isWanted(judgement))
                .map(f -> asked.sum()
                        .map(sum -> proposal(sum, judgement))
                        .orElseGet(() -> withheld(matter, f, asked.refusal().orElseThrow())));
    }

    private static boolean isWanted(Judgement judgement) {
        return judgement.verdict() == Verdict.LOW || judgement.verdict() == Verdict.FALLING;
    }

    /** What the additives besides the first raise a day; empty where one of them has no strength. */
    private static OptionalDouble others(List<Feed> feeds, Matter matter) {
        List<Feed> others = feeds.stream().skip(1).filter(Feed::isOn).toList();
        return others.stream().allMatch(Feed::isKnown)
                ? OptionalDouble.of(others.stream()
                        .mapToDouble(f -> f.risePerDay(matter.tank().litres().orElse(1)))
                        .sum())
                : OptionalDouble.empty();
    }

    private static Recommendation withheld(Matter matter, Feed feed, Withheld why) {
        return new Recommendation(
                matter.tank().tank(),
                matter.parameter(),
                feed.row().name(),
                present(feed),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(why),
                List.of(),
                rests(matter, feed));
    }

    private static OptionalDouble present(Feed feed) {
        return feed.course().isPresent() ? OptionalDouble.of(feed.presentMlPerDay()) : OptionalDouble.empty();
    }

    private static List<String> rests(Matter matter, Feed feed) {
        List<String> cells = new ArrayList<>(matter.places());
        cells.addAll(feed.places());
        return cells;
    }

    /** Nothing is changed on a verdict that is not told yet, nor on one that nothing is amiss. */
    private static Recommendation proposal(Sum sum, Judgement judgement) {
        Interval keeps = sum.keeps();
        boolean told = judgement.verdict() != Verdict.CANNOT_TELL && judgement.verdict() != Verdict.STEADY;
        Optional<TargetRange> target = sum.matter().target();
        Optional<TargetRange> toMeet = target.filter(t -> told);
        Optional<Correction> correction = toMeet.flatMap(t -> Correcting.of(sum, t));
        Optional<Pause> pause = toMeet.flatMap(t -> Pausing.of(sum, t));
        boolean proposes = told
                && (matters(sum)
                        || toMeet.map(t -> helps(sum, keeps, correction, t)).orElse(false));
        List<String> why = reasons(sum, judgement, proposes);
        toMeet.ifPresent(t -> why.addAll(Correcting.words(sum, t, correction)));
        toMeet.flatMap(t -> Pausing.words(sum, t, pause)).ifPresent(why::add);
        sum.estimate().caveats().forEach(why::add);
        double then = proposes ? keeps.mid() : sum.feed().presentMlPerDay();
        return new Recommendation(
                sum.matter().tank().tank(),
                sum.matter().parameter(),
                sum.feed().row().name(),
                present(sum.feed()),
                proposes ? Optional.of(keeps) : Optional.empty(),
                correction,
                why,
                Optional.empty(),
                sum.working().lines(),
                sum.rests(),
                target.map(t -> outlook(sum, followed(sum, then, correction, pause), t)),
                pause);
    }

    /**
     * Only where the difference is certain and matters: a dose called wrong by a hair is left as it is, and so is one that the usual
     * water changes make up for.
     */
    static boolean matters(Sum sum) {
        return isOutside(sum, sum.keeps()) && isOfWeight(sum) && moves(sum, shift(sum));
    }

    /** What the difference in dose alone does to the level in the days ahead. */
    private static double shift(Sum sum) {
        return (sum.feed().presentMlPerDay() - sum.keeps().mid()) * sum.risePerMl() * Judging.DAYS_AHEAD;
    }

    private static boolean isOfWeight(Sum sum) {
        double width = sum.matter().target().map(t -> t.high() - t.low()).orElse(0.0);
        double shift = Math.abs(shift(sum));
        return shift > 0 && (shift >= SHARE_OF_RANGE * width || difference(sum, sum.keeps()) >= HAIR);
    }

    /** Whether the days ahead, water changes among them, take the level at least half as far from where it is to be. */
    private static boolean moves(Sum sum, double shift) {
        double lift = sum.matter().target().map(t -> Correcting.lift(sum, t)).orElse(0.0);
        List<Estimate.Day> days = sum.estimate().aheadWith(0, lift, 1);
        double from = sum.estimate().level().mid() + lift;
        double moved =
                days.isEmpty() ? shift : days.get(days.size() - 1).level().mid() - from;
        double asFar = shift < 0 ? Math.min(-shift, from) : shift;
        return moved * Math.signum(shift) >= LIKELY * asFar;
    }

    private static boolean isOutside(Sum sum, Interval keeps) {
        double present = sum.feed().presentMlPerDay();
        return present < keeps.low() || present > keeps.high();
    }

    /** As a part of the larger of the two. */
    private static double difference(Sum sum, Interval keeps) {
        double present = sum.feed().presentMlPerDay();
        double larger = Math.max(present, keeps.mid());
        return larger > 0 ? Math.abs(present - keeps.mid()) / larger : 0;
    }

    /** Whether the tank is likely to leave its range, a correction counted in, and markedly less so with the dose that keeps it. */
    private static boolean helps(Sum sum, Interval keeps, Optional<Correction> correction, TargetRange target) {
        double present = sum.feed().presentMlPerDay();
        double leaves = lastOutside(followed(sum, present, correction, Optional.empty()), target);
        return leaves >= LIKELY
                && lastOutside(followed(sum, keeps.mid(), correction, Optional.empty()), target) < leaves - MARKEDLY;
    }

    private static List<Estimate.Day> followed(
            Sum sum, double mlPerDay, Optional<Correction> correction, Optional<Pause> pause) {
        double present = sum.feed().presentMlPerDay();
        double more = (mlPerDay - present) * sum.risePerMl();
        double raise = correction.map(c -> c.ml() * sum.risePerMl()).orElse(0.0);
        return pause.map(p -> meanwhile(sum, (p.mlPerDay() - present) * sum.risePerMl(), p.wholeDays(), more))
                .orElseGet(() -> sum.estimate()
                        .aheadWith(more, raise, correction.map(Correction::days).orElse(0)));
    }

    /** Another amount on the first days: what it differs by is one dose in equal parts on those. */
    private static List<Estimate.Day> meanwhile(Sum sum, double meanwhile, int days, double more) {
        return sum.estimate().aheadWith(more, (meanwhile - more) * days, days);
    }

    private static List<String> reasons(Sum sum, Judgement judgement, boolean proposes) {
        Interval keeps = sum.keeps();
        List<String> why = new ArrayList<>();
        why.add("the use is "
                + Phrases.rate(
                        sum.matter()
                                .scale()
                                .change(sum.use(), sum.estimate().level().mid()),
                        sum.matter().scale()));
        why.add(held(sum.feed().presentMlPerDay(), keeps));
        sum.matter().target().ifPresent(t -> why.add(leaving(sum.estimate(), t)));
        sum.estimate().course().usualChange().ifPresent(c -> why.add(usual(c)));
        if (!proposes) {
            why.add("no other dose is proposed" + notProposed(sum, judgement));
        }
        return why;
    }

    private static String notProposed(Sum sum, Judgement judgement) {
        Interval keeps = sum.keeps();
        if (judgement.verdict() == Verdict.CANNOT_TELL) {
            return " yet: it cannot be told whether the present one will do" + Tests.days(judgement);
        }
        if (!isOutside(sum, keeps)) {
            return ": the present one may well be right";
        }
        String by = Phrases.percent(difference(sum, keeps));
        return isOfWeight(sum)
                ? ": the difference of " + by + " is made up for by the usual water changes"
                : ": the difference of " + by + " is too little to matter";
    }

    private static String usual(UsualChange c) {
        return "your usual water changes, " + Phrases.percent(c.share()) + " every "
                + (c.everyDays() == 1 ? "day" : c.everyDays() + " days") + ", are counted in";
    }

    /** A level that is out already does not leave its range. */
    private static String leaving(Estimate estimate, TargetRange target) {
        boolean out = Odds.outside(estimate.level(), target.low(), target.high()) > LIKELY;
        return out
                ? "it is out of its range now, and if nothing changes still is in " + Judging.DAYS_AHEAD + " days with "
                        + Phrases.percent(lastOutside(estimate.ahead(), target)) + " probability"
                : "if nothing changes, it is out of its range within " + Judging.DAYS_AHEAD + " days with "
                        + Phrases.percent(Ahead.leaving(estimate.ahead(), target)) + " probability";
    }

    private static String held(double present, Interval keeps) {
        int decimals = Phrases.decimals(present, keeps);
        if (present == 0) {
            return "nothing of it is dosed now; what keeps the level is " + Phrases.span(keeps, decimals) + " mL a day";
        }
        String side = present < keeps.low()
                ? " a day are less than what keeps the level, "
                : present > keeps.high()
                        ? " a day are more than what keeps the level, "
                        : " a day lie within what keeps the level, ";
        return "the present " + Phrases.number(present, decimals) + " mL" + side + Phrases.span(keeps, decimals)
                + " mL a day";
    }

    private static Outlook outlook(Sum sum, List<Estimate.Day> followed, TargetRange target) {
        List<Estimate.Day> unchanged = sum.estimate().ahead();
        return new Outlook(unchanged, followed, Ahead.leaving(unchanged, target), lastOutside(followed, target));
    }

    /** A correction needs its days; what counts is where it ends. */
    private static double lastOutside(List<Estimate.Day> days, TargetRange target) {
        return days.isEmpty() ? 0 : Odds.outside(days.get(days.size() - 1).level(), target.low(), target.high());
    }
}
