package soundings.log;

import java.time.LocalDate;
import java.util.Optional;

/** A date whose neighbours all lie in another year; the row was set aside. */
public record MistypedYear(AsWritten at, LocalDate written, LocalDate meant) implements Issue {
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
        return written + " stands among dates of " + meant.getYear() + "; probably " + meant
                + " is meant, so the row was set aside";
    }
}
