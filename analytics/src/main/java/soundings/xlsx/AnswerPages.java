package soundings.xlsx;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.notebook.Cell;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;

/** Sheets somebody else writes in: answers beside questions, and ranges to use from now on. {@link ReportAnswers} reads them back. */
final class AnswerPages {
    static final String QUESTION = "Question";
    static final String EVIDENCE = "Evidence";
    static final String KNOWN = "What is known";
    static final String ANSWER = "Answer";
    static final String BY = "By";
    static final String ON = "On";
    static final String TANK = "Tank";
    static final String TEST = "Test";
    static final String NEW_LOW = "New low";
    static final String NEW_HIGH = "New high";
    static final String UNIT = "Unit";
    static final String WHY = "Why";

    private static final int BLANK_ROWS = 8;

    private AnswerPages() {}

    /** The notebook's own questions, a sheet for those a reader may have, one for ranges; all with what was written before. */
    static void write(Pages pages, List<TableItem> asked, Kept kept) {
        Kept.Placed placed = kept.placed(asked);
        placed.asked().forEach(table -> TablePage.write(pages, "Questions", table));
        TablePage.write(
                pages,
                asked.isEmpty() ? "Questions" : "Other questions",
                blank(
                        "questions-blank",
                        "Questions to the mentor, and room for the answers; next month's report picks them up",
                        List.of(QUESTION, EVIDENCE, ANSWER, BY, ON, TANK),
                        placed.left().stream().map(AnswerPages::withEvidence).toList()));
        TablePage.write(
                pages,
                "New ranges",
                blank(
                        "new-ranges",
                        "Ranges to use from now on, whoever sets them; next month's report judges by them",
                        List.of(TANK, TEST, NEW_LOW, NEW_HIGH, UNIT, WHY, BY, ON),
                        kept.ranges()));
    }

    /** A notebook's question that is not asked any more keeps what was known of it. */
    private static Map<String, Cell> withEvidence(Map<String, Cell> row) {
        Map<String, Cell> all = new HashMap<>(row);
        Optional.ofNullable(row.get(Names.fold(KNOWN)))
                .ifPresent(known -> all.putIfAbsent(Names.fold(EVIDENCE), known));
        return all;
    }

    private static TableItem blank(String id, String caption, List<String> headings, List<Map<String, Cell>> written) {
        List<Column> columns =
                headings.stream().map(h -> new Column(h, "", Kind.ANSWER, 0)).toList();
        List<TableItem.Row> rows = new ArrayList<>();
        written.forEach(cells -> rows.add(new TableItem.Row(
                headings.stream()
                        .map(h -> cells.getOrDefault(Names.fold(h), Cell.NOTHING))
                        .toList(),
                List.of())));
        rows.addAll(Collections.nCopies(
                BLANK_ROWS, new TableItem.Row(Collections.nCopies(columns.size(), Cell.NOTHING), List.of())));
        return new TableItem(id, caption, columns, rows, false, List.of());
    }
}
