package soundings.care;

import java.util.List;
import soundings.chemistry.Reference;
import soundings.history.History;

/** Looks after the three things that a log of doses and tests alone does not answer. */
public final class Caring {
    private Caring() {}

    public static Care of(History history, Plans plans, Reference reference) {
        Rules rules = new Rules(reference);
        List<Course> courses = Courses.of(history, plans.treatments(), new Vocabulary(reference));
        return new Care(
                NewTanks.of(history, plans, rules),
                courses,
                Moves.of(history, plans.moves(), courses, rules),
                Dangers.of(history, plans, rules),
                plans.issues());
    }
}
