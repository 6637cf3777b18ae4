package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** A column may name the tanks or something else; what stands beside it was not used. */
public record TanksUnclear(AsWritten at, Region region, String header, String names) implements Issue {
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
        String answer = header.isEmpty()
                ? "the log has the heading Tank there"
                : "sheet Columns of the setup says what it means: tank, or ignored";
        return "do the names " + names + (header.isEmpty() ? "" : " under \"" + header + "\"")
                + " stand for tanks? The rows differ by them, so nothing of this table is used until " + answer;
    }
}
