package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A part of the log that can be read in two ways about as well; neither was taken, nothing of it was used. */
public record DoubleFit(AsWritten at, Region region, String ways) implements Issue {
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
        return "two ways of reading this fit about as well, so neither was taken: " + ways;
    }
}
