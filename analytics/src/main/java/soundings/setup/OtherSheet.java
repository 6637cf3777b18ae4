package soundings.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.sheet.Book;

/** One more sheet of the companion workbook for whoever owns it: rows with the keeper's own date order and decimal mark. */
public final class OtherSheet {
    private OtherSheet() {}

    /**
     * The rows whose column {@code key} is filled in; none where the book lacks the sheet.
     *
     * @param read makes a line's meaning, so that what could not be read is known when this returns
     */
    public static <T> Read<T> read(Book book, String sheet, String key, Reference reference, Function<Line, T> read) {
        List<Issue> issues = new ArrayList<>();
        Cells cells = SetupReading.cells(reference, SetupReading.preferences(book), issues);
        Optional<SheetTable> table =
                SheetTable.find(book, sheet).filter(t -> !t.grid().cells().isEmpty());
        if (table.isPresent() && !table.get().has(key)) {
            issues.add(new SetupIssues.MissingColumn(table.get().headerPlace(), sheet, key));
            return new Read<>(List.of(), issues);
        }
        List<T> rows = table.stream()
                .flatMap(t -> t.rows().stream())
                .filter(r -> !r.text(key).isEmpty())
                .map(r -> read.apply(new Line(r, cells)))
                .toList();
        return new Read<>(rows, issues);
    }

    /** What the rows say and what could not be read. */
    public record Read<T>(List<T> rows, List<Issue> issues) {
        public Read {
            rows = List.copyOf(rows);
            issues = List.copyOf(issues);
        }
    }

    /** One row; a column the sheet lacks is blank. */
    public static final class Line {
        private final SheetTable.Row row;
        private final Cells cells;

        Line(SheetTable.Row row, Cells cells) {
            this.row = row;
            this.cells = cells;
        }

        public String text(String column) {
            return row.text(column);
        }

        /** The number in a cell, whatever unit stands behind it. */
        public OptionalDouble number(String column) {
            return cells.number(row, column);
        }

        /** A number above zero; anything else is an issue and left out. */
        public OptionalDouble positive(String column) {
            OptionalDouble number = number(column);
            if (number.isPresent() && number.getAsDouble() <= 0) {
                cells.issues().add(new SetupIssues.UnreadableSetting(row.at(column), "a number above zero"));
                return OptionalDouble.empty();
            }
            return number;
        }

        /** The test named in the column Parameter. */
        public Optional<Parameter> parameter() {
            return cells.parameter(row);
        }

        public AsWritten at(String column) {
            return row.at(column);
        }

        public Optional<LocalDate> day(String column) {
            return cells.date(row, column);
        }

        /** {@code Sheet!C14}. */
        public String place(String column) {
            return row.place(column);
        }
    }
}
