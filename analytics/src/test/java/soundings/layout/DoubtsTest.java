package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.changes;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.setup.Setup;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Look;
import soundings.sheet.Value;

class DoubtsTest {
    @Test
    void a_unit_that_is_not_written_is_inferred_by_value_and_said_so() {
        Log log = read(sheet("Lagoon", row("Date", "KH", "Temp"), row(day(5, 1), 2.9, 78), row(day(5, 2), 3.0, 77)));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 alkalinity 8.131", "Lagoon 2026-05-02 temperature 25");
        assertThat(Sheets.entries(log, Reading.class))
                .allMatch(r -> r.inferred().contains(Inferred.UNIT));
        assertThat(issues(log)).containsExactly("unitAssumed", "unitAssumed");
    }

    @Test
    void a_unit_that_could_be_two_is_not_guessed() {
        Log log = read(sheet("Lagoon", row("Date", "KH"), row(day(5, 1), 5.0), row(day(5, 2), 5.1)));

        assertThat(readings(log)).allMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).contains("unitUnclear");
    }

    @Test
    void a_unit_that_changes_half_way_down_is_noticed() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH ppm CaCO3"),
                row(day(5, 1), 146),
                row(day(5, 2), 145),
                row(day(5, 3), 143),
                row(day(5, 4), 144),
                row(day(5, 5), 8.1),
                row(day(5, 6), 8.0),
                row(day(5, 7), 8.2)));

        assertThat(readings(log)).contains("Lagoon 2026-05-06 alkalinity 8").noneMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).containsExactly("unitChanged");
    }

    @Test
    void dates_that_run_evenly_in_one_order_only_settle_it() {
        Log log = read(
                sheet("Lagoon", row("Date", "Ca ppm"), row("1/3/26", 420), row("2/3/26", 421), row("4/3/26", 422)));

        assertThat(readings(log)).contains("Lagoon 2026-03-04 calcium 422");
    }

    @Test
    void dates_that_fit_two_orders_are_used_in_neither_until_the_keeper_says() {
        Grid sheet = sheet("Lagoon", row("Date", "Ca ppm"), row("1/3/26", 420), row("4/5/26", 421));

        assertThat(readings(read(sheet))).allMatch(r -> r.endsWith("refused"));
        assertThat(issues(read(sheet))).contains("ambiguousDates");
        assertThat(readings(read(Setups.preferring("date order", "month first"), sheet)))
                .contains("Lagoon 2026-04-05 calcium 421");
    }

    @Test
    void a_year_mistyped_is_set_aside_and_named() {
        List<Object[]> rows = new ArrayList<>(List.of(row("Date", "Ca ppm"), new Object[0]));
        rows.remove(1);
        for (int i = 1; i <= 8; i++) {
            rows.add(row(LocalDate.of(i == 5 ? 2025 : 2026, 5, i), 420 + i));
        }
        Log log = read(sheet("Lagoon", rows.toArray(Object[][]::new)));

        assertThat(readings(log))
                .contains("Lagoon 2026-05-05 calcium 425 refused")
                .hasSize(8);
        assertThat(issues(log)).containsExactly("mistypedYear");
    }

    @Test
    void values_under_each_others_heading_are_not_used() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Mg mg/L"),
                row(day(5, 1), 420, 1310),
                row(day(5, 2), 1320, 425),
                row(day(5, 3), 421, 1315)));

        assertThat(readings(log).stream().filter(r -> r.endsWith("refused"))).hasSize(2);
        assertThat(issues(log)).containsExactly("swappedColumns");
    }

    @Test
    void struck_out_and_hidden_cells_are_kept_and_not_used() {
        Cell struck = new Cell(
                new soundings.sheet.CellRef(0, 0),
                new Value.Numeric(430),
                new Look("General", false, true, false, false),
                "");
        Log log = read(sheet("Lagoon", row("Date", "Ca ppm"), row(day(5, 1), 420), row(day(5, 2), struck)));

        assertThat(readings(log))
                .containsExactly("Lagoon 2026-05-01 calcium 420", "Lagoon 2026-05-02 calcium 430 refused");
    }

    @Test
    void a_low_reached_step_by_step_is_used_and_a_sudden_one_out_of_range_is_not() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "Ca ppm"),
                row(day(5, 1), 4.2, 420),
                row(day(5, 2), 3.0, 42),
                row(day(5, 3), 1.8, 4200)));

        assertThat(readings(log)).contains("Lagoon 2026-05-03 alkalinity 1.8");
        assertThat(readings(log))
                .contains("Lagoon 2026-05-02 calcium 42 refused", "Lagoon 2026-05-03 calcium 4200 refused");
    }

    @Test
    void a_correction_of_the_keeper_overrides_the_heading() {
        Setup setup =
                Setups.correcting(new Setup.Column("Lagoon", "", "Kit B", "calcium", "mg/L", "", Optional.empty()));
        Log log = read(setup, sheet("Lagoon", row("Date", "Mg ppm", "Kit B"), row(day(5, 1), 1300, 420)));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 calcium 420");
    }

    @Test
    void a_correction_still_holds_when_the_log_has_grown() {
        Setup setup = Setups.correcting(
                new Setup.Column("Lagoon", "A1:C2", "Kit B", "calcium", "mg/L", "", Optional.empty()));
        Log log = read(
                setup,
                sheet(
                        "Lagoon",
                        row("Date", "Mg ppm", "Kit B", "Notes"),
                        row(day(5, 1), 1300, 420, ""),
                        row(day(5, 2), 1310, 425, "fed")));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 calcium 420", "Lagoon 2026-05-02 calcium 425");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void order_of_columns_and_blank_rows_change_nothing(long seed) {
        Random random = new Random(seed);
        List<String> heads = List.of("Date", "KH dKH", "Ca mg/L", "Mg ppm", "NO3 mg/L", "Notes");
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5));
        List<Object[]> plain = new ArrayList<>();
        for (int d = 1; d <= 20; d++) {
            plain.add(
                    row(day(5, d), 8 + d % 3 / 10.0, 420 + d, d % 4 == 0 ? "" : 1300 + d, 5, d % 5 == 0 ? "fed" : ""));
        }
        List<String> expected = readings(read(table(heads, plain, order, new Random(0), 0)));
        Collections.shuffle(order, random);

        assertThat(readings(read(table(heads, plain, order, random, 0.2))))
                .isEqualTo(expected)
                .hasSize(75);
    }

    private static Grid table(
            List<String> heads, List<Object[]> rows, List<Integer> order, Random random, double blanks) {
        List<Object[]> all = new ArrayList<>();
        all.add(order.stream().map(heads::get).toArray());
        for (Object[] row : rows) {
            if (random.nextDouble() < blanks) {
                all.add(new Object[0]);
            }
            all.add(order.stream().map(i -> row[i]).toArray());
        }
        return sheet("Lagoon", all.toArray(Object[][]::new));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void whatever_stands_in_a_sheet_is_accounted_for(long seed) {
        Random random = new Random(seed);
        Object[] things = {
            "Date",
            "KH",
            "Ca ppm",
            "Tank",
            "Test",
            "Result",
            "Unit",
            "Avg",
            "n/a",
            "\"",
            "8,2",
            "<0.02",
            "1/3/26",
            "fed",
            8.2,
            420,
            45_000,
            day(5, 1),
            day(5, 2),
            "10% WC",
            "Dosing: KH booster 5 ml/day",
            "May 2026",
            "",
            "",
            ""
        };
        Object[][] rows = new Object[random.nextInt(12) + 1][];
        for (int r = 0; r < rows.length; r++) {
            rows[r] = random.ints(random.nextInt(7) + 1, 0, things.length)
                    .mapToObj(i -> things[i])
                    .toArray();
        }

        assertThat(read(sheet("Log", rows))).isNotNull();
    }

    @Test
    void a_slip_of_the_pen_is_set_aside_and_what_may_be_meant_is_offered() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "SG", "Ca ppm", "WC"),
                row("01.09.26", 8.2, 1.026, 420, "20 litres ( about 15%)"),
                row("10.09.26", 82, 1.26, "42O", "2O l"),
                row("31.09.26", 8.1, 1.025, 421, "")));

        assertThat(readings(log).stream().filter(r -> !r.endsWith("refused"))).hasSize(3);
        assertThat(changes(log)).containsExactly("Lagoon 2026-09-01 20 L");
        assertThat(log.issues().stream().map(i -> i.message()))
                .anyMatch(m -> m.contains("8.2 is meant"))
                .anyMatch(m -> m.contains("1.026 is meant"))
                .anyMatch(m -> m.contains("420 may be meant"))
                .anyMatch(m -> m.contains("20 l is meant") || m.contains("20 l may be meant"))
                .anyMatch(m -> m.contains("31 September does not exist"));
    }
}
