package soundings.advice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.advice.Action.Urgency;
import soundings.chemistry.Parameter;
import soundings.chemistry.TargetRange;

/** What animals may die of: poisons, warmth and cold, salt. How far out is dangerous is common practice, without a source. */
final class Dangers {
    /** So far beyond its range a condition is a danger now and not this week, canonical unit. */
    private static final Map<String, Double> FAR = Map.of("temperature", 2.0, "salinity", 3.0, "ph", 0.3);

    private static final Map<String, String> MEND = Map.of(
            "temperature", "Check heater, cooling and thermometer",
            "salinity", "Check the salinity with a second instrument, then bring it back slowly",
            "ph", "Check the pH meter and let in fresh air");

    private Dangers() {}

    static Optional<Action> of(Matter matter, Judgement judgement) {
        boolean high = judgement.verdict() == Verdict.HIGH;
        boolean low = judgement.verdict() == Verdict.LOW;
        boolean known = MEND.containsKey(judgement.parameter().id());
        if (judgement.parameter().kind() == Parameter.Kind.TOXIN && high) {
            return Optional.of(poison(matter, judgement));
        }
        return known && (high || low) ? Optional.of(condition(matter, judgement)) : Optional.empty();
    }

    private static Action poison(Matter matter, Judgement judgement) {
        String name = Phrases.name(judgement.parameter());
        return new Action(
                Urgency.NOW,
                judgement.tank(),
                Optional.of(judgement.parameter()),
                "Test " + name + " again; if it is still there, change water and feed little until it is gone",
                List.of(judgement.because(), name + " kills in small amounts"),
                judgement.probability(),
                Cautions.poison(),
                matter.lastPlace());
    }

    private static Action condition(Matter matter, Judgement judgement) {
        String id = judgement.parameter().id();
        double about = matter.last().map(r -> r.amount().about()).orElse(0.0);
        boolean far = judgement.target().map(t -> beyond(t, about)).orElse(0.0) >= FAR.getOrDefault(id, 0.0);
        return new Action(
                far ? Urgency.NOW : Urgency.SOON,
                judgement.tank(),
                Optional.of(judgement.parameter()),
                MEND.getOrDefault(id, ""),
                List.of(judgement.because()),
                judgement.probability(),
                "",
                matter.lastPlace());
    }

    private static double beyond(TargetRange target, double about) {
        return Math.max(target.low() - about, about - target.high());
    }
}
