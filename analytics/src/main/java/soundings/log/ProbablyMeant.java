package soundings.log;

import java.util.Optional;

/** Something that cannot stand as it is and looks like a slip of the pen; not used, and what may be meant is offered. */
public record ProbablyMeant(AsWritten at, String why, String meant) implements Issue {
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
        return why + "; probably " + meant + " is meant: not used until the cell is corrected";
    }
}
