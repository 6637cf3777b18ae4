package soundings.log;

import java.util.Optional;

/** The tanks were taken from what the headings say besides the tests. */
public record TanksFromHeadings(AsWritten at, String tanks) implements Issue {
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
        return "the tanks " + tanks
                + " were taken from the headings: columns of the same test stand under these names; "
                + "if they mean something else, say so in sheet Columns of the setup";
    }
}
