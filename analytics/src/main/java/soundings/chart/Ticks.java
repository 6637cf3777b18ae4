package soundings.chart;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round values and days for axes. */
final class Ticks {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
    private static final DateTimeFormatter YEAR = DateTimeFormatter.ofPattern("MMM yy", Locale.ENGLISH);

    private Ticks() {}

    /** At most {@code most} values, 1, 2 or 5 times a power of ten apart. */
    static List<Double> values(Span span, int most) {
        double raw = (span.high() - span.low()) / most;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = raw <= power ? power : raw <= 2 * power ? 2 * power : raw <= 5 * power ? 5 * power : 10 * power;
        List<Double> ticks = new ArrayList<>();
        for (long n = (long) Math.ceil(span.low() / step - 1e-9); n * step <= span.high() + step * 1e-9; n++) {
            ticks.add(n * step);
        }
        return ticks;
    }

    /** Decimals that tell neighbouring ticks apart. */
    static int decimals(List<Double> ticks) {
        double step = ticks.size() > 1 ? ticks.get(1) - ticks.get(0) : 1;
        return Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
    }

    static List<Tick> days(LocalDate from, LocalDate until, int most) {
        long days = until.toEpochDay() - from.toEpochDay();
        for (int step : List.of(1, 2, 7, 14)) {
            if (days / step <= most) {
                return every(from, until, Period.ofDays(step), DAY);
            }
        }
        for (int step : List.of(1, 2, 3, 6, 12, 24)) {
            if (days / (30.4 * step) <= most || step == 24) {
                LocalDate first = from.getDayOfMonth() == 1
                        ? from
                        : from.withDayOfMonth(1).plusMonths(1);
                return every(first, until, Period.ofMonths(step), days > 330 ? YEAR : MONTH);
            }
        }
        return List.of();
    }

    private static List<Tick> every(LocalDate first, LocalDate until, Period step, DateTimeFormatter as) {
        List<Tick> ticks = new ArrayList<>();
        for (int n = 0; !first.plus(step.multipliedBy(n)).isAfter(until); n++) {
            LocalDate day = first.plus(step.multipliedBy(n));
            ticks.add(new Tick(day, as.format(day)));
        }
        return ticks;
    }

    record Tick(LocalDate day, String label) {}
}
