package soundings.wording;

/**
 * One word, number or sign of a text.
 *
 * @param from first character, {@code to} one past the last; {@code text} in its plain form
 */
record Token(Kind kind, int from, int to, String text) {
    enum Kind {
        WORD,
        NUMBER,
        SIGN,
        LINE_END
    }

    boolean is(String wanted) {
        return text.equals(wanted);
    }

    boolean word() {
        return kind == Kind.WORD;
    }

    boolean number() {
        return kind == Kind.NUMBER;
    }
}
