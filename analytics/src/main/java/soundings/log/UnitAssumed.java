package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** No unit is written; the values fit one alone. */
public record UnitAssumed(AsWritten at, Region region, String header, String unit) implements Issue {
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
        return "no unit is written for \"" + header + "\"; the values fit " + unit;
    }
}
