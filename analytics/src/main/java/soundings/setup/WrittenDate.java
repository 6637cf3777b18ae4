package soundings.setup;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A date typed as text; one that may be day-first or month-first is a date only where the keeper has said which. */
final class WrittenDate {
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4})");

    private WrittenDate() {}

    static Optional<LocalDate> parse(String text, Optional<Boolean> dayFirst) {
        Matcher iso = ISO.matcher(text.strip());
        if (iso.matches()) {
            return date(part(iso, 1), part(iso, 2), part(iso, 3));
        }
        Matcher last = YEAR_LAST.matcher(text.strip());
        return last.matches() ? yearLast(part(last, 1), part(last, 2), part(last, 3), dayFirst) : Optional.empty();
    }

    private static Optional<LocalDate> yearLast(int first, int second, int year, Optional<Boolean> dayFirst) {
        if (dayFirst.isPresent() || first == second) {
            return dayFirst.orElse(true) ? date(year, second, first) : date(year, first, second);
        }
        Optional<LocalDate> asDayFirst = date(year, second, first);
        Optional<LocalDate> asMonthFirst = date(year, first, second);
        if (asDayFirst.isPresent() && asMonthFirst.isPresent()) {
            return Optional.empty();
        }
        return asDayFirst.or(() -> asMonthFirst);
    }

    private static int part(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }
}
