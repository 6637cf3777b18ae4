package soundings.layout;

import java.util.List;
import java.util.Optional;
import soundings.sheet.Cell;

/** The non-empty cells of one row of an {@link Area}, from left to right. Never empty. */
record Line(int row, List<Cell> cells) {

    Optional<Cell> at(int column) {
        int low = 0;
        int high = cells.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int here = cells.get(middle).at().column();
            if (here == column) {
                return Optional.of(cells.get(middle));
            }
            if (here < column) {
                low = middle + 1;
            } else {
                high = middle - 1;
            }
        }
        return Optional.empty();
    }

    int firstColumn() {
        return cells.get(0).at().column();
    }

    int lastColumn() {
        return cells.get(cells.size() - 1).at().column();
    }

    /** The cells of columns {@code from} to {@code to}, both included; empty when there is none. */
    Optional<Line> between(int from, int to) {
        if (from <= firstColumn() && to >= lastColumn()) {
            return Optional.of(this);
        }
        List<Cell> kept = cells.stream()
                .filter(c -> c.at().column() >= from && c.at().column() <= to)
                .toList();
        return kept.isEmpty() ? Optional.empty() : Optional.of(new Line(row, kept));
    }
}
