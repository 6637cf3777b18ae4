package soundings.care;

import java.util.List;
import soundings.log.Issue;

/** What the log says of new tanks, courses of treatment and moves; each list may be empty. */
public record Care(
        List<NewTank> newTanks, List<Course> courses, List<Move> moves, List<Danger> dangers, List<Issue> issues) {
    public static final Care NONE = new Care(List.of(), List.of(), List.of(), List.of(), List.of());

    public Care {
        newTanks = List.copyOf(newTanks);
        courses = List.copyOf(courses);
        moves = List.copyOf(moves);
        dangers = List.copyOf(dangers);
        issues = List.copyOf(issues);
    }
}
