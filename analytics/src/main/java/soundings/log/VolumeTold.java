package soundings.log;

import java.util.Optional;

/** A tank's volume stands in the log, where the setup tells none: it is shown, not used, for rock and sand may be in it. */
public record VolumeTold(AsWritten at, String tank, String volume) implements Issue {
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
        return volume + " is written for the tank " + tank
                + "; for doses, enter in sheet Tanks of the setup how much water that is, rock and sand left out";
    }
}
