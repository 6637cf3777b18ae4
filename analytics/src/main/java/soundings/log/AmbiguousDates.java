package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** Day and month of these dates cannot be told apart; nothing of these rows was used. */
public record AmbiguousDates(AsWritten at, Region region, String why) implements Issue {
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
        return "day and month cannot be told apart: " + why + "; write \"date order\" into the preferences";
    }
}
