package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A column was taken to name the tanks though its heading does not say so. */
public record TanksAssumed(AsWritten at, Region region, String header, String names, String because) implements Issue {
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
        return "the column \"" + header + "\" (" + names + ") was taken to name the tank: " + because
                + "; if it means something else, say so in sheet Columns of the setup";
    }
}
