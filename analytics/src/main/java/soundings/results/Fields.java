package soundings.results;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The fields of one object; what is not known is left out. */
final class Fields {
    private final JsonGenerator out;

    Fields(JsonGenerator out) {
        this.out = out;
    }

    /** Writes the fields of one value. */
    interface Of<T> {
        void write(T value) throws IOException;
    }

    void object(String name, Of<Fields> inside) throws IOException {
        out.writeObjectFieldStart(name);
        inside.write(this);
        out.writeEndObject();
    }

    /** An object a value. */
    <T> void list(String name, Collection<T> values, Of<T> row) throws IOException {
        out.writeArrayFieldStart(name);
        for (T value : values) {
            out.writeStartObject();
            row.write(value);
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    void texts(String name, List<String> texts) throws IOException {
        out.writeArrayFieldStart(name);
        for (String text : texts) {
            out.writeString(text);
        }
        out.writeEndArray();
    }

    void text(String name, String text) throws IOException {
        out.writeStringField(name, text);
    }

    /** {@code NITRITE_GONE} as {@code nitriteGone}. */
    void constant(String name, Enum<?> constant) throws IOException {
        out.writeStringField(name, ResultsJson.camel(constant.name()));
    }

    void truth(String name, boolean value) throws IOException {
        out.writeBooleanField(name, value);
    }

    void number(String name, double value) throws IOException {
        out.writeNumberField(name, value);
    }

    void count(String name, long value) throws IOException {
        out.writeNumberField(name, value);
    }

    void number(String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            out.writeNumberField(name, value.getAsDouble());
        }
    }

    void day(String name, LocalDate day) throws IOException {
        out.writeStringField(name, day.toString());
    }

    void day(String name, Optional<LocalDate> day) throws IOException {
        if (day.isPresent()) {
            day(name, day.get());
        }
    }
}
