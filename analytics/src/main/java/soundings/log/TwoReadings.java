package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A table that can be read in two ways about equally well; it was read in neither. */
public record TwoReadings(AsWritten at, Region region, String first, String second) implements Issue {
    @Override
    public Severity severity() {
        return Severity.SERIOUS;
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
        return "can be read as " + first + " and as " + second + " about equally well; read as neither";
    }
}
