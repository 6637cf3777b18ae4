package soundings.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.advice.Recommendation.Reason;
import soundings.advice.Recommendation.Withheld;
import soundings.chemistry.Parameter;
import soundings.chemistry.Recipes;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.Use;

/** Why no dose can be proposed, the first thing to mend first. The limits are common practice, without a source. */
final class Refusals {
    private static final double SALINITY_SLACK = 0.5;
    private static final int LATELY = 6;
    private static final int TOO_MANY_SET_ASIDE = 3;

    /** Tests after a change of the use, before a dose is worked out from the new one. */
    private static final int ENOUGH_SINCE = 3;

    private Refusals() {}

    static Optional<Withheld> of(Matter matter, Feed feed) {
        return Stream.<Optional<Withheld>>of(
                        notTested(matter, feed),
                        volume(matter),
                        strength(matter, feed),
                        together(matter),
                        salinity(matter),
                        tooOld(matter),
                        tooFew(matter),
                        conflicting(matter),
                        useUnknown(matter),
                        doubted(matter),
                        changedLately(matter))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Withheld> notTested(Matter matter, Feed feed) {
        String name = Phrases.name(matter.parameter());
        return matter.used().isEmpty()
                ? withheld(
                        Reason.NOT_TESTED,
                        feed.row().name() + " is dosed, but no test of " + name + " can be used",
                        "Test " + name + " before dosing on: what is not measured can only be guessed")
                : Optional.empty();
    }

    private static Optional<Withheld> volume(Matter matter) {
        return matter.tank().litres().isPresent()
                ? Optional.empty()
                : withheld(
                        Reason.VOLUME_UNKNOWN,
                        "the volume of " + matter.tank().tank() + " is not known",
                        "Enter its litres of water in the setup workbook, sheet Tanks");
    }

    private static Optional<Withheld> strength(Matter matter, Feed feed) {
        return feed.isKnown() ? Optional.empty() : recipe(matter, feed).or(() -> noStrength(feed));
    }

    private static Optional<Withheld> noStrength(Feed feed) {
        return withheld(
                Reason.STRENGTH_UNKNOWN,
                "the strength of " + feed.row().name() + " is not known",
                "Enter what the label or the recipe says of " + feed.row().name()
                        + " in the setup workbook, sheet Additives");
    }

    /** Somebody has written what is in it, only not so that it can be worked with. */
    private static Optional<Withheld> recipe(Matter matter, Feed feed) {
        String recipe = feed.row().recipe();
        String raises = "it does not raise " + Phrases.name(matter.parameter());
        return recipe.isBlank()
                ? Optional.empty()
                : withheld(
                        Reason.RECIPE_UNREAD,
                        "the recipe \"" + recipe + "\" of " + feed.row().name() + " could not be read: "
                                + Recipes.read(recipe, matter.reference()).match(u -> raises, n -> n.why()),
                        "Write the recipe of " + feed.row().name() + " anew ("
                                + feed.row().cell() + ")");
    }

    private static Optional<Withheld> together(Matter matter) {
        return Replaced.of(matter)
                .flatMap(r -> withheld(
                        Reason.TWO_ADDITIVES,
                        "since " + r.since() + " " + r.earlier() + " and " + r.later()
                                + " are counted side by side, and the note of that day sounds as if one took the other's place",
                        "If " + r.earlier() + " was stopped on " + r.since()
                                + ", write so in that day's note; if both go in, write its mL a day there again"));
    }

    /** What is a litre's worth of an ion depends on how salty the water is: a dose worked out now would be wrong after mending it. */
    private static Optional<Withheld> salinity(Matter matter) {
        boolean follows = matter.parameter().kind() == Parameter.Kind.ION;
        return follows ? matter.of("salinity").flatMap(Refusals::salinityOff) : Optional.empty();
    }

    private static Optional<Withheld> salinityOff(Matter salinity) {
        Optional<TargetRange> target = salinity.target();
        Optional<Estimate> estimate = salinity.estimate().filter(e -> !salinity.isStale());
        if (target.isEmpty() || estimate.isEmpty()) {
            return Optional.empty();
        }
        double off = Odds.outside(
                estimate.get().level(),
                target.get().low() - SALINITY_SLACK,
                target.get().high() + SALINITY_SLACK);
        return off < Judging.SURE
                ? Optional.empty()
                : withheld(
                        Reason.SALINITY_OFF,
                        "the salinity is " + Phrases.between(estimate.get().level(), salinity.scale())
                                + ", out of its range",
                        "Bring the salinity back first, slowly: it moves every ion with it");
    }

    private static Optional<Withheld> tooOld(Matter matter) {
        return matter.isStale()
                ? withheld(
                        Reason.READINGS_TOO_OLD,
                        "the last usable test of " + Phrases.name(matter.parameter()) + " is "
                                + Phrases.days(matter.age()) + " old",
                        "Test " + Phrases.name(matter.parameter()) + " again")
                : Optional.empty();
    }

    private static Optional<Withheld> tooFew(Matter matter) {
        return matter.estimate().isPresent()
                ? Optional.empty()
                : withheld(
                        Reason.TOO_FEW_READINGS,
                        "what is used a day cannot be told: "
                                + matter.notEnough().map(n -> n.why()).orElse("there is no estimate"),
                        "It needs " + matter.notEnough().map(n -> n.wouldNeed()).orElse("more tests"));
    }

    /** Half of the last tests set aside, or two kits further apart than the range is wide. */
    private static Optional<Withheld> conflicting(Matter matter) {
        long setAside = setAsideLately(matter);
        if (setAside >= TOO_MANY_SET_ASIDE) {
            return withheld(
                    Reason.CONFLICTING_READINGS,
                    setAside + " of the last " + LATELY + " tests of " + Phrases.name(matter.parameter())
                            + " had to be set aside",
                    "Look at the cells set aside, then test twice from one sample");
        }
        return matter.estimate().flatMap(e -> kitsApart(matter, e));
    }

    private static long setAsideLately(Matter matter) {
        List<Point> points = matter.tank().findSeries(matter.parameter()).map(Series::points).orElse(List.of()).stream()
                .filter(p -> p.use() != Use.DUPLICATE && !p.reading().date().isAfter(matter.asOf()))
                .toList();
        return points.subList(Math.max(0, points.size() - LATELY), points.size()).stream()
                .filter(p -> p.use() == Use.OUTLIER || doubted(matter, p))
                .count();
    }

    private static boolean doubted(Matter matter, Point point) {
        return matter.estimate()
                .map(e -> e.setAside().stream()
                        .anyMatch(d -> d.reading().at().equals(point.reading().at())))
                .orElse(false);
    }

    private static Optional<Withheld> kitsApart(Matter matter, Estimate estimate) {
        double width = matter.target().map(t -> t.high() - t.low()).orElse(Double.POSITIVE_INFINITY);
        return estimate.sources().stream()
                .filter(s -> s.bias().low() > width || s.bias().high() < -width)
                .findFirst()
                .flatMap(
                        s -> withheld(
                                Reason.CONFLICTING_READINGS,
                                "two ways of testing differ by "
                                        + Phrases.amount(
                                                matter.scale()
                                                        .change(
                                                                Math.abs(
                                                                        s.bias().mid()),
                                                                estimate.level().mid()),
                                                matter.scale())
                                        + ", more than the range is wide",
                                "Test both on one sample of known content, and enter the result in the setup workbook, sheet Kits"));
    }

    private static Optional<Withheld> useUnknown(Matter matter) {
        return matter.estimate()
                .filter(e -> e.use().isEmpty())
                .flatMap(e -> withheld(
                        Reason.STRENGTH_UNKNOWN,
                        "an additive of unknown strength goes in as well, so the use cannot be told",
                        "Enter the strength of every additive that raises " + Phrases.name(matter.parameter())));
    }

    /** A model whose residuals look wrong and which a plain line contradicts is not to be dosed by. */
    private static Optional<Withheld> doubted(Matter matter) {
        return matter.estimate()
                .filter(e -> !e.fit().sound() && contradicted(e))
                .flatMap(e -> withheld(
                        Reason.MODEL_DOUBTED,
                        "the readings do not follow the doses and changes on record, and a plain line through them tells "
                                + "another use",
                        "Look for a dose, a water change or a new kit that was not written down"));
    }

    private static boolean contradicted(Estimate estimate) {
        return estimate.use()
                .flatMap(u -> estimate.plainUse().map(p -> p.low() > u.high() || p.high() < u.low()))
                .orElse(false);
    }

    /** Until a few tests tell the new use apart from a mistyped test or a dose nobody wrote down. */
    private static Optional<Withheld> changedLately(Matter matter) {
        return matter.estimate()
                .flatMap(e -> e.changed()
                        .filter(c -> c.tests() < ENOUGH_SINCE)
                        .flatMap(c -> withheld(
                                Reason.CHANGED_LATELY,
                                c.words(),
                                "Write down what was done after " + c.after() + ", if anything, and test "
                                        + Phrases.name(matter.parameter()) + " again on "
                                        + again(e, ENOUGH_SINCE - c.tests()))));
    }

    private static String again(Estimate estimate, int tests) {
        long every = Math.max(1, Math.round(estimate.fit().testEveryDays()));
        return IntStream.rangeClosed(1, tests)
                .mapToObj(i -> estimate.asOf().plusDays(i * every).toString())
                .collect(Collectors.joining(" and "));
    }

    private static Optional<Withheld> withheld(Reason reason, String message, String wouldLift) {
        return Optional.of(new Withheld(reason, message, wouldLift));
    }
}
