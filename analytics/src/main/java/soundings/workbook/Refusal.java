package soundings.workbook;

/** Why reading stopped, before the file's name is put in front: reads on from "The file … ". */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final boolean passwordWanted;

    private Refusal(String reason, boolean passwordWanted) {
        super(reason, null, false, false);
        this.passwordWanted = passwordWanted;
    }

    static Refusal because(String reason) {
        return new Refusal(reason, false);
    }

    static Refusal damaged(String what) {
        return because("is damaged or cut off (" + what
                + "). Open it in your spreadsheet program, save it again, and try once more.");
    }

    static Refusal tooLarge(String what) {
        return because("is refused because " + what
                + ", far more than a log needs. Copy the sheets you need into a new workbook.");
    }

    static Refusal password(String what) {
        return new Refusal(what, true);
    }

    UnreadableWorkbook naming(String fileName) {
        return new UnreadableWorkbook("The file '" + fileName + "' " + getMessage(), passwordWanted);
    }
}
