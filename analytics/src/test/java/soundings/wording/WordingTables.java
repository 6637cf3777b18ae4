package soundings.wording;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import soundings.reference.ReferenceTables;

/** The tables of cases and the words they are read with. */
final class WordingTables {
    static final Vocabulary WORDS = Vocabulary.of(
            ReferenceTables.load(),
            List.of(new Named("Reef Broth", List.of("broth")), new Named("two-part A", List.of("part a"))),
            List.of(new Named("Lagoon", List.of("lag")), new Named("Frag tank", List.of("frags"))));

    private WordingTables() {}

    static Stream<NamedCsvRecord> rows(String name) {
        var stream = Objects.requireNonNull(WordingTables.class.getResourceAsStream(name), name);
        return CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .ofNamedCsvRecord(new InputStreamReader(stream, StandardCharsets.UTF_8))
                .stream();
    }

    /** Puts the odd spaces in that the tables show as signs. */
    static String spaced(String text) {
        return text.replace('␣', '\u00a0')
                .replace('␢', '\u202f')
                .replace('⍽', '\u2009')
                .replace('⇥', '\t')
                .replace('␤', '\n');
    }
}
