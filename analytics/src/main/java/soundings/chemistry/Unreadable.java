package soundings.chemistry;

/** Leaves a recipe where it stops making sense; caught in {@link Recipes#read} and nowhere else. */
final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String why;

    Unreadable(String why) {
        super(why, null, false, false);
        this.why = why;
    }

    String why() {
        return why;
    }
}
