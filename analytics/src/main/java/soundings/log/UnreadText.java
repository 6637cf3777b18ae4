package soundings.log;

import java.util.Optional;

/** A text or a part of it that no rule explains; it is kept as a remark where it has a date. */
public record UnreadText(AsWritten at, String why) implements Issue {
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
        return "not understood: " + why;
    }
}
