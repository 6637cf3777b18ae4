package soundings.workbook;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.CsvRecordHandler;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * How a text table is written: what separates its fields, and whether quotes enclose them. Guessed over the whole file by the
 * consistency measure of van den Burg, Nazábal and Sutton (2019), "Wrangling messy CSV files by detecting row and type
 * patterns", Data Min. Knowl. Disc. 33: how regular the rows are, times how many fields are of a known type.
 */
record Dialect(char separator, boolean quotes) {
    /** In order of preference where two are as good. */
    private static final List<Dialect> CANDIDATES = List.of(
            new Dialect('\t', true),
            new Dialect(';', true),
            new Dialect(',', true),
            new Dialect('|', true),
            new Dialect('\t', false),
            new Dialect(';', false),
            new Dialect(',', false),
            new Dialect('|', false));

    private static final char NO_QUOTE = '\u0001';
    private static final int FIELD_LIMIT = 1 << 24;
    private static final double PROSE = 1e-4;
    private static final double LEAST_PATTERN = 1e-3;
    private static final double LEAST_TYPES = 1e-10;

    /** Numbers with either decimal mark, marks such as {@code <} and {@code ~}, dates, times, plain words; no stray separators. */
    private static final Pattern KNOWN = Pattern.compile("[<>~≈±+-]?\\s?\\d+([.,]\\d+)*\\s?[%?]?"
            + "|\\d{1,4}[-/.]\\s?\\d{1,2}[-/.]\\s?\\d{0,4}([ T]\\d{1,2}:\\d{2}(:\\d{2})?)?"
            + "|\\d{1,2}:\\d{2}(:\\d{2})?(\\s?[AaPp][Mm])?"
            + "|[^;\\t|,\"\\n]*");

    static Dialect of(String text) {
        List<Dialect> byScore = new ArrayList<>(CANDIDATES);
        Map<Dialect, Double> scores = new HashMap<>();
        CANDIDATES.forEach(candidate -> scores.put(candidate, candidate.score(text)));
        byScore.sort(Comparator.comparingDouble((Dialect candidate) -> scores.getOrDefault(candidate, 0.0))
                .reversed());
        return byScore.get(0);
    }

    /** All records of the text, empty lines too, every field as written. */
    List<List<String>> records(String text) {
        List<List<String>> records = new ArrayList<>();
        for (CsvRecord csvRecord : reader(text)) {
            records.add(csvRecord.getFields());
        }
        return records;
    }

    private CsvReader<CsvRecord> reader(String text) {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .quoteCharacter(quotes ? '"' : NO_QUOTE)
                .skipEmptyLines(false)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .maxBufferSize(FIELD_LIMIT)
                .build(
                        CsvRecordHandler.builder()
                                .maxFields(Limits.COLUMNS)
                                .maxFieldSize(FIELD_LIMIT)
                                .maxRecordSize(FIELD_LIMIT)
                                .build(),
                        text);
    }

    private double score(String text) {
        try {
            List<List<String>> records = records(text);
            return patternScore(records) * typeScore(records) * (isProse(records) ? PROSE : 1);
        } catch (RuntimeException notThisDialect) {
            return 0;
        }
    }

    private static double patternScore(List<List<String>> records) {
        Map<Integer, Integer> lengths = new HashMap<>();
        records.stream()
                .filter(fields -> !isBlank(fields))
                .forEach(fields -> lengths.merge(fields.size(), 1, Integer::sum));
        double sum = 0;
        for (Map.Entry<Integer, Integer> length : lengths.entrySet()) {
            sum += length.getValue() * Math.max(LEAST_PATTERN, length.getKey() - 1.0) / length.getKey();
        }
        return lengths.isEmpty() ? 0 : sum / lengths.size();
    }

    /** Sentences: most separators have a space behind them, and the rows are of many lengths. */
    private static boolean isProse(List<List<String>> records) {
        List<List<String>> filled =
                records.stream().filter(fields -> !isBlank(fields)).toList();
        long inner = filled.stream().mapToLong(fields -> fields.size() - 1L).sum();
        long spaced = filled.stream()
                .mapToLong(fields -> fields.stream()
                        .skip(1)
                        .filter(field -> field.startsWith(" "))
                        .count())
                .sum();
        Map<Integer, Long> lengths = filled.stream().collect(Collectors.groupingBy(List::size, Collectors.counting()));
        long commonest =
                lengths.values().stream().mapToLong(Long::longValue).max().orElse(0);
        return spaced * 10 > inner * 8 && commonest * 10 < filled.size() * 9L;
    }

    private static boolean isBlank(List<String> fields) {
        return fields.size() == 1 && fields.get(0).isBlank();
    }

    private static double typeScore(List<List<String>> records) {
        long all = 0;
        long known = 0;
        for (List<String> fields : records) {
            all += fields.size();
            known += fields.stream()
                    .filter(field -> KNOWN.matcher(field.strip()).matches())
                    .count();
        }
        return all == 0 ? 0 : Math.max(LEAST_TYPES, (double) known / all);
    }
}
