package soundings.xlsx;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.sheet.Cell;
import soundings.sheet.Grid;

/** A row of a report under a header, by the header's words, as somebody may have filled it. */
record WrittenRow(Grid grid, int row, Map<String, Integer> columns) {
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
                0, Math.min(6, BigDecimal.valueOf(number).stripTrailingZeros().scale()));
    }

    /** The zero behind a fraction keeps {@code 1.125} from looking like a thousand. */
    private static String plain(double number) {
        String digits = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        return digits.indexOf('.') < 0 ? digits : digits + "0";
    }

    private static Optional<LocalDate> isoDay(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (java.time.format.DateTimeParseException other) {
            return Optional.empty();
        }
    }
}
