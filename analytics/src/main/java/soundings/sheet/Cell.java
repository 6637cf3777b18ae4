package soundings.sheet;

/** One non-empty cell. {@code comment} is the note pinned to it, empty where there is none. */
public record Cell(CellRef at, Value value, Look look, String comment) {
    public static Cell of(int row, int column, Value value) {
        return new Cell(new CellRef(row, column), value, Look.PLAIN, "");
    }

    /** The cell as its reader sees it, as far as the number format is understood. */
    public String shown() {
        return ShownText.of(value, look);
    }
}
