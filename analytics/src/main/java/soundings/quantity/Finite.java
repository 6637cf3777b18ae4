package soundings.quantity;

/** Guards that keep NaN, infinity and negative zero out of values. */
public final class Finite {
    private Finite() {}

    /** @throws IllegalArgumentException when not finite */
    public static double checked(double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("a quantity is a finite number, not " + number);
        }
        return number + 0.0;
    }
}
