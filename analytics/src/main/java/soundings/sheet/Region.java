package soundings.sheet;

/** A rectangle of cells, both corners inside it; also a merged area. */
public record Region(CellRef first, CellRef last) {
    public Region {
        if (last.row() < first.row() || last.column() < first.column()) {
            throw new IllegalArgumentException("the last cell " + last + " stands before the first " + first);
        }
    }

    public boolean contains(int row, int column) {
        return row >= first.row() && row <= last.row() && column >= first.column() && column <= last.column();
    }

    @Override
    public String toString() {
        return first + ":" + last;
    }
}
