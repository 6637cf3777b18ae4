package soundings.xlsx;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.findings.MentorNotes;
import soundings.setup.WrittenRange;
import soundings.sheet.Book;
import soundings.sheet.Grid;

/** Reads what was written into a report: answers beside questions, and new ranges, each with whose it is. */
public final class ReportAnswers {
    /** Headers are looked for this far down a sheet. */
    private static final int HEADER_ROWS = 12;

    private ReportAnswers() {}

    /**
     * Everything written into a report's workbook; of any other workbook nothing.
     *
     * @param name the report's, for the places
     */
    public static MentorNotes read(Book report, String name) {
        List<MentorNotes.Answer> answers = rows(report, AnswerPages.QUESTION, AnswerPages.ANSWER)
                .filter(r -> !r.text(AnswerPages.ANSWER).isEmpty())
                .map(r -> answer(r, name))
                .toList();
        List<WrittenRange> ranges = rows(report, AnswerPages.TEST, AnswerPages.NEW_LOW)
                .filter(r -> !r.text(AnswerPages.TEST).isEmpty())
                .map(r -> range(r, name))
                .filter(r -> !r.low().isEmpty() || !r.high().isEmpty())
                .toList();
        return new MentorNotes(answers, ranges);
    }

    private static MentorNotes.Answer answer(WrittenRow row, String name) {
        return new MentorNotes.Answer(
                row.text(AnswerPages.TANK),
                row.text(AnswerPages.QUESTION),
                row.text(AnswerPages.ANSWER),
                row.text(AnswerPages.BY),
                row.day(AnswerPages.ON),
                name + ", " + row.place(AnswerPages.ANSWER));
    }

    private static WrittenRange range(WrittenRow row, String name) {
        return new WrittenRange(
                row.text(AnswerPages.TANK),
                row.text(AnswerPages.TEST),
                row.digits(AnswerPages.NEW_LOW),
                row.digits(AnswerPages.NEW_HIGH),
                row.text(AnswerPages.UNIT),
                row.text(AnswerPages.WHY),
                row.text(AnswerPages.BY),
                row.day(AnswerPages.ON),
                name + ", " + row.place(AnswerPages.TEST));
    }

    /** The rows of every table whose header has both words. */
    static Stream<WrittenRow> rows(Book report, String first, String second) {
        return report.grids().stream()
                .flatMap(grid -> IntStream.range(0, Math.min(HEADER_ROWS, grid.rowCount()))
                        .filter(r ->
                                headers(grid, r).keySet().containsAll(List.of(Names.fold(first), Names.fold(second))))
                        .boxed()
                        .findFirst()
                        .stream()
                        .flatMap(header -> below(grid, header)));
    }

    private static Stream<WrittenRow> below(Grid grid, int header) {
        Map<String, Integer> columns = headers(grid, header);
        return IntStream.range(header + 1, grid.rowCount()).mapToObj(r -> new WrittenRow(grid, r, columns));
    }

    private static Map<String, Integer> headers(Grid grid, int row) {
        Map<String, Integer> columns = new HashMap<>();
        grid.row(row).forEach(c -> columns.putIfAbsent(Names.fold(c.shown()), c.at().column()));
        return columns;
    }
}
