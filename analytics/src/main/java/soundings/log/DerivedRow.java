package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A row worked out from others (averages, totals); its values are no readings. */
public record DerivedRow(AsWritten at, Region region, String how) implements Issue {
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
        return "not readings: " + how;
    }
}
