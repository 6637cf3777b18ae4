package soundings.xlsx;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
            String tank,
            String question,
            String evidence,
            String answer,
            String by,
            Optional<LocalDate> on,
            String place) {}

    /** A range somebody set, as written: names and units are for the reader of the setup to resolve. */
    public record NewRange(
            String tank,
            String test,
            String low,
            String high,
            String unit,
            String why,
            String by,
            Optional<LocalDate> on,
            String place) {}

    /** A row under a header, by the header's words. */
    record Row(Grid grid, int row, Map<String, Integer> columns) {
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

        boolean has(String header) {
            return columns.containsKey(Names.fold(header));
        }

        /** A number as its digits whatever its format shows, else the text. */
        String digits(String header) {
            return cell(header)
                    .map(c -> c.value()
                            .match(
                                    t -> t.text().strip(),
                                    n -> plain(n.number()),
                                    m -> c.shown(),
                                    f -> c.shown(),
                                    e -> c.shown()))
                    .orElse("");
        }

        /** What the row holds, to be written again; under the day's heading a bare number is a day. */
        Map<String, soundings.notebook.Cell> cells() {
            Map<String, soundings.notebook.Cell> all = new HashMap<>();
            columns.forEach((header, column) -> grid.findCell(row, column)
                    .filter(c -> !c.shown().isBlank())
                    .ifPresent(c -> all.put(
                            header,
                            day(header)
                                    .filter(d -> header.equals(Names.fold(AnswerPages.ON)))
                                    .<soundings.notebook.Cell>map(soundings.notebook.Cell.Day::new)
                                    .orElseGet(() -> written(c)))));
            return Map.copyOf(all);
        }

        private static soundings.notebook.Cell written(Cell cell) {
            return cell.value()
                    .match(
                            t -> soundings.notebook.Cell.words(t.text()),
                            n -> new soundings.notebook.Cell.Number(n.number(), decimals(n.number()), ""),
                            m -> new soundings.notebook.Cell.Day(m.at().toLocalDate()),
                            f -> soundings.notebook.Cell.words(cell.shown()),
                            e -> soundings.notebook.Cell.words(cell.shown()));
        }

        private static int decimals(double number) {
            return Math.max(
                    0,
                    Math.min(6, BigDecimal.valueOf(number).stripTrailingZeros().scale()));
        }

        /** The zero behind a fraction keeps {@code 1.125} from looking like a thousand. */
        private static String plain(double number) {
            String digits = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
            return digits.indexOf('.') < 0 ? digits : digits + "0";
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
                .filter(r -> !r.low().isEmpty() || !r.high().isEmpty())
                .toList();
        return new ReportAnswers(answers, ranges);
    }

    private static Answer answer(Row row) {
        return new Answer(
                row.text(AnswerPages.TANK),
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
                row.digits(AnswerPages.NEW_LOW),
                row.digits(AnswerPages.NEW_HIGH),
                row.text(AnswerPages.UNIT),
                row.text(AnswerPages.WHY),
                row.text(AnswerPages.BY),
                row.day(AnswerPages.ON),
                row.place(AnswerPages.TEST));
    }

    /** The rows of every table whose header has both words. */
    static Stream<Row> rows(Book report, String first, String second) {
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
}
