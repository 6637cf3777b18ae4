package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A column or part of a sheet that is understood and of no use here. */
public record LeftOut(AsWritten at, Region region, String what, String why) implements Issue {
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
        return what + " was left out: " + why;
    }
}
