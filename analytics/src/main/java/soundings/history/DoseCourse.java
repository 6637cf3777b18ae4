package soundings.history;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import soundings.log.AsWritten;
import soundings.setup.Setup;

/**
 * One additive's dosing in one tank through time.
 *
 * @param name as the log writes it, or the setup's name where matched
 * @param additive the setup rows of this additive, one a parameter; empty while unknown
 */
public record DoseCourse(String name, List<Setup.Additive> additive, List<Step> steps, List<OneOff> oneOffs) {
    public DoseCourse {
        additive = List.copyOf(additive);
        steps = List.copyOf(steps);
        oneOffs = List.copyOf(oneOffs);
    }

    /** A rate from one day until the day before {@code until}; empty: until now. */
    public record Step(LocalDate from, Optional<LocalDate> until, double mlPerDay, AsWritten at) {}

    public record OneOff(LocalDate on, double ml, AsWritten at) {}
}
