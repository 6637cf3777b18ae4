package soundings.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import soundings.care.Course;

/** What a template can print of new tanks, courses of treatment and moves. */
final class CareModel {
    private CareModel() {}

    static Map<String, Object> of(View view) {
        return Map.of(
                "new_tanks",
                view.findings().care().newTanks().stream()
                        .map(t -> entry(t.tank(), view.tankId(t.tank()), t.tank(), CareWords.newTank(t)))
                        .toList(),
                "all_courses",
                courses(view.findings().care().courses()),
                "courses",
                courses(view.findings().care().courses().stream()
                        .filter(c -> touches(c, view))
                        .toList()),
                "moves",
                view.findings().care().moves().stream()
                        .map(m -> entry(
                                CareMoveItems.id(m), CareMoveItems.id(m), CareWords.moveName(m), CareWords.move(m)))
                        .toList());
    }

    /** Courses that ran on a day of the report's month. */
    private static boolean touches(Course course, View view) {
        LocalDate first = view.findings().month().atDay(1);
        return !course.until().isBefore(first);
    }

    private static List<Map<String, Object>> courses(List<Course> courses) {
        return courses.stream()
                .map(c -> entry(CourseItems.id(c), CourseItems.id(c), CareWords.courseName(c), CareWords.course(c)))
                .toList();
    }

    private static Map<String, Object> entry(String key, String id, String name, String finding) {
        return Map.of("key", key, "id", id, "name", name, "finding", finding);
    }
}
