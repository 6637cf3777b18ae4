package soundings.xlsx;

import org.apache.poi.ss.usermodel.Row;

/** The height a row of wrapped text needs: spreadsheets do not work it out for a file they did not write. */
public final class RowHeight {
    private static final float LINE_POINTS = 15f;
    /**
     * Columns are measured in digits, and letters are narrower on the whole; words that break before the edge take most of that
     * back. Seen in print, with a little to spare.
     */
    private static final double FILL = 1.05;

    private static final int MOST_LINES = 27;

    private RowHeight() {}

    /** @param width of the column, in characters */
    public static int lines(String text, double width) {
        int lines = 0;
        for (String line : text.split("\n", -1)) {
            lines += Math.max(1, (int) Math.ceil(line.length() / (width * FILL)));
        }
        return Math.min(MOST_LINES, lines);
    }

    public static void set(Row row, int lines) {
        row.setHeightInPoints(points(lines));
    }

    static float points(int lines) {
        return Math.max(1, lines) * LINE_POINTS + 1;
    }
}
