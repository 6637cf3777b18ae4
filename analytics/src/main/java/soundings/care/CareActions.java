package soundings.care;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;
import soundings.advice.Advice;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;

/** What care adds to the month's actions, and what it takes back: a tank that is run in empty is meant to hold ammonia. */
public final class CareActions {
    private static final String POISON =
            "Change water with the same salinity and temperature, and give air; a limit in a table is no promise for an animal. Ask a vet where "
                    + "animals breathe fast or lie down.";

    /** Longer than this no animal is kept in a bucket while its water is changed; common practice, no source. */
    private static final int LONG_HOURS = 6;

    private CareActions() {}

    /** The advice with the actions of new tanks, treated animals and moves in their places. */
    public static Advice amend(Advice advice, Care care) {
        List<Action> kept = advice.actions().stream()
                .filter(a -> !isOfEmptyNewTank(a, care) && !isOfUnready(a, care))
                .map(a -> isOfTreatedWater(a, care) ? asked(a) : a)
                .toList();
        List<Action> actions = new ArrayList<>();
        care.dangers().stream()
                .filter(d -> kept.stream().noneMatch(a -> isSame(a, d)))
                .map(CareActions::danger)
                .forEach(actions::add);
        care.courses().stream().filter(Course::running).forEach(c -> actions.addAll(CourseActions.of(c)));
        care.newTanks().stream().flatMap(t -> keepEmpty(t).stream()).forEach(actions::add);
        care.moves().stream()
                .filter(Move::planned)
                .flatMap(m -> move(m).stream())
                .forEach(actions::add);
        actions.addAll(kept);
        actions.sort(Comparator.comparing(Action::urgency));
        return new Advice(
                advice.judgements(),
                advice.recommendations(),
                actions,
                advice.supplies(),
                advice.plans(),
                advice.insights());
    }

    private static boolean isOfEmptyNewTank(Action action, Care care) {
        return action.parameter().filter(p -> p.kind() == Parameter.Kind.TOXIN).isPresent()
                && care.newTanks().stream().anyMatch(t -> t.tank().equals(action.tank()) && !t.animals());
    }

    /** Nitrate and phosphate of a tank that is not ready yet are what ammonia and food turn into: nothing to bring down or up. */
    private static boolean isOfUnready(Action action, Care care) {
        return action.parameter()
                        .filter(p -> p.kind() == Parameter.Kind.NUTRIENT)
                        .isPresent()
                && care.newTanks().stream()
                        .anyMatch(t ->
                                t.tank().equals(action.tank()) && t.readyOn().isEmpty());
    }

    /** Salinity out of its range while a course of treatment runs: low salinity may be part of it. */
    private static boolean isOfTreatedWater(Action action, Care care) {
        return action.parameter().filter(p -> p.id().equals("salinity")).isPresent()
                && care.courses().stream().anyMatch(c -> c.running() && c.tank().equals(action.tank()));
    }

    /** No alarm, for it may be meant; no silence either, for it may not. */
    private static Action asked(Action action) {
        List<String> why = new ArrayList<>(action.why());
        why.add(
                "a course of treatment is running in this tank, and its salinity may be kept so on purpose; if not, check it with "
                        + "a second instrument and bring it back slowly");
        return new Action(
                Urgency.HANDY,
                action.tank(),
                action.parameter(),
                "If this salinity is meant for the treatment, enter it as the tank's range in the setup workbook, sheet Targets",
                why,
                action.sure(),
                action.caution(),
                action.restsOn());
    }

    private static boolean isSame(Action action, Danger danger) {
        return action.urgency() == Urgency.NOW
                && action.tank().equals(danger.tank())
                && action.parameter().equals(Optional.of(danger.reading().parameter()));
    }

    private static Action danger(Danger danger) {
        Parameter parameter = danger.reading().parameter();
        Scale scale = danger.reading().scale();
        String what = danger.free() ? "free ammonia" : name(parameter);
        String aside = danger.aside().isEmpty() ? "" : "; the reading was set aside elsewhere: " + danger.aside();
        return new Action(
                Urgency.NOW,
                danger.tank(),
                Optional.of(parameter),
                "Test " + name(parameter) + " again now; if it stands, change water until it is gone",
                List.of(what + " was " + figure(scale.written(danger.value())) + " " + scale.label()
                        + " at the last test; from " + figure(scale.written(danger.limit()))
                        + " on it can kill animals (common practice, no source)" + aside),
                1,
                POISON,
                List.of(danger.reading().at().place()));
    }

    private static Optional<Action> move(Move move) {
        List<String> apart = move.sides().stream()
                .filter(s -> s.standing() == Move.Standing.APART)
                .map(s -> name(s.parameter()))
                .toList();
        return apart.isEmpty()
                ? Optional.empty()
                : Optional.of(new Action(
                        Urgency.MONTH,
                        move.to(),
                        Optional.empty(),
                        "Do not move " + (move.animal().isEmpty() ? "an animal" : move.animal()) + " straight from "
                                + move.from() + " to " + move.to(),
                        why(move, apart),
                        1,
                        "",
                        List.of(move.place())));
    }

    private static List<String> why(Move move, List<String> apart) {
        String differ = "the two waters differ too much in " + String.join(", ", apart);
        double hours = Math.ceil(move.hours().orElse(0) * 2) / 2;
        return hours > 0
                ? List.of(
                        differ,
                        hours > LONG_HOURS
                                ? "bring the two waters together over days first (common practice, no source)"
                                : "at the usual pace it takes " + figure(hours) + " hours (common practice, no source)")
                : List.of(differ);
    }

    private static Optional<Action> keepEmpty(NewTank tank) {
        return !tank.isRunIn()
                ? Optional.empty()
                : Optional.of(new Action(
                        Urgency.MONTH,
                        tank.tank(),
                        Optional.empty(),
                        "Put no animal in yet: the tank is not ready on day " + tank.age(),
                        List.of(NotReady.because(tank)),
                        1,
                        "",
                        NotReady.restsOn(tank)));
    }

    static String name(Parameter parameter) {
        boolean symbol = parameter.name().length() < 3;
        return symbol
                ? parameter.name()
                : parameter.name().toLowerCase(Locale.ROOT).replace("(as n)", "(as N)");
    }

    static String figure(double value) {
        return java.math.BigDecimal.valueOf(value)
                .round(new java.math.MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }
}
