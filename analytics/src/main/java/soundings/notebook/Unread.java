package soundings.notebook;

import java.util.List;
import java.util.Optional;
import soundings.log.AsWritten;
import soundings.log.Issue;

/** Parts of the log that could not be used until the keeper says how they are meant: one thing to do, ahead of what rests on the rest. */
final class Unread {
    private static final int MOST = 4;

    private Unread() {}

    static Optional<ActionList.Entry> entry(View view) {
        List<Issue> open = view.findings().log().issues().stream()
                .filter(i -> i.severity() == Issue.Severity.SERIOUS)
                .toList();
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(new ActionList.Entry(
                        ActionList.When.SOON,
                        "",
                        "Say how the log is meant: a part of it could not be used",
                        open.stream().limit(MOST).map(Unread::said).toList(),
                        reasons(open.size()),
                        "",
                        "",
                        "",
                        open.stream()
                                .flatMap(i -> i.where().stream())
                                .map(AsWritten::place)
                                .distinct()
                                .limit(MOST)
                                .toList()));
    }

    private static String said(Issue issue) {
        return Text.sentence(issue.where().map(w -> w.place() + ": ").orElse("") + issue.message());
    }

    private static List<String> reasons(int questions) {
        String more = questions > MOST ? "All " + questions + " stand under What was not understood. " : "";
        return List.of(
                more
                        + "Sheet Columns of the setup workbook takes the answer, or the log's own heading; until then nothing is worked out from it.");
    }
}
