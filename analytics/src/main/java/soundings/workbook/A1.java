package soundings.workbook;

import java.util.Optional;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Cell addresses as files write them, checked against the grid before anything is kept. */
final class A1 {
    private A1() {}

    /** Empty for what is no address; refused for one outside the grid. */
    static Optional<CellRef> find(String address) {
        long column = column(address);
        long row = row(address);
        return column == 0 || row == 0 ? Optional.empty() : Optional.of(Limits.place(row - 1, column - 1));
    }

    /** Column counted from one, zero if there are no letters. */
    static long column(String address) {
        long column = 0;
        for (int i = 0; i < address.length() && column < Integer.MAX_VALUE; i++) {
            int letter = (address.charAt(i) | 0x20) - 'a' + 1;
            if (letter >= 1 && letter <= 26) {
                column = column * 26 + letter;
            } else if (address.charAt(i) != '$') {
                break;
            }
        }
        return column;
    }

    /** Row counted from one, zero if the address does not end in digits. */
    static long row(String address) {
        long row = 0;
        for (int i = 0; i < address.length() && row < Integer.MAX_VALUE; i++) {
            int digit = address.charAt(i) - '0';
            if (digit >= 0 && digit <= 9) {
                row = row * 10 + digit;
            } else if (row > 0) {
                return 0;
            }
        }
        return row;
    }

    /** An area such as {@code A1:C1}; a single cell is an area of one. */
    static Optional<Region> findRegion(String area) {
        int colon = area.indexOf(':');
        Optional<CellRef> first = find(colon < 0 ? area : area.substring(0, colon));
        Optional<CellRef> last = find(colon < 0 ? area : area.substring(colon + 1));
        return first.flatMap(a -> last.map(b -> spanning(a, b)));
    }

    private static Region spanning(CellRef a, CellRef b) {
        return new Region(
                new CellRef(Math.min(a.row(), b.row()), Math.min(a.column(), b.column())),
                new CellRef(Math.max(a.row(), b.row()), Math.max(a.column(), b.column())));
    }
}
