package soundings.xlsx;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import soundings.notebook.Cell;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.Tone;

/** A flat table on a page: a header row and a row each. */
final class TableRows {
    private static final int NARROWEST = 10;
    private static final int WIDEST = 46;
    /** Text is not pressed into a column narrower than this, in characters. */
    private static final int NARROW_TEXT = 14;
    /** Text longer than this is read in lines however wide its column is. */
    private static final int MOST_WANTED = 100;
    /** A page of A4 across shows so many characters in a size that can be read. */
    private static final int READABLE = 165;
    /** Widths are judged by the first rows; a longer text further down is wrapped. */
    private static final int LOOKED_AT = 150;

    private final Page page;
    private final TableItem table;

    private TableRows(Page page, TableItem table) {
        this.page = page;
        this.table = table;
    }

    /** Writes the table and returns the row its header stands in, counted from zero. */
    static int write(Page page, TableItem table) {
        TableRows writing = new TableRows(page, table);
        int header = writing.header();
        table.rows().forEach(writing::row);
        return header;
    }

    private int header() {
        int lines = 1;
        for (int c = 0; c < table.columns().size(); c++) {
            lines = Math.max(lines, RowHeight.lines(Flat.header(table.columns().get(c)), page.width(c) - 2));
        }
        SheetRows rows = page.rows().next(lines);
        for (int c = 0; c < table.columns().size(); c++) {
            String text = Flat.header(table.columns().get(c));
            rows.words(
                    c,
                    text,
                    page.faces().of(Face.words(headerPart(table.columns().get(c)), Tone.PLAIN, text)));
        }
        return rows.row();
    }

    private static Face.Part headerPart(Column column) {
        return column.kind() == Kind.NUMBER || column.kind() == Kind.DATE ? Face.Part.HEADER_RIGHT : Face.Part.HEADER;
    }

    private void row(TableItem.Row row) {
        page.rows().next(lines(row));
        for (int c = 0; c < row.cells().size(); c++) {
            put(c, row.cells().get(c), table.columns().get(c));
        }
    }

    private int lines(TableItem.Row row) {
        int lines = 1;
        for (int c = 0; c < row.cells().size(); c++) {
            lines = Math.max(lines, RowHeight.lines(text(row.cells().get(c)), page.width(c)));
        }
        boolean answered = table.columns().stream().anyMatch(column -> column.kind() == Kind.ANSWER);
        return answered ? Math.max(3, lines) : lines;
    }

    private static String text(Cell cell) {
        return cell.match(Cell.Words::text, n -> "", r -> "", d -> "", s -> "");
    }

    private void put(int at, Cell cell, Column column) {
        Face.Part part = column.kind() == Kind.ANSWER ? Face.Part.ANSWER : Face.Part.BODY;
        SheetRows rows = page.rows();
        boolean done = cell.match(
                words -> words(at, words, part),
                n -> rows.number(at, n.value(), face(n.decimals(), n.unit(), column, part)) != null,
                r -> rows.number(at, r.value().mid(), face(r.decimals(), r.unit(), column, part)) != null,
                day -> rows.day(at, day.on(), page.faces().of(Face.day(part))) != null,
                spark -> rows.blank(at, page.faces().of(part)) != null);
        assert done;
    }

    private boolean words(int at, Cell.Words words, Face.Part part) {
        page.rows().words(at, words.text(), page.faces().of(Face.words(part, words.tone(), words.text())));
        page.link(at, words.target());
        return true;
    }

    private int face(int decimals, String unit, Column column, Face.Part part) {
        String shown = unit.equals(column.unit()) ? "" : unit;
        return page.faces().of(Face.number(part, decimals, Figures.unit(shown)));
    }

    /** Column widths that suit all of these tables at once. */
    static List<Integer> widths(List<TableItem> tables) {
        int most = tables.stream().mapToInt(t -> t.columns().size()).max().orElse(0);
        int[] widths = new int[most];
        double[] usual = new double[most];
        Arrays.fill(widths, NARROWEST);
        for (TableItem table : tables) {
            for (int c = 0; c < table.columns().size(); c++) {
                widths[c] = Math.max(widths[c], width(table, c));
                usual[c] = Math.max(usual[c], usual(table, c));
            }
        }
        return fitted(widths, usual);
    }

    /** On a page too wide to be read on paper columns are narrowed, the least where most text usually stands. */
    private static List<Integer> fitted(int[] widths, double[] usual) {
        boolean fits = Arrays.stream(widths).sum() <= READABLE;
        int room = READABLE
                - Arrays.stream(widths).map(w -> Math.min(w, NARROW_TEXT)).sum();
        double all = Math.max(
                1,
                IntStream.range(0, widths.length)
                        .mapToDouble(c -> wanted(widths[c], usual[c]))
                        .sum());
        return IntStream.range(0, widths.length)
                .map(c -> fits || widths[c] <= NARROW_TEXT
                        ? widths[c]
                        : NARROW_TEXT + (int) (Math.max(0, room) * wanted(widths[c], usual[c]) / all))
                .boxed()
                .toList();
    }

    private static double wanted(int width, double usual) {
        return width <= NARROW_TEXT ? 0 : Math.min(MOST_WANTED, Math.max(1, usual - NARROW_TEXT));
    }

    private static double usual(TableItem table, int column) {
        Column of = table.columns().get(column);
        return of.kind() == Kind.ANSWER
                ? WIDEST
                : table.rows().stream()
                        .limit(LOOKED_AT)
                        .mapToInt(r -> text(r.cells().get(column)).length())
                        .average()
                        .orElse(0);
    }

    private static int width(TableItem table, int column) {
        Column of = table.columns().get(column);
        if (of.kind() == Kind.ANSWER) {
            return of.heading().length() > 4 ? WIDEST - 6 : 14;
        }
        int longest = table.rows().stream()
                .limit(LOOKED_AT)
                .mapToInt(r -> length(r.cells().get(column), of))
                .max()
                .orElse(0);
        int header = longestWord(Flat.header(of)) + 4;
        return Math.min(WIDEST, Math.max(header, longest + 2));
    }

    private static int length(Cell cell, Column column) {
        return cell.match(
                words -> Arrays.stream(words.text().split("\n"))
                        .mapToInt(String::length)
                        .max()
                        .orElse(0),
                n -> 8 + (n.unit().equals(column.unit()) ? 0 : n.unit().length() + 1),
                r -> 8 + r.unit().length(),
                d -> 10,
                s -> 0);
    }

    private static int longestWord(String text) {
        return Arrays.stream(text.split(" ")).mapToInt(String::length).max().orElse(0);
    }
}
