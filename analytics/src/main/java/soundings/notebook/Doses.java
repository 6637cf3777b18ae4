package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.history.Change;
import soundings.history.DoseCourse;

/** Doses and water changes as charts and sentences tell them. */
final class Doses {
    private Doses() {}

    static boolean raises(DoseCourse course, Parameter parameter) {
        return course.additive().stream().anyMatch(a -> a.parameter().equals(parameter));
    }

    /** The rate through the days of a chart; empty where nothing was dosed in them. */
    static Optional<Layer> line(DoseCourse course, LocalDate from, LocalDate until) {
        List<ChartSpec.At> points = new ArrayList<>();
        for (DoseCourse.Step step : course.steps()) {
            LocalDate begins = step.from().isBefore(from) ? from : step.from();
            boolean over = step.until().filter(u -> !u.isAfter(from)).isPresent();
            if (!over && !begins.isAfter(until)) {
                points.add(new ChartSpec.At(begins, step.mlPerDay()));
                step.until().filter(u -> !u.isAfter(until)).ifPresent(u -> stops(course, u, points));
            }
        }
        return points.isEmpty()
                ? Optional.empty()
                : Optional.of(new Layer.Line(course.name(), Layer.Stroke.STEP, points));
    }

    /** A rate that ends without another beginning that day goes down to nothing. */
    private static void stops(DoseCourse course, LocalDate day, List<ChartSpec.At> points) {
        if (course.steps().stream().noneMatch(s -> s.from().equals(day))) {
            points.add(new ChartSpec.At(day, 0));
        }
    }

    static String change(Change change) {
        String share = change.fraction().isPresent()
                ? Figures.number(100 * change.fraction().getAsDouble(), 0) + " % "
                : "";
        String litres = change.litres().isPresent()
                ? " (" + Figures.number(change.litres().getAsDouble(), 0) + " L)"
                : "";
        return Figures.day(change.on()) + ": " + share + "water change" + litres + ", "
                + change.at().place();
    }
}
