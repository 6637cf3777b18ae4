package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** Values with no date to go with; they were set aside. */
public record NoDate(AsWritten at, Region region, String why) implements Issue {
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
        return "set aside, no date: " + why;
    }
}
