package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A column whose meaning the log does not tell; nothing of it was used. */
public record UnknownColumn(AsWritten at, Region region, String header, String why) implements Issue {
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
        return "the column \"" + header + "\" was left out: " + why;
    }
}
