package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.changes;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Look;
import soundings.sheet.Value;

/** Numbers that look like a test's result and are none. */
class NoResultsTest {
    private static Log ofCell(Object cell) {
        return read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Mg mg/L"),
                row(day(5, 1), 410, 1300),
                row(day(5, 8), cell, 1310),
                row(day(5, 15), 415, 1320)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"420/440", "420 -> 440", "450 target", "430 max", "420, 430", "wanted 430", "425 yesterday"})
    void two_results_or_an_aim_in_one_cell_are_not_used(String cell) {
        assertThat(readings(ofCell(cell))).noneMatch(r -> r.contains("2026-05-08 calcium"));
        assertThat(issues(ofCell(cell))).contains("unreadableAmount");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "420 ± 5; 420",
                "420 +/-5; 420",
                "*420; 420",
                "420/420; 420",
                "dto.; 410",
                "same; 410",
                "wie oben; 410"
            })
    void what_stands_beside_one_result_does_not_hide_it(String cell, String value) {
        assertThat(readings(ofCell(cell))).contains("Lagoon 2026-05-08 calcium " + value);
    }

    @Test
    void a_row_of_averages_of_tests_and_sums_of_doses_is_none() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "Ca mg/L", "booster ml/day"),
                row(day(5, 1), 8.2, 410, 30),
                row(day(5, 8), 8.1, 415, 32),
                row("", 8.15, 412.5, 62)));

        assertThat(issues(log)).contains("derivedRow");
        assertThat(readings(log)).hasSize(4);
    }

    @Test
    void a_column_worked_out_from_the_same_test_is_none_but_stands_where_it_is_the_only_one() {
        Object formula =
                new Cell(new CellRef(0, 0), new Value.Numeric(425), new Look("General", false, false, false, true), "");
        Log twice = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Ca mg/L corrected", "Ca at 35 mg/L"),
                row(day(5, 1), 410, 420, formula),
                row(day(5, 8), 415, 424, formula),
                row(day(5, 15), 415, 424, formula)));
        Log alone = read(sheet("Lagoon", row("Date", "Ca mg/L corrected"), row(day(5, 1), 420), row(day(5, 8), 424)));

        assertThat(readings(twice))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 410",
                        "Lagoon 2026-05-08 calcium 415",
                        "Lagoon 2026-05-15 calcium 415");
        assertThat(readings(alone)).hasSize(2);
    }

    @Test
    void steps_of_a_kit_counted_under_a_heading_wait_for_what_one_is_worth() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH drops", "Ca (ml titrant)", "KH drop kit dKH"),
                row(day(5, 1), 15, 0.85, 7.5),
                row(day(5, 8), 16, 0.86, 8)));

        assertThat(readings(log)).containsExactly("Lagoon 2026-05-01 alkalinity 7.5", "Lagoon 2026-05-08 alkalinity 8");
        assertThat(Sheets.doses(log)).isEmpty();
        assertThat(issues(log)).filteredOn("unreadableAmount"::equals).hasSize(4);
    }

    /** Nitrate is 62.0049 g/mol and nitrogen 14.007: IUPAC, Standard atomic weights 2021. */
    @Test
    void a_nutrient_counted_as_its_element_is_converted() {
        Log log = read(
                sheet("Lagoon", row("Date", "NO3 as N", "P (ppb)"), row(day(5, 1), 1, 20), row(day(5, 8), 1.1, 21)));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 nitrate 4.427", "Lagoon 2026-05-01 phosphate 0.061");
    }

    @Test
    void numbers_of_other_water_in_a_note_are_none() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "Notes"),
                row(day(5, 1), 8.2, "RO water TDS 3, pH 6.8"),
                row(day(5, 8), 8.1, "new mix: KH 9.1, Ca 480")));

        assertThat(readings(log)).hasSize(2).allMatch(r -> r.contains("alkalinity"));
    }

    @Test
    void a_bare_water_change_beside_litres_and_shares_and_a_share_below_one_are_asked() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "Water change"),
                row(day(5, 1), 8.2, "20 %"),
                row(day(5, 8), 8.1, "40 L"),
                row(day(5, 15), 8.1, 15)));
        Log shares = read(sheet(
                "Lagoon", row("Date", "KH dKH", "Water change %"), row(day(5, 1), 8.2, 10), row(day(5, 8), 8.2, 0.1)));

        assertThat(changes(log)).containsExactly("Lagoon 2026-05-01 0.2", "Lagoon 2026-05-08 40 L");
        assertThat(changes(shares)).containsExactly("Lagoon 2026-05-01 0.1");
        assertThat(issues(log)).contains("unreadableAmount");
        assertThat(issues(shares)).contains("unreadableAmount");
    }

    @Test
    void targets_between_the_tests_and_their_units_are_no_results_and_hide_none() {
        Log log = read(sheet(
                "Lagoon",
                row("", "KH", "Ca"),
                row("target", "8-9", 430),
                row("NSW", 7, 412),
                row("Date", "dKH", "ppm"),
                row(day(5, 1), 8.2, 410),
                row(day(5, 8), 8.1, 415)));

        assertThat(readings(log)).hasSize(4).contains("Lagoon 2026-05-08 calcium 415");
    }

    @Test
    void a_laboratorys_advice_and_usual_values_are_no_results_and_hide_none() {
        Log log = read(sheet(
                "Lab 12 May 2026",
                row("Element", "Found", "Unit", "Natural seawater", "Advice"),
                row("Calcium", 418, "mg/l", 420, "ok"),
                row("Iodine", 48, "µg/l", 60, "low"),
                row("Phosphorus", 20, "µg/l", "", "")));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-05-12 calcium 418",
                        "club 2026-05-12 iodine 0.048",
                        "club 2026-05-12 phosphate 0.061");
    }
}
