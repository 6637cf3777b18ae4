package soundings.cli;

import java.nio.file.Path;
import soundings.findings.Findings;

/** What must hold before a report makes sense. */
final class Checks {
    private Checks() {}

    static void somethingToReport(Findings findings, Path log) {
        boolean nothing = findings.history().tanks().stream()
                .allMatch(t -> t.series().stream().allMatch(s -> s.used().isEmpty()));
        if (nothing) {
            throw new CannotDo(log.getFileName() + ": no test result with a date was found in it; `inspect "
                    + log.getFileName() + "` shows how each sheet was read");
        }
    }
}
