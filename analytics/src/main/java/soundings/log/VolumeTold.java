package soundings.log;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A tank's volume stands in the log, where the setup tells none. Litres changed are taken as a share of it; no dose is worked out with it,
 * for rock and sand may be in it.
 *
 * @param volume as written
 * @param litres empty where the unit does not say
 */
public record VolumeTold(AsWritten at, String tank, String volume, OptionalDouble litres) implements Issue {
    @Override
    public Severity severity() {
        return Severity.NOTE;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public String message() {
        return volume + " is written for the tank " + tank + ": litres of water changed are taken as a share of that; "
                + "for doses, enter in sheet Tanks of the setup how much water it is, rock and sand left out";
    }
}
