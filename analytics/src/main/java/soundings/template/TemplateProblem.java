package soundings.template;

/** A template that cannot be run: the message names the template, the line and what would be valid. */
public final class TemplateProblem extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public TemplateProblem(String message) {
        super(message);
    }

    /** {@code line} below 1: not known. */
    public static TemplateProblem at(String template, int line, String message) {
        return new TemplateProblem(template + (line < 1 ? ": " : ", line " + line + ": ") + message);
    }
}
