package soundings.sheet;

import java.util.Comparator;

/** A cell's place in its sheet, counted from zero; prints in A1 notation. */
public record CellRef(int row, int column) implements Comparable<CellRef> {
    private static final Comparator<CellRef> ORDER =
            Comparator.comparingInt(CellRef::row).thenComparingInt(CellRef::column);

    public CellRef {
        if (row < 0 || column < 0) {
            throw new IllegalArgumentException(
                    "a cell stands at row and column zero or above, not " + row + ", " + column);
        }
    }

    /** Reads {@code "C14"} (also {@code "$C$14"}). */
    public static CellRef parse(String a1) {
        int column = 0;
        int row = 0;
        for (int i = 0; i < a1.length(); i++) {
            char c = a1.charAt(i);
            if (c >= 'A' && c <= 'Z' && row == 0) {
                column = column * 26 + (c - 'A' + 1);
            } else if (c >= 'a' && c <= 'z' && row == 0) {
                column = column * 26 + (c - 'a' + 1);
            } else if (c >= '0' && c <= '9') {
                row = row * 10 + (c - '0');
            } else if (c != '$') {
                throw new IllegalArgumentException("not a cell address: " + a1);
            }
        }
        return new CellRef(row - 1, column - 1);
    }

    /** The letters of a column counted from zero: 0 is A, 26 is AA. */
    public static String letters(int column) {
        String rest = column < 26 ? "" : letters(column / 26 - 1);
        return rest + (char) ('A' + column % 26);
    }

    @Override
    public int compareTo(CellRef other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return letters(column) + (row + 1);
    }
}
