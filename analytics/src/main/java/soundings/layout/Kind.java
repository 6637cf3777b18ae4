package soundings.layout;

/** What a cell looks like by itself. */
enum Kind {
    /** A number, or a text that is an amount. */
    NUMBER,
    /** A moment, or a text that is a date. */
    DATE,
    /** A word for "no result", or a ditto mark. */
    NOTHING,
    /** A text that a header could hold: a parameter, a role. */
    LABEL,
    /** A unit by itself. */
    UNIT,
    /** An error value, a yes or no. */
    FAULT,
    /** Any other text. */
    WORDS;

    boolean data() {
        return this == NUMBER || this == DATE || this == NOTHING || this == FAULT;
    }

    boolean label() {
        return this == LABEL || this == UNIT;
    }
}
