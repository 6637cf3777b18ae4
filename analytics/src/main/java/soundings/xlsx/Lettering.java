package soundings.xlsx;

import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The letters a workbook is set in, and the room they take: spreadsheets do not work out heights for a file they did not write. */
public final class Lettering {
    static final String FONT = "Arial";
    static final int POINTS = 10;
    /**
     * A column of width 1 with these letters, in points: one digit, which some spreadsheets round down to seven pixels of a 96th of an
     * inch (ECMA-376 part 1, 18.3.1.13) and some do not.
     */
    static final double LEAST_COLUMN = 5.25;

    static final double MOST_COLUMN = 5.56;

    /**
     * How far each sign from the space to the tilde reaches, in thousandths of the letters' size: the horizontal metrics of Liberation
     * Sans 2, an open font made to Arial's measure.
     */
    private static final int[] REACH = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556,
                556,
        556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556,
                833,
        722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500,
                556,
        556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500,
                334,
        260, 334, 584
    };

    private static final int REACH_OF_OTHERS = 580;
    private static final int REACH_OF_IDEOGRAPHS = 1000;
    private static final int FIRST_IDEOGRAPH = 0x2E80;
    private static final double BOLD = 1.07;
    /** What the edges of a cell take from its width, in column widths, and what is kept in hand for other printers and screens. */
    private static final double EDGES = 0.9;

    private static final double IN_HAND = 0.97;
    /** From one line to the next, in letter sizes. */
    private static final double LEADING = 1.28;
    /** The tallest row of a spreadsheet is 409 points. */
    private static final double TALLEST = 409;

    private Lettering() {}

    /** Makes these the letters of all cells that do not ask for others; column widths are measured in them. */
    static void use(XSSFWorkbook workbook) {
        XSSFFont usual = workbook.getFontAt(0);
        usual.setFontName(FONT);
        usual.setFontHeightInPoints((short) POINTS);
    }

    /**
     * How many lines a text takes in a column.
     *
     * @param width of the column, in characters
     */
    public static int lines(String text, double width) {
        return lines(text, width, Face.Part.BODY);
    }

    static int lines(String text, double width, Face.Part part) {
        double room = Math.max(1, (width - EDGES) * IN_HAND);
        int lines = 0;
        for (String line : text.split("\n", -1)) {
            lines += wrapped(line, room, part);
        }
        return lines;
    }

    private static int wrapped(String line, double room, Face.Part part) {
        if (width(line, part) <= room) {
            return 1;
        }
        int lines = 1;
        double used = 0;
        for (String word : line.split("(?<= )|(?<=-)")) {
            double reach = width(word, part);
            double shown = width(word.stripTrailing(), part);
            if (used > 0 && used + shown > room) {
                lines++;
                used = 0;
            }
            lines += (int) Math.max(0, Math.ceil(shown / room) - 1);
            used = shown > room ? shown % room : used + reach;
        }
        return lines;
    }

    /** How wide a column a text on one line takes, in characters. */
    static double width(String text, Face.Part part) {
        int thousandths = text.chars().map(Lettering::reach).sum();
        return thousandths / 1000.0 * part.points() * (part.isBold() ? BOLD : 1) / LEAST_COLUMN;
    }

    private static int reach(int sign) {
        int at = sign - ' ';
        return at >= 0 && at < REACH.length
                ? REACH[at]
                : sign >= FIRST_IDEOGRAPH ? REACH_OF_IDEOGRAPHS : REACH_OF_OTHERS;
    }

    /** The height in points of a row of so many lines. */
    static double height(int lines, Face.Part part) {
        return Math.min(TALLEST, Math.round((Math.max(1, lines) * part.points() * LEADING + 1) * 4) / 4.0);
    }
}
