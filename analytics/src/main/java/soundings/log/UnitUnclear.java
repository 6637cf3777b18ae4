package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** No unit is written and more than one fits about as well; nothing of it was used. */
public record UnitUnclear(AsWritten at, Region region, String header, String units) implements Issue {
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
        return "the unit of \"" + header + "\" is not written and more than one fits: " + units;
    }
}
