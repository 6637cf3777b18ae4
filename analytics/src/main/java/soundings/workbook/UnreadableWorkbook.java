package soundings.workbook;

/** A file that cannot be read as a workbook. The message is one sentence for the keeper: which file, what is wrong, what to do. */
public final class UnreadableWorkbook extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean passwordWanted;

    UnreadableWorkbook(String message, boolean passwordWanted) {
        super(message);
        this.passwordWanted = passwordWanted;
    }

    /** Whether another password could open it. */
    public boolean passwordWanted() {
        return passwordWanted;
    }
}
