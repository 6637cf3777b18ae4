package soundings.xlsx;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import soundings.notebook.Cell;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;

/** Sheets somebody else writes in: answers beside questions, and ranges to use from now on. {@link ReportAnswers} reads them back. */
final class AnswerPages {
    static final String QUESTION = "Question";
    static final String EVIDENCE = "Evidence";
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

    /** The notebook's own questions, or a blank sheet for those a reader may have. */
    static void write(Pages pages, List<TableItem> asked) {
        if (asked.isEmpty()) {
            TablePage.write(
                    pages,
                    "Questions",
                    blank(
                            "questions-blank",
                            "Questions to the mentor, and room for the answers; next month's report picks them up",
                            Stream.of(QUESTION, EVIDENCE, ANSWER, BY, ON)));
        } else {
            asked.forEach(table -> TablePage.write(pages, "Questions", table));
        }
        TablePage.write(
                pages,
                "New ranges",
                blank(
                        "new-ranges",
                        "Ranges to use from now on, whoever sets them; next month's report judges by them",
                        Stream.of(TANK, TEST, NEW_LOW, NEW_HIGH, UNIT, WHY, BY, ON)));
    }

    private static TableItem blank(String id, String caption, Stream<String> headings) {
        List<Column> columns =
                headings.map(h -> new Column(h, "", Kind.ANSWER, 0)).toList();
        TableItem.Row row = new TableItem.Row(Collections.nCopies(columns.size(), Cell.NOTHING), List.of());
        return new TableItem(id, caption, columns, Collections.nCopies(BLANK_ROWS, row), false, List.of());
    }
}
