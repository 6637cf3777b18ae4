package soundings.advice;

import java.util.Locale;
import soundings.chemistry.Parameter;
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

    static String amount(double value, Parameter parameter) {
        return number(value, parameter.decimals()) + unit(parameter);
    }

    static String between(Interval interval, Parameter parameter) {
        return number(interval.mid(), parameter.decimals()) + unit(parameter) + " ("
                + number(interval.low(), parameter.decimals()) + " to "
                + number(interval.high(), parameter.decimals()) + ")";
    }

    static String unit(Parameter parameter) {
        return switch (parameter.unit()) {
            case "Cel" -> " \u00b0C";
            case "pH" -> "";
            default -> " " + parameter.unit();
        };
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

    static String name(Parameter parameter) {
        return parameter.id().equals("ph") ? "pH" : parameter.name().toLowerCase(Locale.ROOT);
    }

    static String days(long days) {
        return days == 1 ? "1 day" : days + " days";
    }
}
