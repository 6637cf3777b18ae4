package soundings.log;

import java.util.Optional;

/** A name that differs from a known one by a letter or a sign was taken for it. */
public record NameMerged(AsWritten at, String written, String taken) implements Issue {
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
        return "\"" + written + "\" was taken for \"" + taken + "\"";
    }
}
