package soundings.findings;

import java.time.YearMonth;
import java.util.List;
import java.util.stream.Stream;
import soundings.advice.Advice;
import soundings.advice.Followed;
import soundings.care.Care;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.upkeep.Upkeep;

/**
 * One run's findings, stage by stage, for one month.
 *
 * @param followed what became of the advice of the month before
 */
public record Findings(
        Provenance provenance,
        YearMonth month,
        Reference reference,
        Log log,
        History history,
        Estimates estimates,
        Advice advice,
        Care care,
        Upkeep upkeep,
        List<Followed> followed,
        Mentor mentor) {
    public Findings {
        followed = List.copyOf(followed);
    }

    public Findings(
            Provenance provenance,
            YearMonth month,
            Reference reference,
            Log log,
            History history,
            Estimates estimates,
            Advice advice) {
        this(
                provenance,
                month,
                reference,
                log,
                history,
                estimates,
                advice,
                Care.NONE,
                Upkeep.NOTHING,
                List.of(),
                Mentor.NONE);
    }

    /** Everything that could not be read or used as it stands, stage by stage. */
    public List<Issue> issues() {
        return Stream.of(history.setup().issues(), log.issues(), history.issues(), care.issues(), upkeep.issues())
                .flatMap(List::stream)
                .toList();
    }
}
