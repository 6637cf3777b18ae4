package soundings.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.advice.Action.Urgency;
import soundings.advice.Recommendation.Correction;
import soundings.advice.Recommendation.Pause;
import soundings.advice.Recommendation.Withheld;
import soundings.chemistry.Scale;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.quantity.Interval;

/** The month's jobs, what may kill first. */
final class Actions {
    /** Volumes nearer than this are one. */
    private static final double SAME = 0.005;

    /** The use, the dose that keeps the level, where it goes: what else is known stands with the evidence. */
    private static final int FIRST_REASONS = 3;

    private Actions() {}

    static List<Action> of(
            History history,
            List<Matter> matters,
            List<Judgement> judgements,
            List<Recommendation> doses,
            List<Supply> supplies) {
        List<Action> actions = new ArrayList<>();
        Map<List<Object>, Matter> bySubject = new LinkedHashMap<>();
        matters.forEach(
                m -> bySubject.put(List.of(m.tank().tank(), m.parameter().id()), m));
        for (Judgement j : judgements) {
            Optional.ofNullable(bySubject.get(List.of(j.tank(), j.parameter().id())))
                    .ifPresent(m -> {
                        Dangers.of(m, j).ifPresent(actions::add);
                        Tests.of(m, j).ifPresent(actions::add);
                        Watching.of(m, j, said(j, doses)).ifPresent(actions::add);
                    });
        }
        doses.forEach(r -> Optional.ofNullable(
                        bySubject.get(List.of(r.tank(), r.parameter().id())))
                .flatMap(m -> of(r, m, doses))
                .ifPresent(actions::add));
        matters.stream()
                .filter(m -> !isWithheld(m, doses))
                .collect(Collectors.groupingBy(m -> m.tank().tank(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .forEach(tank -> Watching.stale(tank).ifPresent(actions::add));
        actions.addAll(SupplyActions.of(supplies, history.asOf()));
        history.tanks().forEach(t -> actions.addAll(unknown(t, history)));
        return ranked(actions);
    }

    /** The advice on the dose of what is judged. */
    private static Optional<Recommendation> said(Judgement j, List<Recommendation> doses) {
        return doses.stream()
                .filter(r -> r.tank().equals(j.tank()) && r.parameter().equals(j.parameter()))
                .findFirst();
    }

    private static boolean isWithheld(Matter m, List<Recommendation> doses) {
        return doses.stream()
                .anyMatch(r -> r.tank().equals(m.tank().tank())
                        && r.parameter().equals(m.parameter())
                        && r.withheld().isPresent());
    }

    /** The most pressing first, the surest of those next; what would be said twice is said once. */
    static List<Action> ranked(List<Action> actions) {
        Map<List<String>, Action> once = new LinkedHashMap<>();
        actions.forEach(a -> once.putIfAbsent(List.of(a.tank(), a.what()), a));
        return once.values().stream()
                .sorted(Comparator.comparing(Action::urgency)
                        .thenComparing(Comparator.comparing(Action::sure).reversed()))
                .toList();
    }

    private static Optional<Action> of(Recommendation r, Matter matter, List<Recommendation> all) {
        if (r.withheld().isPresent()) {
            return Optional.of(withheld(r, r.withheld().get()));
        }
        return r.isChange() ? Optional.of(dose(r, matter, all)) : Optional.empty();
    }

    private static Action dose(Recommendation r, Matter matter, List<Recommendation> all) {
        Scale scale = matter.scale();
        LocalDate asOf = matter.asOf();
        double leaves = r.outlook().map(o -> o.leavesUnchanged()).orElse(0.0);
        boolean soon = r.correction().isPresent() || r.pause().isPresent() || leaves >= Judging.SURE;
        return new Action(
                soon ? Urgency.SOON : Urgency.MONTH,
                r.tank(),
                Optional.of(r.parameter()),
                order(r, scale),
                steps(r, scale, asOf),
                Stream.concat(r.why().stream().limit(FIRST_REASONS), Watching.order(r, all).stream())
                        .toList(),
                Math.max(leaves, 0.9),
                r.pause().map(p -> Cautions.ofPause(p, scale)).orElseGet(() -> Cautions.of(r.parameter())),
                r.restsOn());
    }

    private static String order(Recommendation r, Scale scale) {
        return Phrases.capital(r.pause()
                .map(p -> pause(r, p, scale))
                .or(() -> r.proposedMlPerDay().map(p -> daily(r, p)))
                .orElseGet(() -> r.correction()
                        .map(c -> "raise " + Phrases.name(r.parameter()) + " with " + Phrases.ml(c.ml()) + " of "
                                + r.additive() + " more")
                        .orElse("")));
    }

    private static String daily(Recommendation r, Interval proposed) {
        return "dose " + Phrases.ml(proposed.mid()) + " of " + r.additive() + " a day"
                + (r.presentMlPerDay().isPresent()
                        ? " in place of "
                                + Phrases.millilitres(r.presentMlPerDay().getAsDouble())
                        : "");
    }

    private static String pause(Recommendation r, Pause pause, Scale scale) {
        String meanwhile = pause.mlPerDay() > 0
                ? "dose only " + Phrases.ml(pause.mlPerDay()) + " of " + r.additive() + " a day"
                : "give no " + r.additive();
        return meanwhile + " until " + Phrases.name(r.parameter()) + " tests at " + Phrases.level(pause.goal(), scale);
    }

    private static List<String> steps(Recommendation r, Scale scale, LocalDate asOf) {
        List<String> steps = new ArrayList<>();
        r.pause().ifPresent(p -> steps.addAll(List.of(waiting(p, scale, asOf), after(r))));
        r.correction().ifPresent(c -> steps.add(correction(r, c)));
        return steps;
    }

    /** How fast it falls, and until when. */
    private static String waiting(Pause pause, Scale scale, LocalDate asOf) {
        double falls = scale.change(pause.fallPerDay(), pause.goal());
        return "It falls by about " + Phrases.small(falls) + Phrases.unit(scale) + " a day and is there about "
                + asOf.plusDays(pause.wholeDays()) + ", in " + Phrases.days(pause.wholeDays()) + " ("
                + Math.round(pause.days().low()) + " to "
                + Math.round(pause.days().high()) + "); test it on " + asOf.plusDays(pause.testIn());
    }

    private static String after(Recommendation r) {
        double present = r.presentMlPerDay().orElse(0);
        return "From then on "
                + r.proposedMlPerDay()
                        .map(p -> Phrases.ml(p.mid()) + " a day in place of " + Phrases.millilitres(present))
                        .orElseGet(() -> Phrases.ml(present) + " a day as before");
    }

    private static String correction(Recommendation r, Correction c) {
        String when = c.days() == 1 ? "On the first day " : "On each of the first " + c.days() + " days ";
        String all = c.days() == 1 ? "" : ", " + Phrases.ml(c.ml()) + " in all";
        return when + Phrases.ml(c.mlADay()) + " more by the pump" + byHand(c) + all + ", to raise "
                + Phrases.name(r.parameter());
    }

    /** A pump measured off its setting gives another volume than a syringe. */
    private static String byHand(Correction c) {
        return Math.abs(c.byHandMl() / c.ml() - 1) < SAME
                ? " or by hand"
                : " (by hand " + Phrases.ml(c.byHandMl() / c.days()) + ")";
    }

    private static Action withheld(Recommendation r, Withheld why) {
        Urgency urgency = switch (why.reason()) {
            case TWO_ADDITIVES -> Urgency.SOON;
            case NOT_TESTED, RECIPE_UNREAD -> Urgency.MONTH;
            default -> Urgency.HANDY;
        };
        return new Action(
                urgency,
                r.tank(),
                Optional.of(r.parameter()),
                why.wouldLift(),
                List.of("no dose of " + r.additive() + " is proposed: " + why.message()),
                1,
                "",
                r.restsOn());
    }

    /** Additives that go in and that nobody has described. */
    private static List<Action> unknown(TankHistory tank, History history) {
        return tank.doses().stream()
                .filter(c -> c.additive().isEmpty() && c.mlPerDayOn(history.asOf()) > 0)
                .map(c -> unknown(tank, c, history))
                .toList();
    }

    private static Action unknown(TankHistory tank, DoseCourse course, History history) {
        return new Action(
                Urgency.HANDY,
                tank.tank(),
                Optional.empty(),
                "Enter what " + course.name() + " raises and how strong it is in the setup workbook, sheet Additives",
                List.of("it goes in at " + Phrases.ml(course.mlPerDayOn(history.asOf()))
                        + " a day, and nothing is known of it"),
                1,
                "",
                course.findStep(history.asOf())
                        .map(s -> List.of(s.at().place()))
                        .orElse(List.of()));
    }
}
