package soundings.xlsx;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import soundings.notebook.Cell;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;

/** How wide the columns of a sheet are, in characters, for all tables that stand on it one below the other. */
final class ColumnWidths {
    private static final int NARROWEST = 9;
    private static final int WIDEST = 46;
    /** Text is not pressed into a column narrower than this. */
    private static final int NARROW_TEXT = 14;
    /** Text longer than this is read in lines however wide its column is. */
    private static final int MOST_WANTED = 100;
    /** A sheet of paper held upright shows so many characters in a size that can be read. */
    private static final int READABLE = 120;
    /** Widths are judged by the first rows; a longer text further down is wrapped. */
    private static final int LOOKED_AT = 150;
    /** What parts a number from the text to its right. */
    static final int INDENT = 1;

    private static final int EDGES = 2;

    private final int[] least;
    private final int[] wished;
    private final double[] usual;

    private ColumnWidths(int columns) {
        least = new int[columns];
        wished = new int[columns];
        usual = new double[columns];
        Arrays.fill(least, NARROWEST);
        Arrays.fill(wished, NARROWEST);
    }

    static List<Integer> of(List<TableItem> tables) {
        int most = tables.stream().mapToInt(t -> t.columns().size()).max().orElse(0);
        ColumnWidths widths = new ColumnWidths(most);
        tables.forEach(widths::look);
        return widths.fitted();
    }

    /** Text of a table with columns to spare wishes for no wide column: it may run over several, see {@link #spans}. */
    private void look(TableItem table) {
        for (int c = 0; c < table.columns().size(); c++) {
            int width = width(table, c);
            boolean text = isText(table.columns().get(c));
            boolean runsOver = text && table.columns().size() < least.length;
            least[c] = Math.max(least[c], text ? Math.min(width, NARROW_TEXT) : width);
            wished[c] = Math.max(wished[c], runsOver ? Math.min(width, NARROW_TEXT) : width);
            usual[c] = Math.max(usual[c], runsOver ? 0 : usual(table, c));
        }
    }

    /** On a page too wide for paper text columns are narrowed, the least where most text usually stands. */
    private List<Integer> fitted() {
        int room = READABLE - Arrays.stream(least).sum();
        double all = Math.max(
                1, IntStream.range(0, least.length).mapToDouble(this::wanted).sum());
        boolean fits = Arrays.stream(wished).sum() <= READABLE;
        return IntStream.range(0, least.length)
                .map(c ->
                        fits ? wished[c] : Math.min(wished[c], least[c] + (int) (Math.max(0, room) * wanted(c) / all)))
                .boxed()
                .toList();
    }

    private double wanted(int column) {
        return wished[column] <= least[column] ? 0 : Math.min(MOST_WANTED, Math.max(1, usual[column] - NARROW_TEXT));
    }

    /** How many of the page's columns each of a table's takes: those to spare go where text has the least room. */
    static int[] spans(TableItem table, List<Integer> widths) {
        int[] spans = new int[table.columns().size()];
        Arrays.fill(spans, 1);
        boolean more = true;
        while (more && Arrays.stream(spans).sum() < widths.size()) {
            int[] now = spans.clone();
            List<Integer> better = IntStream.range(0, spans.length)
                    .boxed()
                    .filter(c -> tightness(table, c, room(widths, now, c)) > 1)
                    .sorted(Comparator.comparingDouble(c -> -tightness(table, c, room(widths, now, c))))
                    .filter(c -> numbersFit(table, widths, widened(now, c)))
                    .limit(1)
                    .toList();
            more = !better.isEmpty();
            spans = more ? widened(spans, better.get(0)) : spans;
        }
        return spans;
    }

    private static int[] widened(int[] spans, int column) {
        int[] wider = spans.clone();
        wider[column]++;
        return wider;
    }

    /** How often the longest text of a column would fill its room. */
    private static double tightness(TableItem table, int column, int room) {
        return isText(table.columns().get(column)) ? longest(table, column) / (room - EDGES) : 0;
    }

    private static boolean numbersFit(TableItem table, List<Integer> widths, int[] spans) {
        return IntStream.range(0, spans.length)
                .filter(c -> !isText(table.columns().get(c)))
                .allMatch(c -> room(widths, spans, c) >= width(table, c));
    }

    private static int room(List<Integer> widths, int[] spans, int column) {
        int at = Arrays.stream(spans, 0, column).sum();
        return widths.subList(at, at + spans[column]).stream()
                .mapToInt(Integer::intValue)
                .sum();
    }

    static boolean isText(Column column) {
        return column.kind() == Kind.WORDS || column.kind() == Kind.ANSWER;
    }

    /** How long a column's texts usually are. */
    private static double usual(TableItem table, int column) {
        return table.columns().get(column).kind() == Kind.ANSWER
                ? WIDEST
                : table.rows().stream()
                        .limit(LOOKED_AT)
                        .mapToInt(r -> text(r.cells().get(column)).length())
                        .average()
                        .orElse(0);
    }

    static String text(Cell cell) {
        return cell.match(Cell.Words::text, n -> "", r -> "", d -> "", s -> "");
    }

    private static int width(TableItem table, int column) {
        Column of = table.columns().get(column);
        if (of.kind() == Kind.ANSWER) {
            return of.heading().length() > 4 ? WIDEST - 6 : 14;
        }
        double header = widest(Flat.header(of), " ", Face.Part.HEADER);
        double widest = Math.max(header, longest(table, column)) + EDGES + (isText(of) ? 0 : INDENT);
        return (int) Math.ceil(Math.min(WIDEST, widest));
    }

    private static double longest(TableItem table, int column) {
        return table.rows().stream()
                .limit(LOOKED_AT)
                .mapToDouble(r -> reach(r.cells().get(column), table.columns().get(column)))
                .max()
                .orElse(0);
    }

    /** The width a cell takes on one line. */
    private static double reach(Cell cell, Column column) {
        return cell.match(
                words -> widest(words.text(), isText(column) ? "\n" : "\\s", Face.Part.BODY),
                n -> reach(n.value(), n.decimals(), n.unit().equals(column.unit()) ? "" : n.unit()),
                r -> reach(r.value().mid(), r.decimals(), r.unit()),
                d -> Lettering.width("2026-12-30", Face.Part.BODY),
                s -> 0.0);
    }

    private static double reach(double value, int decimals, String unit) {
        return Lettering.width(Figures.with(Figures.number(value, decimals), unit), Face.Part.BODY);
    }

    private static double widest(String text, String between, Face.Part part) {
        return Arrays.stream(text.split(between))
                .mapToDouble(t -> Lettering.width(t, part))
                .max()
                .orElse(0);
    }
}
