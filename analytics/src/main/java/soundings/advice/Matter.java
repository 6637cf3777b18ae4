package soundings.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.NotEnough;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.log.AsWritten;
import soundings.log.Reading;
import soundings.setup.Setup;

/** One test of one tank with all that is known of it: what a verdict or a dose is worked out from. */
record Matter(History history, TankHistory tank, Parameter parameter, Estimates estimates, Reference reference) {

    Optional<Estimate> estimate() {
        return estimates.find(tank.tank(), parameter).flatMap(o -> o.match(Optional::of, n -> Optional.empty()));
    }

    Optional<NotEnough> notEnough() {
        return estimates.find(tank.tank(), parameter).flatMap(o -> o.match(e -> Optional.empty(), Optional::of));
    }

    /** The keeper's own range, else one a mentor set, else the default one. */
    Optional<TargetRange> target() {
        return history.setup()
                .findTarget(tank.tank(), parameter)
                .map(Setup.Target::range)
                .or(() -> reference.findTarget(parameter));
    }

    List<Reading> used() {
        return tank.findSeries(parameter).map(Series::used).orElse(List.of()).stream()
                .map(Point::reading)
                .toList();
    }

    /** As the keeper writes this test. */
    Scale scale() {
        return tank.scale(parameter, reference);
    }

    Optional<Reading> last() {
        List<Reading> used = used();
        return used.isEmpty() ? Optional.empty() : Optional.of(used.get(used.size() - 1));
    }

    LocalDate asOf() {
        return history.asOf();
    }

    /** Days since the last used test; very many where there is none. */
    long age() {
        return last().map(r -> asOf().toEpochDay() - r.date().toEpochDay()).orElse((long) Integer.MAX_VALUE);
    }

    /** Whether the last test is too old to go by. Common practice, no source. */
    boolean isStale() {
        return age() > freshDays();
    }

    int freshDays() {
        return switch (parameter.kind()) {
            case ION -> 21;
            case TRACE -> 60;
            case NUTRIENT -> 30;
            case TOXIN, CONDITION, LIGHT -> 14;
        };
    }

    List<String> places() {
        return Places.of(used().stream().map(Reading::at).toList());
    }

    List<String> lastPlace() {
        return last().map(Reading::at).map(AsWritten::place).map(List::of).orElse(List.of());
    }

    Matter of(Parameter other) {
        return new Matter(history, tank, other, estimates, reference);
    }

    Optional<Matter> of(String parameterId) {
        return reference.findParameter(parameterId).map(this::of);
    }

    /** How much a level may be raised in a day, canonical unit; common practice where the setup does not say. */
    Optional<Double> usualMaxRise() {
        return reference.findConstant("max_rise_per_day_" + parameter.id()).map(c -> c.value());
    }
}
