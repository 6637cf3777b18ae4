package soundings.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import soundings.findings.MentorNotes;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;
import soundings.setup.MentorRange;
import soundings.setup.Setup;

/** What a mentor wrote into earlier reports. Headings differ from those of the room for answers, which is read back. */
final class MentorItems {
    private MentorItems() {}

    static List<Item> mentor(View view) {
        return Stream.concat(answers(view).stream(), ranges(view).stream()).toList();
    }

    private static List<Item> answers(View view) {
        List<Column> columns = List.of(
                Column.words("What was asked"),
                Column.words("What was answered"),
                Column.words("Whose"),
                new Column("Day", "", Kind.DATE, 0),
                Column.words("Where"));
        List<MentorNotes.Answer> newest =
                new ArrayList<>(view.findings().mentor().answers());
        Collections.reverse(newest);
        List<Row> rows = newest.stream().map(MentorItems::row).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "mentor-answers", "Answers written into earlier reports", columns, rows, false, List.of()));
    }

    private static Row row(MentorNotes.Answer a) {
        String question = a.question().isBlank() ? "not said" : a.question();
        return new Row(
                List.of(
                        Cell.words(a.tank().isBlank() ? question : a.tank() + ": " + question),
                        Cell.words(a.answer()),
                        Cell.words(whose(a.by())),
                        a.on().<Cell>map(Cell.Day::new).orElse(Cell.NOTHING),
                        Cell.words(a.place())),
                List.of());
    }

    private static String whose(String by) {
        return by.isBlank() ? "not signed" : by;
    }

    private static List<Item> ranges(View view) {
        List<Column> columns = List.of(
                Column.words("Test"),
                Column.words("Tank"),
                Column.words("Range"),
                Column.words("Why"),
                Column.words("Whose"),
                new Column("Day", "", Kind.DATE, 0),
                Column.words("What became of it"),
                Column.words("Where"));
        List<Row> rows = view.findings().mentor().ranges().stream()
                .map(r -> row(view, r))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "mentor-ranges", "Ranges set in earlier reports", columns, rows, false, List.of()));
    }

    private static Row row(View view, MentorRange r) {
        return new Row(
                List.of(
                        Cell.words(r.target()
                                .map(t -> t.parameter().name())
                                .orElse(r.written().test())),
                        Cell.words(
                                r.written().tank().isBlank()
                                        ? "all"
                                        : r.written().tank()),
                        Cell.words(r.target().map(t -> range(view, t)).orElseGet(() -> asWritten(r))),
                        Cell.words(r.written().why()),
                        Cell.words(whose(r.written().by())),
                        r.written().on().<Cell>map(Cell.Day::new).orElse(Cell.NOTHING),
                        Cell.words(unknownTank(view, r) ? "not used: no tank of the log is called so" : r.said()),
                        Cell.words(r.written().place())),
                List.of());
    }

    private static String range(View view, Setup.Target t) {
        return Figures.bounds(view.scale(t.tank(), t.parameter()), t.low(), t.high());
    }

    private static String asWritten(MentorRange r) {
        return (r.written().low() + " to " + r.written().high() + " "
                        + r.written().unit())
                .strip();
    }

    private static boolean unknownTank(View view, MentorRange r) {
        return r.used()
                && r.target()
                        .filter(t -> !t.tank().isBlank()
                                && view.tanks().stream()
                                        .noneMatch(k -> soundings.chemistry.Names.fold(k.tank())
                                                .equals(soundings.chemistry.Names.fold(t.tank()))))
                        .isPresent();
    }
}
