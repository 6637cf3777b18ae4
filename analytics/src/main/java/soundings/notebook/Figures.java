package soundings.notebook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import soundings.chemistry.Scale;
import soundings.quantity.Amount;
import soundings.quantity.Interval;

/** Numbers, units and days as they are printed; nothing here depends on the machine's language. */
public final class Figures {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    /** What a share of one is measured in. */
    private static final String ONE = "1";

    private static final Map<String, String> SHOWN = Map.of(
            ONE,
            "",
            "Cel",
            "°C",
            "uatm",
            "µatm",
            "ug/L",
            "µg/L",
            "umol/m2/s",
            "µmol/m²/s",
            "mol/m2/d",
            "mol/m²/d",
            "pH",
            "",
            "ph",
            "");

    private Figures() {}

    /** Half up, a true minus sign, no grouping: {@code −0.05}. */
    public static String number(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String digits = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "−" + digits : digits;
    }

    /** With a plus sign where positive, for changes. */
    public static String change(double value, int decimals) {
        String text = number(value, decimals);
        return value > 0 && !text.equals(number(0, decimals)) ? "+" + text : text;
    }

    /** {@code 8.1 (7.9 to 8.3)}. */
    public static String interval(Interval value, int decimals) {
        return number(value.mid(), decimals) + " (" + span(value, decimals) + ")";
    }

    /** {@code 7.9 to 8.3}. */
    public static String span(Interval value, int decimals) {
        return number(value.low(), decimals) + " to " + number(value.high(), decimals);
    }

    /** Decimals that show two digits of the interval's half width: more would be pretence, fewer would hide it. */
    public static int decimals(Interval value, int most) {
        double half = (value.high() - value.low()) / 2;
        if (half <= 0) {
            return most;
        }
        int digits = 1 - (int) Math.floor(Math.log10(half));
        return Math.max(0, Math.min(most, digits));
    }

    /** A level and where 9 of 10 such levels lie, as its keeper writes it: {@code 8.1 (7.9 to 8.3) dKH}. */
    static String level(Scale scale, Interval canonical) {
        Interval written = scale.written(canonical);
        return with(interval(written, scale.decimalsAt(written.mid())), scale.label());
    }

    /** A bound as its keeper writes it, with as few decimals as it needs. */
    static String bound(Scale scale, double canonical) {
        double written = scale.written(canonical);
        return number(written, scale.decimalsOf(written));
    }

    /** {@code 7 to 9.5 dKH}. */
    static String bounds(Scale scale, double low, double high) {
        return with(bound(scale, low) + " to " + bound(scale, high), scale.label());
    }

    /** {@code below 0.02 mg/L}. */
    static String amount(Scale scale, Amount canonical) {
        Amount written = canonical.on(scale::written);
        return with(amount(written, scale.decimalsAt(written.about())), scale.label());
    }

    public static String unit(String canonical) {
        return SHOWN.getOrDefault(canonical, canonical);
    }

    /** Whether a figure is a share, to be shown in hundredths. */
    public static boolean isShare(String unit) {
        return unit.equals(ONE);
    }

    /** {@code 8.1 dKH}; a quantity without a unit stands alone. */
    public static String with(String figure, String unit) {
        String shown = unit(unit);
        return shown.isEmpty() ? figure : figure + " " + shown;
    }

    public static String amount(Amount amount, int decimals) {
        return amount.match(
                e -> number(e.value(), atLeast(e.value(), decimals)),
                b -> "below " + number(b.limit(), atLeast(b.limit(), decimals)),
                a -> "above " + number(a.limit(), atLeast(a.limit(), decimals)),
                b -> "between " + number(b.low(), atLeast(b.low(), decimals)) + " and "
                        + number(b.high(), atLeast(b.high(), decimals)));
    }

    /** A reading is not rounded away: a value that the usual decimals would show as zero gets as many as it needs. */
    private static int atLeast(double value, int decimals) {
        boolean vanishes = value != 0 && Math.abs(value) < 0.5 * Math.pow(10, -decimals);
        return vanishes ? Math.min(6, 1 - (int) Math.floor(Math.log10(Math.abs(value)))) : decimals;
    }

    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    public static String month(YearMonth month) {
        return MONTH.format(month);
    }

    /** How sure, in words and in so many of a hundred. */
    public static String sure(double probability) {
        String words = probability >= 0.95
                ? "almost certain"
                : probability >= 0.8 ? "likely" : probability >= 0.6 ? "more likely than not" : "uncertain";
        long hundredths = Math.min(99, Math.max(1, Math.round(probability * 100)));
        return words + ", " + hundredths + " in 100";
    }

    /** The same in a narrow place: {@code 91 in 100}. */
    public static String sureShort(double probability) {
        return sure(probability).replaceAll("^.*, ", "");
    }

    /** {@code 1 reading}, {@code 2 readings}. */
    public static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** {@code alkalinity, calcium and magnesium}. */
    public static String list(java.util.List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    /** First letter as a capital, for a sentence's start. */
    public static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
