package soundings.advice;

import java.util.List;
import java.util.Optional;
import soundings.history.DoseCourse;
import soundings.setup.Setup;

/**
 * An additive as the source of one parameter in one tank.
 *
 * @param course how it was dosed so far; empty where it never was
 * @param presentMlPerDay as the pump is set, on the report's day
 * @param delivered what the pump gives of what it is set to, 1 where it was never measured
 */
record Feed(
        Setup.Additive row,
        Optional<DoseCourse> course,
        double presentMlPerDay,
        Optional<DoseCourse.Step> step,
        double delivered,
        Optional<Setup.Pump> pump) {

    boolean isOn() {
        return presentMlPerDay > 0;
    }

    boolean isKnown() {
        return row.risePerMlInOneLitre().isPresent();
    }

    /** Canonical units a day in so many litres; zero while the strength is unknown. */
    double risePerDay(double litres) {
        return presentMlPerDay * delivered * row.risePerMlInOneLitre().orElse(0) / litres;
    }

    List<String> places() {
        return step.map(s -> List.of(s.at().place())).orElse(List.of());
    }
}
