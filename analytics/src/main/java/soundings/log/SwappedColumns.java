package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** Values that fit the neighbouring column and the other way round; they were set aside. */
public record SwappedColumns(AsWritten at, Region region, String first, String second) implements Issue {
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
        return "the values of \"" + first + "\" and \"" + second + "\" look exchanged; set aside";
    }
}
