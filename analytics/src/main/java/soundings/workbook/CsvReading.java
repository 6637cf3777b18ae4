package soundings.workbook;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soundings.sheet.Book;
import soundings.sheet.Book.Caveat;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Look;
import soundings.sheet.Value;

/** A text table as a book of one sheet. Every field stays the text it is: what looks like a number or a date is not decided here. */
final class CsvReading {
    private static final Map<Character, String> NAMES =
            Map.of(';', "semicolons", ',', "commas", '\t', "tabs", '|', "upright bars");

    private CsvReading() {}

    static Book read(String name, byte[] file) {
        if (file.length > Limits.TEXT_FILE_BYTES) {
            throw Refusal.tooLarge("it is a text file of " + (file.length >> 20) + " MB");
        }
        Charset charset = Charsets.of(file);
        String text = Charsets.decode(file, charset);
        boolean toldSeparator = text.regionMatches(true, 0, "sep=", 0, 4) && text.length() > 4;
        Dialect dialect = toldSeparator ? new Dialect(text.charAt(4), true) : Dialect.of(text);
        List<Cell> cells = cells(dialect.records(text), toldSeparator ? 1 : 0);
        String read = "Read as " + charset.name() + " text with fields separated by "
                + NAMES.getOrDefault(dialect.separator(), "'" + dialect.separator() + "'")
                + (dialect.quotes() ? "." : "; quotation marks stand for themselves.");
        return new Book(name, List.of(Grid.of(stem(name), false, cells, List.of())), List.of(new Caveat("", read)));
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private static List<Cell> cells(List<List<String>> records, int from) {
        List<Cell> cells = new ArrayList<>();
        for (int row = from; row < records.size(); row++) {
            List<String> fields = records.get(row);
            for (int column = 0; column < fields.size(); column++) {
                if (!fields.get(column).isEmpty()) {
                    CellRef at = Limits.place(row, column);
                    cells.add(new Cell(at, new Value.Text(Limits.text(fields.get(column))), Look.PLAIN, ""));
                }
            }
            Limits.cells(cells.size());
        }
        return cells;
    }
}
