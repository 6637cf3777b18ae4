package soundings.log;

import java.util.Optional;

/** A new dose without "a day" was taken to be a day's, as those before it were. */
public record RateAssumed(AsWritten at, String additive) implements Issue {
    @Override
    public Severity severity() {
        return Severity.NOTE;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public String message() {
        return "how often is not written; the dose of \"" + additive + "\" is taken to be a day's, as before";
    }
}
