package soundings.workbook;

import soundings.sheet.CellRef;

/**
 * How much one file may ask for. A year of daily tests is some ten thousand cells; the limits stand far above any log and
 * far below what would exhaust the machine. Rows and columns end where the OOXML spreadsheet grid ends.
 */
final class Limits {
    static final long FILE_BYTES = 128L << 20;
    static final long TEXT_FILE_BYTES = 48L << 20;
    static final long PART_BYTES = 256L << 20;
    static final long ALL_BYTES = 1L << 30;

    /** Beyond this much, a package that swells more than {@link #RATIO} times is taken for a bomb. */
    static final long RATIO_FROM_BYTES = 50L << 20;

    static final int RATIO = 100;
    static final int PARTS = 5_000;
    static final int CELLS = 10_000_000;
    static final int MERGES = 100_000;
    static final int ROWS = 1 << 20;
    static final int COLUMNS = 1 << 14;

    /** Twice what the OOXML grid allows in one cell: older programs and other grids went up to this. */
    static final int TEXT_LENGTH = 65_535;

    /** The longest stretch of XML bytes without a tag: a full cell text written wholly in character references. */
    static final int UNTAGGED_BYTES = 1 << 20;

    /** Cells that come from "repeat this" counts rather than from being written out. */
    static final int REPEATED_CELLS = 200_000;

    static final int XML_DEPTH = 200;

    private Limits() {}

    static String text(String text) {
        if (text.length() > TEXT_LENGTH) {
            throw Refusal.tooLarge("one of its cells holds " + text.length() + " characters");
        }
        return text;
    }

    static void cells(int count) {
        if (count > CELLS) {
            throw Refusal.tooLarge("it holds more than " + CELLS + " cells");
        }
    }

    static CellRef place(long row, long column) {
        if (row < 0 || row >= ROWS || column < 0 || column >= COLUMNS) {
            throw Refusal.tooLarge("it has a cell in row " + (row + 1) + ", column " + (column + 1));
        }
        return new CellRef((int) row, (int) column);
    }
}
