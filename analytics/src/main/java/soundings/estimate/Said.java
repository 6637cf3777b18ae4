package soundings.estimate;

import java.util.Locale;
import soundings.chemistry.Scale;

/** Amounts in a caveat, as the keeper writes the test. */
final class Said {
    private Said() {}

    /** @param finer digits more than the test's usual ones, for amounts a day */
    static String amount(double written, Scale scale, int finer) {
        return String.format(Locale.ROOT, "%." + (scale.decimalsAt(written) + finer) + "f %s", written, scale.label())
                .strip();
    }
}
