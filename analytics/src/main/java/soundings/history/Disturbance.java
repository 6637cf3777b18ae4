package soundings.history;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How far what a keeper did may have moved a level between two days, whichever way: doses that went in or stopped, water changed.
 *
 * @param fresh the level of the fresh mix, where known
 */
record Disturbance(List<Fed> fed, List<Change> changes, OptionalDouble fresh) {
    static final Disturbance NONE = new Disturbance(List.of(), List.of(), OptionalDouble.empty());

    /** An additive's course and by how much 1 mL of it raises this tank; empty where unknown. */
    record Fed(DoseCourse course, OptionalDouble risePerMl) {}

    /** In canonical units; infinite where a dose of unknown strength was given by hand. */
    double between(LocalDate from, LocalDate to, double level) {
        return dosed(from, to) + exchanged(from, to, level);
    }

    private double dosed(LocalDate from, LocalDate to) {
        long days = Math.max(1, ChronoUnit.DAYS.between(from, to));
        double sum = 0;
        for (Fed f : fed) {
            sum += f.risePerMl().orElse(0) * days * greatestRate(f.course(), from, to);
            sum += byHand(f.course(), from, to) * f.risePerMl().orElse(Double.POSITIVE_INFINITY);
        }
        return sum;
    }

    private static double greatestRate(DoseCourse course, LocalDate from, LocalDate to) {
        return course.steps().stream()
                .filter(s -> !s.from().isAfter(to))
                .filter(s -> s.until().map(u -> !u.isBefore(from)).orElse(true))
                .mapToDouble(DoseCourse.Step::mlPerDay)
                .max()
                .orElse(0);
    }

    private static double byHand(DoseCourse course, LocalDate from, LocalDate to) {
        double ml = course.oneOffs().stream()
                .filter(o -> !o.on().isBefore(from) && !o.on().isAfter(to))
                .mapToDouble(DoseCourse.OneOff::ml)
                .sum();
        return ml;
    }

    private double exchanged(LocalDate from, LocalDate to, double level) {
        double apart = Math.abs(fresh.orElse(level * 1.2) - level);
        return changes.stream()
                .filter(c -> !c.on().isBefore(from) && !c.on().isAfter(to))
                .mapToDouble(c -> c.fraction().orElse(0.2) * apart)
                .sum();
    }
}
