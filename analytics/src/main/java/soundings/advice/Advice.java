package soundings.advice;

import java.util.List;

/** All that is advised for one report. */
public record Advice(List<Judgement> judgements, List<Recommendation> recommendations) {
    public Advice {
        judgements = List.copyOf(judgements);
        recommendations = List.copyOf(recommendations);
    }
}
