package soundings.estimate;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Tables of published values. */
final class Checks {
    private Checks() {}

    static List<Double> column(String resource, String name) {
        try (Reader reader = new InputStreamReader(
                        Objects.requireNonNull(Checks.class.getResourceAsStream(resource)), StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                        .commentStrategy(de.siegmar.fastcsv.reader.CommentStrategy.SKIP)
                        .ofNamedCsvRecord(reader);
                Stream<NamedCsvRecord> rows = csv.stream()) {
            return rows.map(r -> Double.valueOf(r.getField(name))).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
