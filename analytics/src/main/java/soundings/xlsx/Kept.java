package soundings.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.notebook.Cell;
import soundings.notebook.TableItem;
import soundings.sheet.Book;

/**
 * What people wrote into a report that is about to be written anew: rows of cells by their column's folded heading, for the new one to
 * carry.
 */
public record Kept(List<Map<String, Cell>> questions, List<Map<String, Cell>> ranges) {
    public static final Kept NOTHING = new Kept(List.of(), List.of());

    public Kept {
        questions = List.copyOf(questions);
        ranges = List.copyOf(ranges);
    }

    /** Everything people wrote into these workbooks; of any that is no report nothing. */
    public static Kept of(List<Book> reports) {
        return new Kept(
                reports.stream().flatMap(Kept::questions).distinct().toList(),
                reports.stream().flatMap(Kept::ranges).distinct().toList());
    }

    private static Stream<Map<String, Cell>> questions(Book report) {
        return ReportAnswers.rows(report, AnswerPages.QUESTION, AnswerPages.ANSWER)
                .filter(r -> isWritten(r)
                        || (r.has(AnswerPages.EVIDENCE)
                                && !r.text(AnswerPages.QUESTION).isEmpty()))
                .map(WrittenRow::cells);
    }

    private static boolean isWritten(WrittenRow row) {
        return Stream.of(AnswerPages.ANSWER, AnswerPages.BY, AnswerPages.ON)
                .anyMatch(h -> !row.text(h).isEmpty());
    }

    private static Stream<Map<String, Cell>> ranges(Book report) {
        return ReportAnswers.rows(report, AnswerPages.TEST, AnswerPages.NEW_LOW)
                .map(WrittenRow::cells)
                .filter(cells -> !cells.isEmpty());
    }

    /** The tables asked anew with what was written beside the same questions, and the rows that found no question. */
    Placed placed(List<TableItem> asked) {
        List<Map<String, Cell>> left = new ArrayList<>(questions);
        List<TableItem> filled = asked.stream().map(t -> filled(t, left)).toList();
        return new Placed(filled, left);
    }

    record Placed(List<TableItem> asked, List<Map<String, Cell>> left) {}

    private static TableItem filled(TableItem table, List<Map<String, Cell>> left) {
        List<String> headings =
                table.columns().stream().map(c -> Names.fold(c.heading())).toList();
        List<TableItem.Row> rows =
                table.rows().stream().map(row -> filled(row, headings, left)).toList();
        return new TableItem(table.id(), table.caption(), table.columns(), rows, table.folded(), table.restsOn());
    }

    private static TableItem.Row filled(TableItem.Row row, List<String> headings, List<Map<String, Cell>> left) {
        Map<String, Cell> now = new HashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            now.put(headings.get(i), row.cells().get(i));
        }
        return left.stream()
                .filter(kept -> same(kept, now, AnswerPages.QUESTION) && same(kept, now, AnswerPages.TANK))
                .findFirst()
                .map(kept -> {
                    left.remove(kept);
                    Stream.of(AnswerPages.ANSWER, AnswerPages.BY, AnswerPages.ON)
                            .map(Names::fold)
                            .forEach(h -> now.put(h, kept.getOrDefault(h, Cell.NOTHING)));
                    return new TableItem.Row(
                            headings.stream()
                                    .map(h -> now.getOrDefault(h, Cell.NOTHING))
                                    .toList(),
                            row.restsOn());
                })
                .orElse(row);
    }

    private static boolean same(Map<String, Cell> a, Map<String, Cell> b, String heading) {
        return words(a, heading).equals(words(b, heading));
    }

    private static String words(Map<String, Cell> cells, String heading) {
        return cells.getOrDefault(Names.fold(heading), Cell.NOTHING)
                .match(w -> w.text().strip(), n -> "", r -> "", d -> "", s -> "");
    }
}
