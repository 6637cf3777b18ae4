package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.changes;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.doses;
import static soundings.layout.Sheets.entries;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.setup.Setup;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Look;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** The same log written another way says the same. */
class WrittenAnyWayTest {
    private static final List<Grid> SHEETS = List.of(
            sheet(
                    "Lagoon",
                    row("Date", "KH dKH", "Ca mg/L"),
                    row("13.01.2026", "8,2", 420),
                    row("14.01.2026", "8,1", 421)),
            sheet("Nursery", row("DATE", "PH", "NITRATE"), row("13.01.2026", "8,2", 5), row("14.01.2026", "8,1", "<2")),
            sheet("Water changes", row("Date", "Tank", "%"), row("15.01.2026", "Lagoon", 10)));

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void the_order_of_the_sheets_changes_nothing(long seed) {
        List<Grid> other = new ArrayList<>(SHEETS);
        Collections.shuffle(other, new Random(seed));

        assertThat(all(read(other.toArray(Grid[]::new))))
                .isEqualTo(all(read(SHEETS.toArray(Grid[]::new))))
                .hasSize(9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "tr"})
    void the_language_of_the_machine_changes_nothing(String language) {
        List<String> expected = all(read(SHEETS.toArray(Grid[]::new)));
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(language));

            assertThat(all(read(SHEETS.toArray(Grid[]::new)))).isEqualTo(expected);
        } finally {
            Locale.setDefault(before);
        }
    }

    /** 1 meq/L is 2.8 dKH by definition of the degree (10 mg/L CaO, 56.08 g/mol) to 0.2 %, and 50.04 mg/L CaCO3. */
    @ParameterizedTest
    @CsvSource({"dKH, 2.8043", "meq/L, 1", "mg/L CaCO3, 50.04", "mmol/L, 1"})
    void the_unit_alkalinity_is_written_in_changes_nothing(String unit, double ofOneMeq) {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Alkalinity (" + unit + ")"),
                row(day(5, 1), 2.9 * ofOneMeq),
                row(day(5, 2), 3.1 * ofOneMeq)));

        assertThat(entries(log, Reading.class))
                .extracting(r -> r.amount().about())
                .satisfiesExactly(
                        one -> assertThat(one).isBetween(8.12, 8.15),
                        two -> assertThat(two).isBetween(8.68, 8.71));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void blank_columns_change_nothing(long seed) {
        Random random = new Random(seed);
        List<Integer> places = new ArrayList<>();
        for (int c = 0, at = 0; c < 4; c++, at++) {
            at += random.nextInt(3);
            places.add(at);
        }
        Log log = read(sheet(
                "Lagoon",
                spread(places, "Date", "KH dKH", "Ca mg/L", "Mg ppm"),
                spread(places, day(5, 1), 8.2, 420, 1300),
                spread(places, day(5, 2), 8.1, "", 1310)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.2",
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-01 magnesium 1300",
                        "Lagoon 2026-05-02 alkalinity 8.1",
                        "Lagoon 2026-05-02 magnesium 1310");
    }

    @Test
    void a_count_of_drops_is_a_result_with_the_kits_step_only() {
        Grid sheet = sheet("Lagoon", row("Date", "KH dKH"), row(day(5, 1), "7 drops"), row(day(5, 2), "8 drops"));

        assertThat(readings(read(sheet))).isEmpty();
        assertThat(readings(read(Setups.kit("alkalinity", 1), sheet)))
                .containsExactly("Lagoon 2026-05-01 alkalinity 7", "Lagoon 2026-05-02 alkalinity 8");
    }

    @Test
    void what_is_written_for_all_tanks_belongs_to_each() {
        Log log = read(
                Setups.dosing("KH booster", "Lagoon", "Nursery"),
                sheet(
                        "Log",
                        row("Date", "Tank", "Ca ppm", "WC %", "KH booster ml/day", "Notes"),
                        row(day(5, 1), "Lagoon", 420, "", "", ""),
                        row(day(5, 2), "All tanks", "", 10, 30, "new carbon"),
                        row(day(5, 3), "both", 425, "", "", "15 L water change"),
                        row(day(5, 4), "Nursery", 430, "", "", "")));

        assertThat(readings(log)).containsExactly("Lagoon 2026-05-01 calcium 420", "Nursery 2026-05-04 calcium 430");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-02 0.1", "Nursery 2026-05-02 0.1");
        assertThat(doses(log)).containsExactly("Lagoon 2026-05-02 KH booster 30", "Nursery 2026-05-02 KH booster 30");
        assertThat(log.tanks()).containsExactly("Lagoon", "Nursery");
        assertThat(issues(log)).contains("nameMerged", "unreadableAmount");
    }

    @Test
    void a_name_taken_for_another_is_said() {
        Log log = read(sheet(
                "Log",
                row("Date", "Tank", "Ca ppm"),
                row(day(5, 1), "Lagoon", 420),
                row(day(5, 2), "Lagon", 421),
                row(day(5, 3), "Lagoon", 422),
                row(day(5, 4), "LAGOON", 423)));

        assertThat(readings(log)).hasSize(4).allMatch(r -> r.startsWith("Lagoon "));
        assertThat(issues(log)).containsExactly("nameMerged");
    }

    @Test
    void doses_and_changes_run_down_a_sheet_whose_dates_run_across() {
        Log log = read(
                Setup.EMPTY,
                sheet(
                        "Lagoon",
                        row("", "", day(5, 1), day(5, 3), day(5, 5)),
                        row("Alk", "dKH", 8.2, 8.1, 8.0),
                        row("Alk dose", "ml/day", 30, "", 35),
                        row("Water change", "%", "", 10, "")));

        assertThat(readings(log)).hasSize(3);
        assertThat(doses(log)).containsExactly("Lagoon 2026-05-01 Alk 30", "Lagoon 2026-05-05 Alk 35");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-03 0.1");
    }

    @Test
    void short_names_under_a_heading_of_doses_are_doses_in_every_row_with_a_date() {
        List<Region> merges = List.of(new Region(new CellRef(0, 2), new CellRef(0, 3)));
        Log log = read(sheet(
                "Lagoon",
                merges,
                row("", "Results", "Daily dosing (ml)", ""),
                row("Date", "Alk (dKH)", "Alk", "Cal"),
                row(day(5, 1), 8.2, 30, 20),
                row(day(5, 2), 8.2, "", 20),
                row(day(5, 3), "", 30, ""),
                row(day(5, 4), 8.2, "", "")));

        assertThat(readings(log)).hasSize(3);
        assertThat(doses(log))
                .containsExactly(
                        "Lagoon 2026-05-01 Alk 30",
                        "Lagoon 2026-05-01 Cal 20",
                        "Lagoon 2026-05-02 Cal 20",
                        "Lagoon 2026-05-03 Alk 30");
    }

    @Test
    void an_additive_keeps_its_name_however_a_note_spells_it_and_may_stop_by_it() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "KH mix", "Notes"),
                row(day(5, 1), 8.2, "50 ml/day", ""),
                row(day(5, 3), 8.2, "40 ml a day", "blue drops 12 ml a day"),
                row(day(5, 5), 8.2, "off", "stopped blue drops"),
                row(day(5, 9), 8.2, "", "KH MIX 55 ml/d")));

        assertThat(readings(log)).hasSize(4);
        assertThat(doses(log))
                .containsExactly(
                        "Lagoon 2026-05-01 KH mix 50",
                        "Lagoon 2026-05-03 KH mix 40",
                        "Lagoon 2026-05-03 blue drops 12",
                        "Lagoon 2026-05-05 KH mix 0",
                        "Lagoon 2026-05-05 blue drops 0",
                        "Lagoon 2026-05-09 KH mix 55");
        assertThat(issues(log)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void days_written_day_first_or_month_first_are_the_same_days(long seed) {
        Random random = new Random(seed);
        List<LocalDate> days = new ArrayList<>();
        LocalDate at = LocalDate.of(2026, 1, 2).plusDays(random.nextInt(60));
        for (int i = 0; i < 25; i++) {
            days.add(at);
            at = at.plusDays(1 + random.nextInt(6));
        }
        List<String> whole = readings(read(dated(days, "uuuu-MM-dd")));

        assertThat(readings(read(dated(days, "d/M/uuuu")))).isEqualTo(whole).hasSize(25);
        assertThat(readings(read(dated(days, "M/d/uuuu")))).isEqualTo(whole);
        assertThat(readings(read(dated(days, "dd.MM.uu")))).isEqualTo(whole);
        assertThat(readings(read(dated(days, "d MMM")))).isEqualTo(whole);
    }

    private static Grid dated(List<LocalDate> days, String pattern) {
        DateTimeFormatter format = DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
        List<Object[]> rows = new ArrayList<>();
        rows.add(row("Date", "Ca ppm"));
        days.forEach(d -> rows.add(row(format.format(d), 420 + d.getDayOfMonth() % 5)));
        return sheet("Lagoon", rows.toArray(Object[][]::new));
    }

    @Test
    void day_numbers_of_a_workbook_that_counts_from_1904_are_the_days_it_shows() {
        LocalDate first = day(5, 1);
        Value shown = new Value.Moment(first.toEpochDay() + 25_569 - 1462, first.atStartOfDay(), Value.Shows.DATE);
        double next = first.toEpochDay() + 25_569 - 1462 + 3;
        Log log = read(sheet("Lagoon", row("Date", "Ca ppm"), row(Cell.of(0, 0, shown), 420), row(next, 421)));

        assertThat(readings(log)).containsExactly("Lagoon 2026-05-01 calcium 420", "Lagoon 2026-05-04 calcium 421");
    }

    @Test
    void months_without_a_year_end_with_the_last_that_has_begun() {
        Log log = read(
                sheet("November", row("Day", "Ca ppm"), row(3, 420)),
                sheet("December", row("Day", "Ca ppm"), row(3, 421)),
                sheet("January", row("Day", "Ca ppm"), row(3, 422)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2025-11-03 calcium 420", "club 2025-12-03 calcium 421", "club 2026-01-03 calcium 422");
    }

    @Test
    void a_result_in_a_hidden_row_is_kept_and_not_used() {
        Cell hidden =
                new Cell(new CellRef(0, 0), new Value.Numeric(500), new Look("General", false, false, true, false), "");
        Log log = read(sheet("Lagoon", row("Date", "Ca ppm"), row(day(5, 1), 420), row(day(5, 2), hidden)));

        assertThat(readings(log))
                .containsExactly("Lagoon 2026-05-01 calcium 420", "Lagoon 2026-05-02 calcium 500 refused");
    }

    private static Object[] spread(List<Integer> places, Object... values) {
        Object[] cells = new Object[places.get(places.size() - 1) + 1];
        java.util.Arrays.fill(cells, "");
        for (int i = 0; i < values.length; i++) {
            cells[places.get(i)] = values[i];
        }
        return cells;
    }

    private static List<String> all(Log log) {
        List<String> all = new ArrayList<>(readings(log));
        all.addAll(changes(log));
        return all;
    }
}
