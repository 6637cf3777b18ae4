package soundings.advice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.quantity.Interval;

/** Numbers in the sentences of a reason; in a fixed notation, in the parameter's own digits. */
final class Phrases {
    private Phrases() {}

    static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** At least two digits that count, for amounts a day, which may be far smaller than the level. */
    static String small(double value) {
        return significant(value, 2);
    }

    private static String significant(double value, int digits) {
        double size = Math.abs(value);
        int decimals = size == 0 ? 0 : Math.max(0, digits - 1 - (int) Math.floor(Math.log10(size)));
        return number(value, Math.min(decimals, 7));
    }

    /** As few decimals as a bound or a reading needs: {@code 2}, {@code 0.02}. */
    static String bare(double value) {
        BigDecimal plain =
                BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
        return number(value, Math.max(0, plain.scale()));
    }

    /** {@code 2 to 15 mg/L}, of canonical bounds, as the keeper writes them. */
    static String range(double low, double high, Scale scale) {
        return bound(low, scale) + " to " + bound(high, scale) + unit(scale);
    }

    /** {@code 8.15 dKH}. */
    static String level(double canonical, Scale scale) {
        return bound(canonical, scale) + unit(scale);
    }

    private static String bound(double canonical, Scale scale) {
        double written = scale.written(canonical);
        return number(written, scale.decimalsOf(written));
    }

    /** Amounts a day, all three with the decimals that show two digits of the interval's half width. */
    static String rate(Interval written, Scale scale) {
        int decimals = decimals(written);
        return number(written.mid(), decimals) + unit(scale) + " a day (" + span(written, decimals) + ")";
    }

    static String span(Interval interval, int decimals) {
        return number(interval.low(), decimals) + " to " + number(interval.high(), decimals);
    }

    static int decimals(Interval interval) {
        double half = (interval.high() - interval.low()) / 2;
        double size = Math.max(half, Math.abs(interval.mid()) / 50);
        return size > 0 ? Math.min(6, Math.max(0, 1 - (int) Math.floor(Math.log10(size)))) : 0;
    }

    /** Volumes told beside one another: with the decimals that tell the nearest two of them apart, one more than a pump can be set to at most. */
    static int decimals(double present, Interval keeps) {
        double apart = Math.min(
                apart(keeps.high(), keeps.low()), Math.min(apart(present, keeps.low()), apart(present, keeps.high())));
        int needed = (int) Math.ceil(-Math.log10(apart));
        int usual = keeps.mid() >= 100 ? 0 : keeps.mid() >= 10 ? 1 : 2;
        return Math.max(usual, Math.min(3, needed));
    }

    private static double apart(double a, double b) {
        return a == b ? 1 : Math.abs(a - b);
    }

    static String amount(double written, Scale scale) {
        return number(written, scale.decimalsAt(written)) + unit(scale);
    }

    static String between(Interval canonical, Scale scale) {
        Interval level = scale.written(canonical);
        int decimals = scale.decimalsAt(level.mid());
        return number(level.mid(), decimals) + unit(scale) + " (" + span(level, decimals) + ")";
    }

    static String unit(Scale scale) {
        return scale.label().equals("pH") ? "" : " " + scale.label();
    }

    static String percent(double probability) {
        double p = 100 * probability;
        return p < 1 ? "under 1 %" : p > 99 ? "over 99 %" : Math.round(p) + " %";
    }

    static String ml(double ml) {
        return millilitres(ml) + " mL";
    }

    /** Three digits that count; a pump is set no finer. */
    static String millilitres(double ml) {
        return significant(ml, 3);
    }

    /** Inside a sentence; a symbol keeps its letters: {@code pH}, {@code total ammonia (as N)}. */
    static String name(Parameter parameter) {
        String name = parameter.name();
        boolean word = name.length() > 1 && Character.isLowerCase(name.charAt(1));
        return word ? name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1) : name;
    }

    static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
