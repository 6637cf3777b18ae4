package soundings.advice;

import java.util.List;

/**
 * All that is advised for one report.
 *
 * @param actions what to do, the most pressing first
 * @param supplies the pumps and containers the setup workbook knows
 * @param plans when each pump gives its doses, a plan a tank
 * @param insights what follows from several tests together
 */
public record Advice(
        List<Judgement> judgements,
        List<Recommendation> recommendations,
        List<Action> actions,
        List<Supply> supplies,
        List<DayPlan> plans,
        List<Insight> insights) {
    public Advice {
        judgements = List.copyOf(judgements);
        recommendations = List.copyOf(recommendations);
        actions = List.copyOf(actions);
        supplies = List.copyOf(supplies);
        plans = List.copyOf(plans);
        insights = List.copyOf(insights);
    }

    public Advice(List<Judgement> judgements, List<Recommendation> recommendations) {
        this(judgements, recommendations, List.of(), List.of(), List.of(), List.of());
    }
}
