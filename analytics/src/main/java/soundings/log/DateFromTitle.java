package soundings.log;

import java.time.LocalDate;
import java.util.Optional;

/** Results without a date of their own were taken to be of the day written above them. */
public record DateFromTitle(AsWritten at, LocalDate day) implements Issue {
    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public String message() {
        return "the results below have no date of their own and are taken to be of " + day;
    }
}
