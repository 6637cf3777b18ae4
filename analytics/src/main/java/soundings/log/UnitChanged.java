package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** The values do not fit the unit over them and fit another; they were read in that. */
public record UnitChanged(AsWritten at, Region region, String header, String written, String read) implements Issue {
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
        return "the values under \"" + header + "\" do not fit " + written + " from here on; read as " + read;
    }
}
