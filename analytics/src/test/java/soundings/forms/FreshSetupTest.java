package soundings.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.chemistry.Reference;
import soundings.layout.Layouts;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.Reading;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.setup.SetupReading;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;
import soundings.workbook.WorkbookReader;

/** A companion workbook nobody has written into changes nothing of what is read, now or when the log changes. */
class FreshSetupTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    static Stream<Path> samples() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files
                    .filter(f -> f.toString().endsWith(".xlsx")
                            || f.getFileName().toString().equals("exchange school.csv"))
                    .filter(f -> !f.toString().endsWith("-setup.xlsx"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void a_sample_is_read_the_same_with_it(Path sample) {
        same(WorkbookReader.read(sample, Optional.empty()));
    }

    static Stream<Object[][]> layouts() {
        return Stream.of(
                new Object[][] {
                    {"Month", "Day", "KH", "Ca"},
                    {"March", 2.0, 8.1, 420.0},
                    {"", 9.0, 8.0, 425.0},
                    {"April", 6.0, 8.2, 415.0}
                },
                new Object[][] {
                    {"Year", "Month", "Day", "KH"},
                    {2026.0, 3.0, 2.0, 8.1},
                    {2026.0, 3.0, 9.0, 8.0},
                    {2026.0, 4.0, 6.0, 8.2}
                },
                new Object[][] {
                    {"Date", "Reef KH", "Reef Ca", "Nano KH", "Nano Ca"},
                    {"2026-03-02", 8.1, 420.0, 7.1, 450.0},
                    {"2026-03-09", 8.0, 425.0, 7.2, 455.0}
                },
                new Object[][] {
                    {"Test", "Unit", "2026-03-02", "2026-03-09"},
                    {"KH", "dKH", 8.1, 8.0},
                    {"Calcium", "mg/l", 420.0, 425.0}
                },
                new Object[][] {
                    {"Date", "What", "How much"},
                    {"2026-03-02", "KH", 8.1},
                    {"2026-03-02", "alk mix", "30 ml/day"},
                    {"2026-03-09", "KH", 8.2},
                    {"2026-03-16", "water change", "40 L"}
                });
    }

    @ParameterizedTest
    @MethodSource("layouts")
    void other_layouts_are_read_the_same_with_it(Object[][] rows) {
        same(book(rows));
    }

    private static void same(Book book) {
        Log alone = read(book, Setup.EMPTY);
        Log with = read(book, fresh(alone));

        assertThat(alone.entries()).isNotEmpty();
        assertThat(entries(with)).containsExactlyElementsOf(entries(alone));
    }

    /** The unit was never written: in the next year's log of the same form it is another. */
    @Test
    void a_unit_that_was_worked_out_does_not_bind_the_next_reading() {
        Setup setup = fresh(read(alkalinity(8.1, 8.0, 8.2, 8.1, 8.0, 8.3), Setup.EMPTY));

        Log next = read(alkalinity(2.9, 2.86, 2.93, 2.9, 2.87, 2.95), setup);

        assertThat(readings(next)).hasSize(6).allSatisfy(r -> {
            assertThat(r.amount().about()).isBetween(7.9, 8.4);
            assertThat(r.inferred()).contains(Inferred.UNIT);
        });
    }

    private static Book alkalinity(double... values) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(new Object[] {"Date", "Alk"});
        for (int i = 0; i < values.length; i++) {
            rows.add(new Object[] {LocalDate.of(2026, 3, 2).plusDays(7L * i).toString(), values[i]});
        }
        return book(rows.toArray(Object[][]::new));
    }

    private static Setup fresh(Log log) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            SetupWorkbook.write(Optional.empty(), log, REFERENCE, out);
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
        return SetupReading.of(Written.book(out.toByteArray()), REFERENCE);
    }

    private static Log read(Book book, Setup setup) {
        return Layouts.interpret(book, REFERENCE, setup, new Settings(TODAY, Optional.empty()));
    }

    private static Book book(Object[][] rows) {
        List<Cell> cells = new ArrayList<>();
        for (int r = 0; r < rows.length; r++) {
            for (int c = 0; c < rows[r].length; c++) {
                if (!rows[r][c].equals("")) {
                    cells.add(Cell.of(
                            r,
                            c,
                            rows[r][c] instanceof Double number
                                    ? new Value.Numeric(number)
                                    : new Value.Text(rows[r][c].toString())));
                }
            }
        }
        return new Book("log.xlsx", List.of(Grid.of("Log 2026", false, cells, List.of())), List.of());
    }

    private static List<Reading> readings(Log log) {
        return log.entries().stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .toList();
    }

    /** Every entry with what it says; what about it was worked out may be confirmed by a tank's name in the setup. */
    private static List<String> entries(Log log) {
        return log.entries().stream().map(FreshSetupTest::said).sorted().toList();
    }

    private static String said(LogEntry entry) {
        return entry.match(
                r -> "reading " + r.tank() + " " + r.date() + " "
                        + r.parameter().id() + " " + r.amount() + " " + r.refused(),
                d -> "dose " + d,
                o -> "one off " + o,
                w -> "change " + w,
                n -> "remark " + n);
    }
}
