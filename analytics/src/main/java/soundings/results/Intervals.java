package soundings.results;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import soundings.quantity.Interval;

/** Intervals as {@code {"mid", "low", "high"}}. */
final class Intervals {
    private Intervals() {}

    static void write(JsonGenerator out, String name, Interval interval) throws IOException {
        out.writeObjectFieldStart(name);
        out.writeNumberField("mid", interval.mid());
        out.writeNumberField("low", interval.low());
        out.writeNumberField("high", interval.high());
        out.writeEndObject();
    }
}
