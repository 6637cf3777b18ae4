package soundings.estimate;

import java.util.Locale;
import soundings.chemistry.Scale;
import soundings.quantity.Interval;

/** Amounts in a caveat, as the keeper writes the test. */
final class Said {
    private Said() {}

    /** {@code 3 to 9 ug/L}: of differences. */
    static String span(Interval written, Scale scale) {
        int decimals = scale.decimalsAt(Math.max(Math.abs(written.low()), Math.abs(written.high())));
        return String.format(
                        Locale.ROOT,
                        "%." + decimals + "f to %." + decimals + "f %s",
                        written.low(),
                        written.high(),
                        scale.label())
                .strip();
    }

    /** @param finer digits more than the test's usual ones, for amounts a day */
    static String amount(double written, Scale scale, int finer) {
        return String.format(Locale.ROOT, "%." + (scale.decimalsAt(written) + finer) + "f %s", written, scale.label())
                .strip();
    }
}
