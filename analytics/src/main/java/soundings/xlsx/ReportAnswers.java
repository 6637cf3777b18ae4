package soundings.xlsx;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;

/** What was written into a report: answers beside questions, and new ranges, each with whose it is. */
public record ReportAnswers(List<Answer> answers, List<NewRange> ranges) {
    /** Headers are looked for this far down a sheet. */
    private static final int HEADER_ROWS = 12;

    public ReportAnswers {
        answers = List.copyOf(answers);
        ranges = List.copyOf(ranges);
    }

    /**
     * One answer.
     *
     * @param by who gave it, empty where nobody signed
     * @param on the day as a date, empty where none or none that can be read is given
     * @param place its cell in the report
     */
    public record Answer(
            String question, String evidence, String answer, String by, Optional<LocalDate> on, String place) {}

    /** A range somebody set, as written: names and units are for the reader of the setup to resolve. */
    public record NewRange(
            String tank,
            String test,
            OptionalDouble low,
            OptionalDouble high,
            String unit,
            String why,
            String by,
            Optional<LocalDate> on,
            String place) {}

    /** A row under a header, by the header's words. */
    private record Row(Grid grid, int row, Map<String, Integer> columns) {
        Optional<Cell> cell(String header) {
            return Optional.ofNullable(columns.get(Names.fold(header))).flatMap(c -> grid.findCell(row, c));
        }

        String text(String header) {
            return cell(header).map(c -> c.shown().strip()).orElse("");
        }

        String place(String header) {
            return grid.name() + "!" + cell(header).map(c -> c.at().toString()).orElse("");
        }

        Optional<LocalDate> day(String header) {
            return cell(header)
                    .flatMap(c -> c.value()
                            .match(
                                    t -> isoDay(t.text().strip()),
                                    n -> SheetRows.findDay(n.number()),
                                    m -> Optional.of(m.at().toLocalDate()),
                                    f -> Optional.empty(),
                                    e -> Optional.empty()));
        }

        OptionalDouble number(String header) {
            return cell(header)
                    .map(c -> c.value()
                            .match(
                                    t -> plainNumber(t.text().strip()),
                                    n -> OptionalDouble.of(n.number()),
                                    m -> OptionalDouble.empty(),
                                    f -> OptionalDouble.empty(),
                                    e -> OptionalDouble.empty()))
                    .orElse(OptionalDouble.empty());
        }
    }

    /** Everything written into a report's workbook; of any other workbook nothing. */
    public static ReportAnswers read(Book report) {
        List<Answer> answers = rows(report, AnswerPages.QUESTION, AnswerPages.ANSWER)
                .filter(r -> !r.text(AnswerPages.ANSWER).isEmpty())
                .map(ReportAnswers::answer)
                .toList();
        List<NewRange> ranges = rows(report, AnswerPages.TEST, AnswerPages.NEW_LOW)
                .filter(r -> !r.text(AnswerPages.TEST).isEmpty())
                .map(ReportAnswers::range)
                .filter(r -> r.low().isPresent() || r.high().isPresent())
                .toList();
        return new ReportAnswers(answers, ranges);
    }

    private static Answer answer(Row row) {
        return new Answer(
                row.text(AnswerPages.QUESTION),
                row.text(AnswerPages.EVIDENCE),
                row.text(AnswerPages.ANSWER),
                row.text(AnswerPages.BY),
                row.day(AnswerPages.ON),
                row.place(AnswerPages.ANSWER));
    }

    private static NewRange range(Row row) {
        return new NewRange(
                row.text(AnswerPages.TANK),
                row.text(AnswerPages.TEST),
                row.number(AnswerPages.NEW_LOW),
                row.number(AnswerPages.NEW_HIGH),
                row.text(AnswerPages.UNIT),
                row.text(AnswerPages.WHY),
                row.text(AnswerPages.BY),
                row.day(AnswerPages.ON),
                row.place(AnswerPages.TEST));
    }

    /** The rows of every table whose header has both words. */
    private static Stream<Row> rows(Book report, String first, String second) {
        return report.grids().stream()
                .flatMap(grid -> IntStream.range(0, Math.min(HEADER_ROWS, grid.rowCount()))
                        .filter(r ->
                                headers(grid, r).keySet().containsAll(List.of(Names.fold(first), Names.fold(second))))
                        .boxed()
                        .findFirst()
                        .stream()
                        .flatMap(header -> below(grid, header)));
    }

    private static Stream<Row> below(Grid grid, int header) {
        Map<String, Integer> columns = headers(grid, header);
        return IntStream.range(header + 1, grid.rowCount()).mapToObj(r -> new Row(grid, r, columns));
    }

    private static Map<String, Integer> headers(Grid grid, int row) {
        Map<String, Integer> columns = new HashMap<>();
        grid.row(row).forEach(c -> columns.putIfAbsent(Names.fold(c.shown()), c.at().column()));
        return columns;
    }

    private static Optional<LocalDate> isoDay(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (java.time.format.DateTimeParseException other) {
            return Optional.empty();
        }
    }

    /** A number with a point or one comma as its decimal mark and no thousands; anything else is not guessed. */
    private static OptionalDouble plainNumber(String text) {
        return text.matches("\\d+([.,]\\d+)?") && !text.matches("[1-9]\\d{0,2},\\d{3}")
                ? OptionalDouble.of(Double.parseDouble(text.replace(',', '.')))
                : OptionalDouble.empty();
    }
}
