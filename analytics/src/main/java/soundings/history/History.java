package soundings.history;

import java.time.LocalDate;
import java.util.List;
import soundings.log.Issue;
import soundings.setup.Setup;

/** The whole log in order, with the setup it was read with. {@code asOf}: the last day the report speaks of. */
public record History(LocalDate asOf, List<TankHistory> tanks, Setup setup, List<Issue> issues) {
    public History {
        tanks = List.copyOf(tanks);
        issues = List.copyOf(issues);
    }

    /** The same history judged with another setup's ranges; nothing else of a setup may differ. */
    public History with(Setup other) {
        return new History(asOf, tanks, other, issues);
    }
}
