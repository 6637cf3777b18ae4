package soundings.quantity;

/** A middle with its 90 % interval, {@code low <= mid <= high}; the unit is said by whoever holds it. */
public record Interval(double mid, double low, double high) {
    public Interval {
        mid = Finite.checked(mid);
        low = Finite.checked(low);
        high = Finite.checked(high);
        if (low > mid || mid > high) {
            throw new IllegalArgumentException(
                    "an interval runs low, mid, high; got " + low + ", " + mid + ", " + high);
        }
    }

    /** Two-sided 90 % points of a normal distribution. */
    public static Interval normal(double mean, double sd) {
        double reach = 1.6448536269514722 * sd;
        return new Interval(mean, mean - reach, mean + reach);
    }

    /** Multiplied through; a negative factor swaps the ends. */
    public Interval times(double factor) {
        double a = low * factor;
        double b = high * factor;
        return new Interval(mid * factor, Math.min(a, b), Math.max(a, b));
    }

    public Interval plus(double shift) {
        return new Interval(mid + shift, low + shift, high + shift);
    }
}
