package soundings.wording;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.Year;
import java.util.Optional;
import java.util.OptionalInt;

/** A day whose year may not be written. */
public record PartialDate(OptionalInt year, int month, int day) {
    public PartialDate {
        MonthDay any = MonthDay.of(month, day);
        if (year.isPresent() && !any.isValidYear(year.getAsInt())) {
            throw new DateTimeException("no 29 February in " + year.getAsInt());
        }
    }

    /** Empty when there is no such day. */
    static Optional<PartialDate> of(OptionalInt year, int month, int day) {
        boolean plain = month >= 1 && month <= 12 && day >= 1 && day <= 31;
        boolean exists = plain && day <= java.time.Month.of(month).maxLength();
        boolean inYear = exists && (year.isEmpty() || month != 2 || day < 29 || Year.isLeap(year.getAsInt()));
        return inYear ? Optional.of(new PartialDate(year, month, day)) : Optional.empty();
    }

    static PartialDate of(LocalDate date) {
        return new PartialDate(OptionalInt.of(date.getYear()), date.getMonthValue(), date.getDayOfMonth());
    }

    /** The full date; empty without a year. */
    public Optional<LocalDate> date() {
        return year.isPresent() ? Optional.of(LocalDate.of(year.getAsInt(), month, day)) : Optional.empty();
    }

    /** In this year; 29 February falls back to the 28th. */
    LocalDate inYear(int someYear) {
        return MonthDay.of(month, day).atYear(someYear);
    }
}
