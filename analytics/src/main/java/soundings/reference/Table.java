package soundings.reference;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** One CSV file, read strictly: exactly the columns asked for, no blank cell ({@code -} says "none"), lines starting with # skipped. */
final class Table {
    private final String file;
    private final List<Row> rows;

    private Table(String file, List<Row> rows) {
        this.file = file;
        this.rows = rows;
    }

    static Table read(String file, Reader text, List<String> columns) {
        List<Row> rows = new ArrayList<>();
        try (CsvReader<CsvRecord> records = lenientReader(text)) {
            boolean headed = false;
            for (CsvRecord record : records) {
                if (headed) {
                    rows.add(row(file, columns, record));
                } else {
                    checkHeader(file, columns, record);
                    headed = true;
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file + " could not be read", e);
        }
        return new Table(file, rows);
    }

    /** Lenient about the number of cells, so that the complaint is ours and names the line. */
    private static CsvReader<CsvRecord> lenientReader(Reader text) {
        return CsvReader.builder()
                .commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text);
    }

    private static void checkHeader(String file, List<String> columns, CsvRecord header) {
        if (!header.getFields().equals(columns)) {
            throw new BrokenTable(
                    file,
                    header.getStartingLineNumber(),
                    "the columns are " + header.getFields() + " and should be " + columns);
        }
    }

    private static Row row(String file, List<String> columns, CsvRecord record) {
        List<String> fields = record.getFields().stream().map(String::strip).toList();
        long line = record.getStartingLineNumber();
        if (fields.size() != columns.size()) {
            throw new BrokenTable(file, line, "has " + fields.size() + " cells, not " + columns.size());
        }
        int blank = fields.indexOf("");
        if (blank >= 0) {
            throw new BrokenTable(file, line, "'" + columns.get(blank) + "' is blank; write - for none");
        }
        return new Row(file, line, columns, fields);
    }

    List<Row> rows() {
        return rows;
    }

    <T> List<T> map(Function<Row, T> each) {
        return rows.stream().map(each).toList();
    }

    /** @throws BrokenTable at the first row whose key an earlier row has */
    Table unique(Function<Row, String> key) {
        Set<String> seen = new HashSet<>();
        for (Row row : rows) {
            if (!seen.add(key.apply(row))) {
                throw row.broken("'" + key.apply(row) + "' is there twice");
            }
        }
        return this;
    }

    @Override
    public String toString() {
        return file + " (" + rows.size() + " rows)";
    }
}
