package soundings.layout;

import java.time.LocalDate;
import soundings.sheet.Book;
import soundings.sheet.Value;

/** From which day a workbook counts its days, told by the cells it shows as dates. */
final class Epoch {
    private static final LocalDate DAY_ZERO_1900 = LocalDate.of(1899, 12, 30);

    private Epoch() {}

    /** How many days later than in a workbook of 1900 a bare day count falls: 1,462 in one of 1904, else none. */
    static long shift(Book book) {
        return book.grids().stream()
                .flatMap(g -> g.cells().stream())
                .map(c -> c.value())
                .filter(v -> v instanceof Value.Moment m && m.serial() > 61)
                .map(v -> (Value.Moment) v)
                .mapToLong(m ->
                        m.at().toLocalDate().toEpochDay() - DAY_ZERO_1900.toEpochDay() - (long) Math.floor(m.serial()))
                .filter(shift -> shift == 1462)
                .findFirst()
                .orElse(0);
    }
}
