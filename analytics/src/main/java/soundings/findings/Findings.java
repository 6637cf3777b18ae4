package soundings.findings;

import java.time.YearMonth;
import soundings.advice.Advice;
import soundings.care.Care;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.log.Log;

/** One run's findings, stage by stage, for one month. */
public record Findings(
        Provenance provenance,
        YearMonth month,
        Reference reference,
        Log log,
        History history,
        Estimates estimates,
        Advice advice,
        Care care) {
    public Findings(
            Provenance provenance,
            YearMonth month,
            Reference reference,
            Log log,
            History history,
            Estimates estimates,
            Advice advice) {
        this(provenance, month, reference, log, history, estimates, advice, Care.NONE);
    }
}
