package soundings.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.estimate.Estimate;
import soundings.history.Point;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.Reading;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** What was not understood, and what was understood and not used. */
final class IssueItems {
    private IssueItems() {}

    static List<Item> issues(View view) {
        List<Column> columns = List.of(
                Column.words("Cell"),
                Column.words("Written"),
                Column.words("What was made of it"),
                Column.words("Weight"));
        List<Row> rows = view.findings().issues().stream()
                .sorted(Comparator.comparing(Issue::severity).reversed())
                .collect(Collectors.groupingBy(
                        i -> List.of(
                                i.severity(),
                                i.message(),
                                i.where().map(AsWritten::text).orElse("")),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values()
                .stream()
                .map(IssueItems::row)
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "issues",
                        "What was not understood or had to be assumed",
                        columns,
                        rows,
                        rows.size() > 12,
                        List.of()));
    }

    /** The same words with the same fault are one row, however many cells hold them. */
    private static Row row(List<Issue> same) {
        Issue issue = same.get(0);
        return new Row(
                List.of(
                        Cell.words(places(same)),
                        Cell.words(issue.where().map(AsWritten::text).orElse("")),
                        Cell.words(Text.sentence(issue.message())),
                        new Cell.Words(weight(issue.severity()), Tones.of(issue.severity()), "")),
                List.of());
    }

    private static String places(List<Issue> same) {
        List<AsWritten> cells = same.stream().flatMap(i -> i.where().stream()).toList();
        String gathered = String.join(", ", Places.gathered(cells));
        return cells.isEmpty() ? "whole file" : cells.size() == 1 ? gathered : cells.size() + " cells of " + gathered;
    }

    private static String weight(Issue.Severity severity) {
        return switch (severity) {
            case NOTE -> "note";
            case WARNING -> "check";
            case SERIOUS -> "not used";
        };
    }

    static List<Item> setAside(View view) {
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Test"),
                new Column("Day", "", Kind.DATE, 0),
                Column.words("Written"),
                Column.words("Why it was not used"),
                Column.words("Cell"));
        List<Row> rows = view.tests().stream().flatMap(test -> rows(view, test)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "set-aside",
                        "Readings that were read and not used",
                        columns,
                        rows,
                        rows.size() > 12,
                        List.of()));
    }

    private static Stream<Row> rows(View view, View.Test test) {
        List<Row> rows = new ArrayList<>();
        for (Point point : test.series().points()) {
            if (isSetAside(view, point)) {
                rows.add(row(test, point.reading(), point.because()));
            }
        }
        List<Estimate.Doubt> doubts = view.estimate(test.tankName(), test.parameter())
                .map(Estimate::setAside)
                .orElse(List.of());
        doubts.forEach(d -> rows.add(row(test, d.reading(), d.because())));
        return rows.stream().distinct();
    }

    /** A reading later than the report is another month's, not one set aside. */
    static boolean isSetAside(View view, Point point) {
        return !point.used() && !point.reading().date().isAfter(view.asOf());
    }

    private static Row row(View.Test test, Reading reading, String because) {
        return new Row(
                List.of(
                        Cell.words(View.name(test.tank())),
                        Cell.words(test.parameter().name()),
                        new Cell.Day(reading.date()),
                        Cell.words(reading.at().text()),
                        Cell.words(Text.sentence(because)),
                        Cell.words(reading.at().place())),
                List.of());
    }
}
