package soundings.wording;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.WeekFields;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Weeks by their number, as ISO 8601 counts them: {@code 2026-W14}, {@code 2026-W14-3}, {@code KW 14/2026}. */
final class Weeks {
    private static final String WORD = "(?:w|wk|week|kw|woche|sem|semaine|semana)";
    private static final Pattern YEAR_FIRST =
            Pattern.compile("([0-9]{4})[-/ ]*" + WORD + "[. ]*([0-9]{1,2})(?:-([1-7]))?");
    private static final Pattern WEEK_FIRST = Pattern.compile(WORD + "[. ]*([0-9]{1,2})[-/, ]+([0-9]{4})");
    private static final Pattern ALONE = Pattern.compile(WORD + "[. ]*[0-9]{1,2}");

    private Weeks() {}

    /** The day, or all seven days where it is not said which. */
    static Optional<WrittenDate> read(String plain) {
        Matcher year = YEAR_FIRST.matcher(plain);
        if (year.matches()) {
            return week(year.group(1), year.group(2))
                    .map(monday -> year.group(3) == null
                            ? whole(monday)
                            : day(monday.plusDays(Integer.parseInt(year.group(3)) - 1L)));
        }
        Matcher week = WEEK_FIRST.matcher(plain);
        return week.matches() ? week(week.group(2), week.group(1)).map(Weeks::whole) : Optional.empty();
    }

    private static Optional<LocalDate> week(String year, String number) {
        int week = Integer.parseInt(number);
        LocalDate inYear = LocalDate.of(Integer.parseInt(year), 1, 4);
        boolean exists = week >= 1
                && week
                        <= IsoFields.WEEK_OF_WEEK_BASED_YEAR
                                .rangeRefinedBy(inYear)
                                .getMaximum();
        return exists
                ? Optional.of(
                        inYear.with(WeekFields.ISO.weekOfWeekBasedYear(), week).with(DayOfWeek.MONDAY))
                : Optional.empty();
    }

    private static WrittenDate day(LocalDate day) {
        return WrittenDate.certain(day, Optional.empty(), WrittenDate.Origin.TEXT, 0.95);
    }

    private static WrittenDate whole(LocalDate monday) {
        return new WrittenDate(
                WrittenDate.everyOrder(PartialDate.of(monday)),
                WrittenDate.everyOrder(PartialDate.of(monday.plusDays(6))),
                Optional.empty(),
                Optional.empty(),
                WrittenDate.Origin.TEXT,
                0.95);
    }

    /** Why a week's number alone is no day. */
    static Optional<String> missing(String plain) {
        return ALONE.matcher(plain).matches()
                ? Optional.of("it is a week's number; of which year and on which day is not said")
                : Optional.empty();
    }
}
