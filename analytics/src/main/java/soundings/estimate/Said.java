package soundings.estimate;

import java.util.Locale;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.history.Series;
import soundings.history.TankHistory;

/** Amounts in a caveat, as the keeper writes the test. */
final class Said {
    private Said() {}

    static Scale scale(TankHistory tank, Parameter parameter) {
        return tank.findSeries(parameter).map(Series::scale).orElseGet(() -> Scale.canonical(parameter));
    }

    /** @param finer digits more than the test's usual ones, for amounts a day */
    static String amount(double written, Scale scale, int finer) {
        return String.format(Locale.ROOT, "%." + (scale.decimals() + finer) + "f %s", written, scale.label())
                .strip();
    }
}
