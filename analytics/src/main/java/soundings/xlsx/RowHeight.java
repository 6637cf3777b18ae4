package soundings.xlsx;

import org.apache.poi.ss.usermodel.Row;

/** The height a row of wrapped text needs: spreadsheets do not work it out for a file they did not write. */
public final class RowHeight {
    private static final float LINE_POINTS = 15f;
    /** Words break before the edge, so a line holds less than the column's width; a guess on the safe side. */
    private static final double FILL = 0.9;

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
