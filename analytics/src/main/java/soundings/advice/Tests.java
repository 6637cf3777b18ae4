package soundings.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import soundings.advice.Action.Urgency;
import soundings.estimate.KitStep;
import soundings.estimate.TestsNeeded;

/** Tests to take so that a verdict becomes possible, and kits that cannot give one. */
final class Tests {
    private static final int NAMED_DAYS = 4;

    private Tests() {}

    static Optional<Action> of(Matter matter, Judgement judgement) {
        if (judgement.verdict() != Verdict.CANNOT_TELL) {
            return Optional.empty();
        }
        return judgement
                .tooCoarse()
                .map(k -> coarse(matter, judgement, k))
                .or(() ->
                        judgement.testsNeeded().filter(t -> isSoon(t, matter)).map(t -> needed(matter, judgement, t)));
    }

    /** What takes longer is told in the table and asked for by no job. */
    private static boolean isSoon(TestsNeeded needed, Matter matter) {
        return !needed.on().get(needed.tests() - 1).isAfter(matter.asOf().plusDays(Judging.DAYS_AHEAD));
    }

    /** When to test so that it can be told: {@code ; test it on 2026-11-04, 2026-11-08}; empty where no few tests tell. */
    static String days(Judgement judgement) {
        return judgement.testsNeeded().map(t -> "; test it on " + named(t.on())).orElse("");
    }

    private static String named(List<LocalDate> days) {
        String first = days.stream().limit(NAMED_DAYS).map(LocalDate::toString).collect(Collectors.joining(", "));
        return days.size() > NAMED_DAYS ? first + " and on to " + days.get(days.size() - 1) : first;
    }

    private static Action needed(Matter matter, Judgement judgement, TestsNeeded needed) {
        String name = Phrases.name(judgement.parameter());
        return action(
                matter,
                judgement,
                "Test " + name + " " + (needed.tests() == 1 ? "once more: " : needed.tests() + " times more: ")
                        + named(needed.on()),
                "it cannot be told yet whether " + name + " stays in its range: " + judgement.because());
    }

    private static Action coarse(Matter matter, Judgement judgement, KitStep kit) {
        String name = Phrases.name(judgement.parameter());
        return action(
                matter,
                judgement,
                "Use a finer test for " + name + ", or have a laboratory measure it",
                "results come in steps of " + shown(matter, kit.step()) + " and scatter by "
                        + shown(matter, kit.error()) + "; the range to judge is only "
                        + shown(matter, kit.range()) + Phrases.unit(matter.scale()) + " wide");
    }

    /** Said beside a verdict that was given all the same. */
    static String coarse(Matter matter, KitStep kit) {
        return ". Single tests are coarse for it: they come in steps of " + shown(matter, kit.step())
                + " and scatter by " + shown(matter, kit.error());
    }

    private static String shown(Matter matter, double difference) {
        double around = matter.last().map(r -> r.amount().about()).orElse(0.0);
        return Phrases.small(matter.scale().change(difference, around));
    }

    private static Action action(Matter matter, Judgement judgement, String what, String why) {
        return new Action(
                Urgency.HANDY,
                judgement.tank(),
                Optional.of(judgement.parameter()),
                what,
                List.of(why),
                1,
                "",
                matter.places());
    }
}
