package soundings.checks;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** One published value: what is computed, from what, what it must be and how close, and where it stands. */
record Check(
        String function,
        List<String> inputs,
        double expected,
        double tolerance,
        String source,
        String locator,
        String status,
        String at) {
    static final Set<String> STATUSES = Set.of("C", "CR", "R", "O");

    static List<Check> of(String file) {
        InputStream bytes = Objects.requireNonNull(Check.class.getResourceAsStream("/checks/" + file), file);
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            return rows.stream().map(r -> of(file, r)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Check of(String file, NamedCsvRecord row) {
        return new Check(
                row.getField("function"),
                Arrays.stream(row.getField("inputs").split(";"))
                        .map(String::strip)
                        .filter(s -> !s.isEmpty())
                        .toList(),
                Double.parseDouble(row.getField("expected")),
                Double.parseDouble(row.getField("tolerance")),
                row.getField("source"),
                row.getField("locator"),
                row.getField("status"),
                file + ":" + row.getStartingLineNumber());
    }

    String text(int input) {
        return inputs.get(input);
    }

    double number(int input) {
        return Double.parseDouble(inputs.get(input));
    }

    @Override
    public String toString() {
        return function + inputs + " = " + expected + " ± " + tolerance + " (" + source + ", " + locator + ", " + at
                + ")";
    }
}
