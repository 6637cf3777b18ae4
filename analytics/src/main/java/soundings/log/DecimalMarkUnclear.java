package soundings.log;

import java.util.Optional;

/** A number such as 1,350 that reads as two; it was set aside. */
public record DecimalMarkUnclear(AsWritten at, String one, String other) implements Issue {
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
        return "reads as " + one + " and as " + other + "; set aside";
    }
}
