package soundings.results;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import soundings.advice.Judgement;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.NotEnough;
import soundings.estimate.Outcome;

/** The {@code estimates} of a results file. */
final class EstimateRows {
    private final JsonGenerator out;
    private final Map<String, Judgement> verdicts;

    /** @param verdicts by tank, line break, parameter id */
    EstimateRows(JsonGenerator out, Map<String, Judgement> verdicts) {
        this.out = out;
        this.verdicts = verdicts;
    }

    void write(Estimates estimates) throws IOException {
        out.writeArrayFieldStart("estimates");
        for (Outcome outcome : estimates.outcomes()) {
            out.writeStartObject();
            out.writeStringField("tank", outcome.tank());
            out.writeStringField("parameter", outcome.parameter().id());
            out.writeStringField("unit", outcome.parameter().unit());
            rest(outcome);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void rest(Outcome outcome) throws IOException {
        if (outcome instanceof Estimate estimate) {
            known(estimate);
        } else if (outcome instanceof NotEnough notEnough) {
            out.writeNumberField("readings", notEnough.readings());
            out.writeNumberField("spanDays", notEnough.spanDays());
            out.writeStringField("verdict", "cannotTell");
            out.writeStringField("notEnough", notEnough.why());
        }
    }

    private void known(Estimate estimate) throws IOException {
        out.writeStringField("asOf", estimate.asOf().toString());
        out.writeNumberField("readings", estimate.readings());
        out.writeNumberField("spanDays", estimate.spanDays());
        Intervals.write(out, "level", estimate.level());
        if (estimate.use().isPresent()) {
            Intervals.write(out, "consumptionPerDay", estimate.use().get());
        }
        Intervals.write(out, "driftPerDay", estimate.drift());
        Judgement judgement =
                verdicts.get(estimate.tank() + "\n" + estimate.parameter().id());
        out.writeStringField(
                "verdict",
                judgement == null
                        ? "cannotTell"
                        : ResultsJson.camel(judgement.verdict().name().toLowerCase(Locale.ROOT)));
    }
}
