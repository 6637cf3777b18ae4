package soundings.log;

import java.util.Optional;

/** The tanks were taken from the words that lead the results in running text. */
public record TanksFromText(AsWritten at, String tanks) implements Issue {
    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public Optional<AsWritten> where() {
        return Optional.of(at);
    }

    @Override
    public String message() {
        return "the tanks " + tanks + " were taken from the notes: results stand behind these names; "
                + "if they mean something else, name the tanks in sheet Tanks of the setup";
    }
}
