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
 * @param additive the setup rows of this additive, one a parameter; a row without strength where the log's name tells the
 *     parameter only; empty while unknown
 */
public record DoseCourse(String name, List<Setup.Additive> additive, List<Step> steps, List<OneOff> oneOffs) {
    public DoseCourse {
        additive = List.copyOf(additive);
        steps = List.copyOf(steps);
        oneOffs = List.copyOf(oneOffs);
    }

    /** The rate on a day; zero before the first step. */
    public double mlPerDayOn(LocalDate day) {
        return findStep(day).map(Step::mlPerDay).orElse(0.0);
    }

    /** The step a day falls in. */
    public Optional<Step> findStep(LocalDate day) {
        return steps.stream()
                .filter(s ->
                        !s.from().isAfter(day) && s.until().map(day::isBefore).orElse(true))
                .findFirst();
    }

    /** A rate from one day until the day before {@code until}; empty: until now. */
    public record Step(LocalDate from, Optional<LocalDate> until, double mlPerDay, AsWritten at) {}

    public record OneOff(LocalDate on, double ml, AsWritten at) {}
}
