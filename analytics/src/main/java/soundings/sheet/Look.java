package soundings.sheet;

/** How a cell looks: its number format and the marks a reader sees. Shared between the cells of one style. */
public record Look(String format, boolean bold, boolean struck, boolean hidden, boolean formula) {
    /** The look of a cell nobody formatted, and of every cell of a text file. */
    public static final Look PLAIN = new Look("General", false, false, false, false);
}
