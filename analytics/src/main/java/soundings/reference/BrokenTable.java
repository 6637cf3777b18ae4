package soundings.reference;

/** A fact table that does not hold what it must: the file, the line and what would be valid. Our own mistake, never a keeper's. */
public final class BrokenTable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    BrokenTable(String file, long line, String message) {
        super(file + ":" + line + ": " + message);
    }
}
