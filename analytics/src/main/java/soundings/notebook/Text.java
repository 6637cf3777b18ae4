package soundings.notebook;

/** Sentences joined from parts that may or may not end in a full stop. */
final class Text {
    private Text() {}

    /** With a capital and a full stop; nothing stays nothing. */
    static String sentence(String words) {
        String plain = words.strip();
        if (plain.isEmpty()) {
            return "";
        }
        boolean closed = ".!?".indexOf(plain.charAt(plain.length() - 1)) >= 0;
        return Figures.capital(plain) + (closed ? "" : ".");
    }

    /** Without its full stop, to stand inside another sentence. */
    static String clause(String words) {
        String plain = words.strip();
        return plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
    }
}
