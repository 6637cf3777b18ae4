package soundings.log;

import java.util.Optional;

/** A word for "no result" stands in the cell. */
public record NothingWritten(AsWritten at, String word) implements Issue {
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
        return "no result: \"" + word + "\"";
    }
}
