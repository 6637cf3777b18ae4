package soundings.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.advice.Action.Urgency;
import soundings.chemistry.Parameter;
import soundings.estimate.Estimate;
import soundings.history.DoseCourse;
import soundings.setup.Setup;

/** What no dose mends: a level out of its range that nothing described raises or lowers, and tests grown too old to go by. */
final class Watching {
    /** A tank none of whose tests is younger is not kept any more, or not tested on purpose; common practice, no source. */
    private static final int GIVEN_UP_DAYS = 180;

    /** A part of the water to reckon a change by; common practice, no source. */
    private static final double USUAL_CHANGE = 0.1;

    private Watching() {}

    /** @param dose the advice on its dose, where there is one: a high level is brought down even where no dose can be worked out */
    static Optional<Action> of(Matter matter, Judgement judgement, Optional<Recommendation> dose) {
        boolean balanced = matter.parameter().balances() && matter.parameter().kind() != Parameter.Kind.TOXIN;
        boolean open =
                dose.map(d -> d.withheld().isPresent() && isHigh(judgement)).orElse(true);
        boolean out = isHigh(judgement) || judgement.verdict() == Verdict.LOW;
        return balanced && open && (out || leaves(matter, judgement))
                ? Optional.of(action(matter, judgement))
                : Optional.empty();
    }

    private static boolean isHigh(Judgement judgement) {
        return judgement.verdict() == Verdict.HIGH || judgement.verdict() == Verdict.OVER_DOSED;
    }

    /** Whether a level that drifts is likely out of its range at the end of the days ahead. */
    private static boolean leaves(Matter matter, Judgement judgement) {
        boolean drifts = judgement.verdict() == Verdict.RISING || judgement.verdict() == Verdict.FALLING;
        return drifts
                && matter.estimate()
                        .flatMap(e -> judgement.target().map(t -> Odds.outside(Ahead.last(e), t.low(), t.high())))
                        .map(p -> p >= Judging.SURE)
                        .orElse(false);
    }

    private static Action action(Matter matter, Judgement judgement) {
        String name = Phrases.name(judgement.parameter());
        boolean up = isHigh(judgement) || judgement.verdict() == Verdict.RISING;
        boolean nutrient = judgement.parameter().kind() == Parameter.Kind.NUTRIENT;
        String what = up
                ? lower(matter, name)
                : nutrient
                        ? "Let " + name + " come up, a little at a time, and test it every week"
                        : raise(matter, name);
        List<String> why =
                new ArrayList<>(List.of(name + " is " + judgement.verdict().words(), judgement.because()));
        if (up) {
            matter.estimate().map(e -> byChange(matter, e)).ifPresent(why::add);
        }
        if (nutrient) {
            why.add(practice(up));
        }
        return new Action(
                Urgency.MONTH,
                judgement.tank(),
                Optional.of(judgement.parameter()),
                what,
                why,
                judgement.probability(),
                "",
                matter.places());
    }

    /** What goes in and carries it, by the setup workbook or by its name, is the first to lower. */
    private static String lower(Matter matter, String name) {
        String carriers = matter.tank().doses().stream()
                .filter(c -> c.mlPerDayOn(matter.asOf()) > 0)
                .filter(c -> c.additive().stream().anyMatch(a -> a.parameter().equals(matter.parameter()))
                        || matter.reference().isNamedIn(matter.parameter(), c.name()))
                .map(DoseCourse::name)
                .distinct()
                .collect(Collectors.joining(", "));
        return carriers.isEmpty()
                ? "Bring " + name + " down, a little at a time, and test it every week"
                : "Lower or stop " + carriers + ", which carries " + name + ", and test it every week";
    }

    /** What goes in may be what raises it already, as soon as the setup workbook knows it. */
    private static String raise(Matter matter, String name) {
        boolean unknown =
                matter.tank().doses().stream().anyMatch(c -> c.additive().isEmpty() && c.mlPerDayOn(matter.asOf()) > 0);
        return unknown
                ? "Raise " + name + ", slowly; how much it takes can be told when the setup workbook knows what goes in"
                : "Find what is to raise " + name + " and enter it in the setup workbook, sheet Additives";
    }

    private static String byChange(Matter matter, Estimate estimate) {
        double level = estimate.level().mid();
        Optional<Double> fresh = matter.history()
                .setup()
                .findFreshMix(matter.tank().tank(), matter.parameter())
                .map(Setup.FreshMix::value);
        double takes = matter.scale().change(USUAL_CHANGE * Math.max(0, level - fresh.orElse(0.0)), level);
        return "a water change of 10 % takes out about " + Phrases.bare(rounded(takes)) + Phrases.unit(matter.scale())
                + (fresh.isPresent() ? ", with your fresh mix" : ", where the new water holds none");
    }

    /** Two digits that count. */
    private static double rounded(double value) {
        return Double.parseDouble(Phrases.small(value));
    }

    private static String practice(boolean up) {
        return up
                ? "less food, a cleaner filter or more water changed usually lowers it; change one of them, and wait "
                        + "for the next test (common practice, no source)"
                : "a little more food or fewer exports usually raise it; change one of them, and wait for the next test (common "
                        + "practice, no source)";
    }

    /** One line a tank for all tests too old for a verdict; those whose dose waits for a test are named there. */
    static Optional<Action> stale(List<Matter> tank) {
        List<Matter> old =
                tank.stream().filter(m -> m.isStale() && m.used().size() > 2).toList();
        boolean givenUp = tank.stream().filter(m -> !m.used().isEmpty()).allMatch(m -> m.age() > GIVEN_UP_DAYS);
        if (old.isEmpty() || givenUp) {
            return Optional.empty();
        }
        String names = String.join(
                ", ", old.stream().map(m -> Phrases.name(m.parameter())).toList());
        String ages = String.join(
                ", ",
                old.stream()
                        .map(m -> Phrases.name(m.parameter()) + " " + Phrases.days(m.age()) + " (at most "
                                + m.freshDays() + ")")
                        .toList());
        return Optional.of(new Action(
                Urgency.MONTH,
                old.get(0).tank().tank(),
                Optional.empty(),
                "Test again: " + names,
                List.of("no verdict is given by a test this old (common practice, no source): " + ages),
                1,
                "",
                old.stream().flatMap(m -> m.lastPlace().stream()).distinct().toList()));
    }

    /** What is said of the order where several levels of a tank are put right at once; empty for a single one. */
    static List<String> order(Recommendation r, List<Recommendation> all) {
        List<String> names = all.stream()
                .filter(o -> o.tank().equals(r.tank()) && o.withheld().isEmpty())
                .filter(Recommendation::isChange)
                .map(o -> Phrases.name(o.parameter()))
                .distinct()
                .toList();
        if (names.size() < 2 || !names.contains(Phrases.name(r.parameter()))) {
            return List.of();
        }
        List<String> first = Stream.of("alkalinity", "calcium", "magnesium")
                .filter(names::contains)
                .toList();
        List<String> turn =
                Stream.concat(first.stream(), names.stream()).distinct().toList();
        String apart = names.contains("alkalinity") && names.contains("calcium")
                ? "; alkalinity and calcium never in the same minute: together they fall out as calcium carbonate"
                : "";
        return List.of("in this tank change one thing after the other: " + String.join(", then ", turn) + apart);
    }
}
