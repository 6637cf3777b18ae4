package soundings.wording;

/** Which sign parts the whole from its fraction. */
public enum DecimalMark {
    POINT,
    COMMA,
    /** Nothing tells; a text such as {@code 12,345} then has two readings. */
    UNDECIDED
}
