package soundings.results;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import soundings.advice.Recommendation;

/** The {@code recommendations} of a results file. */
final class RecommendationRows {
    private final JsonGenerator out;

    RecommendationRows(JsonGenerator out) {
        this.out = out;
    }

    void write(List<Recommendation> recommendations) throws IOException {
        out.writeArrayFieldStart("recommendations");
        for (Recommendation recommendation : recommendations) {
            out.writeStartObject();
            row(recommendation);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void row(Recommendation r) throws IOException {
        out.writeStringField("tank", r.tank());
        out.writeStringField("parameter", r.parameter().id());
        out.writeStringField("additive", r.additive());
        if (r.presentMlPerDay().isPresent()) {
            out.writeNumberField("presentMlPerDay", r.presentMlPerDay().getAsDouble());
        } else {
            out.writeNullField("presentMlPerDay");
        }
        if (r.proposedMlPerDay().isPresent()) {
            Intervals.write(out, "proposedMlPerDay", r.proposedMlPerDay().get());
        } else {
            out.writeNullField("proposedMlPerDay");
        }
        correction(r);
        if (r.pause().isPresent()) {
            Intervals.write(out, "pauseDays", r.pause().get().days());
            out.writeNumberField("pauseMlPerDay", r.pause().get().mlPerDay());
        }
        words("why", r.why());
        if (r.withheld().isPresent()) {
            out.writeStringField("withheld", r.withheld().get().message());
        }
        words("restsOn", r.restsOn());
    }

    private void correction(Recommendation r) throws IOException {
        if (r.correction().isPresent()) {
            out.writeNumberField("correctionMl", r.correction().get().ml());
            out.writeNumberField("correctionDays", r.correction().get().days());
        } else {
            out.writeNullField("correctionMl");
            out.writeNullField("correctionDays");
        }
    }

    private void words(String name, List<String> words) throws IOException {
        out.writeArrayFieldStart(name);
        for (String word : words) {
            out.writeString(word);
        }
        out.writeEndArray();
    }
}
