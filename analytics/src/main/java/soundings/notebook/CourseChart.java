package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.care.Course;
import soundings.care.Sign;

/** The daily signs as dots over the medicine left, and how what is short of the keeper's level is worked out. */
final class CourseChart {
    private CourseChart() {}

    static ChartSpec of(Course course, String id) {
        boolean counted = course.signs().stream().allMatch(s -> s.count().isPresent());
        List<Layer> main = new ArrayList<>();
        verticals(course).ifPresent(main::add);
        List<Layer.Mark> marks =
                course.signs().stream().map(s -> mark(s, counted)).toList();
        main.add(new Layer.Marks(counted ? "signs counted" : "1: signs seen, 0: none", Layer.Shape.DOT, marks));
        LocalDate until = course.until().isAfter(course.started())
                ? course.until()
                : course.started().plusDays(1);
        return new ChartSpec.TimeChart(
                id + "-chart",
                "Daily signs and the medicine left, " + CareWords.courseName(course),
                CareWords.course(course),
                course.started(),
                until,
                new ChartSpec.Panel(counted ? "Signs a day" : "Signs", "", 0, main),
                level(course, until));
    }

    private static Layer.Mark mark(Sign sign, boolean counted) {
        double value = counted ? sign.count().orElse(0) : sign.seen() ? 1 : 0;
        return new Layer.Mark(
                sign.on(),
                value,
                value,
                value,
                Figures.day(sign.on()) + ": " + sign.text() + ", " + sign.at().place(),
                sign.at().place());
    }

    private static Optional<Layer> verticals(Course course) {
        List<Layer.Happening> changes = course.water().stream()
                .filter(s -> s.fraction() > 0)
                .map(s -> new Layer.Happening(s.on(), Figures.number(s.fraction() * 100, 0) + " %", s.place()))
                .toList();
        return changes.isEmpty() ? Optional.empty() : Optional.of(new Layer.Verticals("water change", changes));
    }

    private static Optional<ChartSpec.Panel> level(Course course, LocalDate until) {
        if (course.water().isEmpty()) {
            return Optional.empty();
        }
        List<ChartSpec.At> points = new ArrayList<>();
        for (Course.Step step : course.water()) {
            if (!points.isEmpty() && points.get(points.size() - 1).on().equals(step.on())) {
                points.remove(points.size() - 1);
            }
            points.add(new ChartSpec.At(step.on(), step.after()));
        }
        course.left().ifPresent(left -> {
            if (points.get(points.size() - 1).on().isBefore(until)) {
                points.add(new ChartSpec.At(until, left));
            }
        });
        return Optional.of(new ChartSpec.Panel(
                "Left", "mg/L", 1, List.of(new Layer.Line("medicine left, by dilution", Layer.Stroke.STEP, points))));
    }

    /** What a water change took out is C x f x V; what is short of the keeper's level now is (C set - C left) x V. */
    static Optional<Item> again(Course course, String id) {
        if (course.left().isEmpty() || course.toKeepAt().orElse(0) <= 0.5) {
            return Optional.empty();
        }
        double keep = course.plan().keepAt().orElseThrow();
        double left = course.left().getAsDouble();
        double litres = course.litres().orElseThrow();
        double missing = course.toKeepAt().getAsDouble();
        List<WorkingItem.Line> lines = List.of(
                line("keep", "level you set", keep, "mg/L", "", course.plan().place()),
                line("left", "left by dilution", left, "mg/L", "", "the last row of Day by day"),
                line("litres", "water in the tank", litres, "L", "", "setup, sheet Tanks"),
                line("short", "short of it", (keep - left) * litres, "mg", "(keep - left) * litres", ""));
        return Optional.of(new WorkingItem(
                id + "-short",
                "What is short of the level you set",
                CareWords.mg(missing) + " mg short of " + CareWords.mg(keep) + " mg/L on "
                        + Figures.day(course.until()),
                lines,
                List.of(course.plan().place())));
    }

    private static WorkingItem.Line line(
            String id, String label, double value, String unit, String formula, String from) {
        return new WorkingItem.Line(id, label, value, WorkingItems.decimals(value), unit, formula, from);
    }
}
