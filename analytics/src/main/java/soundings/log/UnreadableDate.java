package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A cell where a date belongs holds something else; its row was set aside. */
public record UnreadableDate(AsWritten at, Region region, String why) implements Issue {
    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public Optional<Region> covers() {
        return Optional.of(region);
    }

    @Override
    public String message() {
        return "no date: " + why;
    }
}
