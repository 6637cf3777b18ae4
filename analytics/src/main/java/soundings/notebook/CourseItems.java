package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.care.Course;
import soundings.care.Given;
import soundings.care.Sign;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** A course of treatment as it was written down, day by day. */
final class CourseItems {
    private static final String CAUTION =
            "This page records what was written down and reckons with it; it does not say what to give. Ask a vet who treats fish before and "
                    + "during a course, and keep to the label and to local law. Never treat in the tank with corals, snails and rock. Keep "
                    + "medicines from children, and take what is left and the treated water where local rules say, never down a drain.";

    private CourseItems() {}

    static String id(Course course) {
        return "course-" + Ids.slug(course.tank() + " " + course.plan().medicine() + " " + course.started());
    }

    /** @throws IllegalArgumentException naming the courses */
    static List<Item> course(View view, String id) {
        List<Course> all = view.findings().care().courses();
        Course course = all.stream()
                .filter(c -> id(c).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no course '" + id + "'; there are "
                        + String.join(", ", all.stream().map(CourseItems::id).toList())));
        List<Item> items = new ArrayList<>();
        items.add(CareBlocks.prose(CareBlocks.block(Prose.Kind.CAUTION, CAUTION)));
        items.add(new ChartItem(CourseChart.of(course, id), places(course)));
        CourseChart.again(course, id).ifPresent(items::add);
        items.add(days(course, id));
        said(course).ifPresent(items::add);
        return items;
    }

    private static List<String> places(Course course) {
        return Places.gathered(course.signs().stream().map(Sign::at).toList());
    }

    /** The days of which something is noted, each with its number from the dates. */
    private static Item days(Course course, String id) {
        List<Column> columns = List.of(
                new Column("Date", "", Kind.DATE, 0),
                new Column("Day", "", Kind.NUMBER, 0),
                Column.words("Signs"),
                Column.words("Dose"),
                Column.words("Water changed"),
                Column.words("Taken out with it"),
                Column.words("Left in the water"));
        List<Row> rows = course.started()
                .datesUntil(course.until().plusDays(1))
                .filter(d -> isNoted(course, d))
                .map(d -> row(course, d))
                .toList();
        return new TableItem(id + "-days", "Day by day", columns, rows, rows.size() > 20, List.of());
    }

    private static boolean isNoted(Course course, LocalDate day) {
        return course.signs().stream().anyMatch(s -> s.on().equals(day))
                || course.doses().stream().anyMatch(g -> g.on().equals(day))
                || course.missing().contains(day)
                || course.water().stream().anyMatch(s -> s.on().equals(day));
    }

    private static Row row(Course course, LocalDate day) {
        Optional<Sign> sign =
                course.signs().stream().filter(s -> s.on().equals(day)).findFirst();
        List<Course.Step> steps =
                course.water().stream().filter(s -> s.on().equals(day)).toList();
        List<String> places = new ArrayList<>();
        sign.ifPresent(s -> places.add(s.at().place()));
        steps.forEach(s -> places.add(s.place()));
        return new Row(
                List.of(
                        new Cell.Day(day),
                        new Cell.Number(course.day(day), 0, ""),
                        sign.map(CourseItems::sign).orElse(Cell.words("not noted")),
                        Cell.words(doses(course, day)),
                        Cell.words(changed(steps)),
                        Cell.words(takenOut(steps)),
                        Cell.words(
                                steps.isEmpty()
                                        ? ""
                                        : CareWords.mg(steps.get(steps.size() - 1)
                                                        .after()) + " mg/L")),
                places.stream().distinct().toList());
    }

    private static Cell sign(Sign sign) {
        String words = !sign.seen()
                ? "none"
                : sign.count().isPresent() ? String.valueOf(sign.count().getAsInt()) : "seen";
        return new Cell.Words(words, sign.seen() ? Tone.WATCH : Tone.CALM, "");
    }

    private static String doses(Course course, LocalDate day) {
        List<String> given = course.doses().stream()
                .filter(g -> g.on().equals(day))
                .map(CourseItems::dose)
                .toList();
        return given.isEmpty() && course.missing().contains(day) ? "due, not noted" : String.join(", ", given);
    }

    private static String dose(Given given) {
        return given.written() + (given.assumed() ? " (as in the setup)" : "");
    }

    private static String changed(List<Course.Step> steps) {
        return String.join(
                ", ",
                steps.stream()
                        .filter(s -> s.fraction() > 0)
                        .map(s -> Figures.number(s.fraction() * 100, 0) + " %")
                        .toList());
    }

    private static String takenOut(List<Course.Step> steps) {
        return String.join(
                ", ",
                steps.stream()
                        .filter(s -> s.fraction() > 0)
                        .map(s -> CareWords.mg(s.takenOut()) + " mg")
                        .toList());
    }

    /** Each amount from the day it was first given, where it was not the same all along. */
    private static Optional<String> doseChanges(Course course) {
        List<String> changes = new ArrayList<>();
        String last = "";
        for (Given given : course.doses()) {
            if (!given.written().equals(last)) {
                changes.add(given.written() + (changes.isEmpty() ? " on " : " from ") + Figures.day(given.on()));
                last = given.written();
            }
        }
        return changes.size() < 2
                ? Optional.empty()
                : Optional.of("The dose was changed: " + String.join(", then ", changes) + " on.");
    }

    private static String tested(Course.Tested tested) {
        return "The last test read " + CareWords.mg(tested.mgPerLitre()) + " mg/L on "
                + Figures.day(tested.reading().date()) + " ("
                + tested.reading().at().place()
                + "), which counts for more than what is reckoned. ";
    }

    private static Optional<Item> said(Course course) {
        List<Prose.Block> blocks = new ArrayList<>();
        doseChanges(course).ifPresent(words -> blocks.add(CareBlocks.block(Prose.Kind.BULLET, words)));
        course.relapses()
                .forEach(r -> blocks.add(CareBlocks.block(
                        Prose.Kind.BULLET,
                        "Signs again from " + Figures.day(r.on()) + " on moved the earliest end from "
                                + Figures.day(r.endBefore()) + " to " + Figures.day(r.endAfter()) + " (" + r.place()
                                + ").")));
        course.disputes()
                .forEach(d -> blocks.add(CareBlocks.block(
                        Prose.Kind.BULLET,
                        "The note of " + Figures.day(d.on()) + " calls it day " + d.called()
                                + "; by the dates it was day " + d.isDay() + ", and the dates count here (" + d.place()
                                + ").")));
        if (!course.stated()) {
            blocks.add(
                    CareBlocks.block(
                            Prose.Kind.BULLET,
                            "The course is known from notes alone: its first day is that of the first dose noted, and every weight noted since counts as a dose. Write it into the setup workbook, "
                                    + "sheet Treatments, and the end by your rule and what is missing to your level are reckoned too."));
        }
        blocks.add(
                CareBlocks.block(
                        Prose.Kind.BULLET,
                        course.tested().map(CourseItems::tested).orElse("")
                                + "What is left is dilution alone: carbon, light, rock and time take out more, and only a test tells. On a day with both, the "
                                + "water is taken to be changed before the dose goes in. A day without a note may have had signs."));
        return Optional.of(new Prose(blocks, List.of()));
    }
}
