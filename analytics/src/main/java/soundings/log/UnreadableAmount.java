package soundings.log;

import java.util.Optional;

/** A cell where a number belongs holds something else. */
public record UnreadableAmount(AsWritten at, String why) implements Issue {
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
        return "set aside: " + why;
    }
}
