package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A sheet or table that holds no log. */
public record SheetIgnored(AsWritten at, Region region, String why) implements Issue {
    @Override
    public Severity severity() {
        return Severity.NOTE;
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
        return "left out: " + why;
    }
}
