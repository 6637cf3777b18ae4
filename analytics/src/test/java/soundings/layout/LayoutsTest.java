package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.changes;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.doses;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import soundings.log.Log;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

class LayoutsTest {
    @Test
    void a_row_a_day_with_a_column_a_test() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH (dKH)", "Ca ppm", "Temp °F", "KH booster ml/day", "Water change %", "Notes"),
                row(day(5, 1), 8.2, 420, 77, 12.5, "", "fed"),
                row(day(5, 2), "8,1", "~425", "", "", 10, ""),
                row(day(5, 3), "n/a", ">500", "", 13, "", "")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.2",
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-01 temperature 25",
                        "Lagoon 2026-05-02 alkalinity 8.1",
                        "Lagoon 2026-05-02 calcium 425",
                        "Lagoon 2026-05-03 calcium 500");
        assertThat(doses(log)).hasSize(2);
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-02 0.1");
        assertThat(issues(log)).containsExactly("nothingWritten");
    }

    @Test
    void a_title_a_blank_band_and_a_unit_row_stand_above_the_table() {
        Log log = read(sheet(
                "Log",
                row("Lagoon: water tests"),
                row(),
                row("", "Day", "Alkalinity", "Phosphate"),
                row("", "", "meq/L", "ppb"),
                row("", day(5, 1), 3, 40),
                row("", day(5, 2), 2.9, 50)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.412",
                        "Lagoon 2026-05-01 phosphate 0.04",
                        "Lagoon 2026-05-02 alkalinity 8.131",
                        "Lagoon 2026-05-02 phosphate 0.05");
    }

    @Test
    void a_sheet_a_tank() {
        Object[] head = row("Date", "Ca (mg/L)");
        Log log = read(
                sheet("Lagoon", head, row(day(5, 1), 420)),
                sheet("Nursery", head, row(day(5, 1), 430), row(day(5, 2), 431)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-02 calcium 431");
    }

    @Test
    void a_tank_column_that_names_each_group_once() {
        Log log = read(sheet(
                "All",
                row("Tank", "Date", "Ca mg/L"),
                row("Lagoon", day(5, 1), 420),
                row("", day(5, 2), 421),
                row("", day(5, 3), 422),
                row("Nursery", day(5, 1), 430),
                row("", day(5, 2), 431)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-02 calcium 421",
                        "Lagoon 2026-05-03 calcium 422",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-02 calcium 431");
    }

    @Test
    void dates_only_on_the_first_row_of_a_day() {
        Log log = read(sheet(
                "All",
                row("Date", "Tank", "Ca mg/L"),
                row(day(5, 1), "Lagoon", 420),
                row("", "Nursery", 430),
                row(day(5, 2), "Lagoon", 421),
                row("\"", "Nursery", 431)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-02 calcium 421",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-02 calcium 431");
    }

    @Test
    void a_sheet_a_month_with_day_numbers_that_run_over_its_end() {
        Log log = read(
                sheet("January 2026", row("Day", "Ca mg/L"), row(29, 420), row(31, 421), row(1, 422), row(3, 423)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-01-29 calcium 420",
                        "club 2026-01-31 calcium 421",
                        "club 2026-02-01 calcium 422",
                        "club 2026-02-03 calcium 423");
    }

    @Test
    void tests_down_and_dates_across() {
        Log log = read(sheet(
                "Lagoon",
                row("Test", day(5, 1), day(5, 2), day(5, 4)),
                row("Ca mg/L", 420, "", 422),
                row("Mg mg/L", "", 1310, 1320)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-02 magnesium 1310",
                        "Lagoon 2026-05-04 calcium 422",
                        "Lagoon 2026-05-04 magnesium 1320");
    }

    @Test
    void one_result_a_row_with_its_test_and_unit() {
        Log log = read(sheet(
                "Results",
                row("Date", "Tank", "Test", "Result", "Unit"),
                row("02.03.2026", "Lagoon", "KH", "2.9", "meq/L"),
                row("02.03.2026", "Lagoon", "I", "60", "ug/L"),
                row("15.03.2026", "Nursery", "PO4", "<0.02", "ppm")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-03-02 alkalinity 8.131",
                        "Lagoon 2026-03-02 iodine 0.06",
                        "Nursery 2026-03-15 phosphate 0.02");
    }

    @Test
    void tables_side_by_side_under_merged_names() {
        List<Region> merges = List.of(
                new Region(new CellRef(0, 0), new CellRef(0, 1)), new Region(new CellRef(0, 3), new CellRef(0, 4)));
        Log log = read(sheet(
                "Both",
                merges,
                row("Lagoon", "", "", "Nursery", ""),
                row("Date", "Ca mg/L", "", "Date", "Ca mg/L"),
                row(day(5, 1), 420, "", day(5, 2), 430),
                row(day(5, 3), 421, "", day(5, 4), 431)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-03 calcium 421",
                        "Nursery 2026-05-02 calcium 430",
                        "Nursery 2026-05-04 calcium 431");
    }

    @Test
    void one_date_column_for_tanks_side_by_side() {
        List<Region> merges = List.of(
                new Region(new CellRef(0, 1), new CellRef(0, 2)), new Region(new CellRef(0, 3), new CellRef(0, 4)));
        Log log = read(
                Setups.tanks("Lagoon", "Nursery"),
                sheet(
                        "Both",
                        merges,
                        row("", "Lagoon", "", "Nursery", ""),
                        row("Date", "Ca mg/L", "Mg mg/L", "Ca mg/L", "Mg mg/L"),
                        row(day(5, 1), 420, 1300, 430, 1330),
                        row(day(5, 3), 421, 1301, 431, 1331)));

        assertThat(readings(log))
                .contains(
                        "Lagoon 2026-05-01 calcium 420",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-03 magnesium 1331")
                .hasSize(8);
    }

    @Test
    void tables_stacked_on_one_sheet() {
        Log log = read(
                Setups.tanks("Lagoon", "Nursery"),
                sheet(
                        "Log",
                        row("Lagoon"),
                        row("Date", "Ca mg/L"),
                        row(day(5, 1), 420),
                        row(),
                        row("Nursery"),
                        row("Date", "Mg mg/L", "Ca mg/L"),
                        row(day(5, 1), 1300, 430)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-01 magnesium 1300");
    }

    @Test
    void repeated_headings_and_unnamed_averages_are_no_readings() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Mg mg/L"),
                row(day(5, 1), 420, 1300),
                row(day(5, 2), 430, 1310),
                row(day(5, 3), 431, 1315),
                row("", 427, 1308.3),
                row(),
                row("Date", "Ca mg/L", "Mg mg/L"),
                row(day(6, 1), 440, 1320),
                row("Avg", 440, 1320)));

        assertThat(readings(log)).hasSize(8).doesNotContain("Lagoon 2026-05-03 calcium 427");
        assertThat(issues(log)).containsExactly("derivedRow", "derivedRow");
    }

    @Test
    void a_second_test_of_the_day_is_kept_although_it_equals_the_mean() {
        Log log = read(
                sheet("Lagoon", row("Date", "Ca mg/L"), row(day(5, 1), 420), row(day(5, 2), 430), row(day(5, 3), 425)));

        assertThat(readings(log)).hasSize(3);
    }

    @Test
    void dose_and_water_change_sheets() {
        Log log = read(
                Setups.tanks("Lagoon", "Nursery"),
                sheet(
                        "Results",
                        row("Date", "Tank", "Ca"),
                        row(day(5, 1), "Lagoon", 420),
                        row(day(5, 1), "Nursery", 430)),
                sheet(
                        "Dosing",
                        row("Tank", "From", "What", "ml per day"),
                        row("Lagoon", day(5, 1), "KH booster", 12),
                        row("Nursery", day(5, 3), "KH booster", 3.5)),
                sheet(
                        "Water changes",
                        row("Date", "Tank", "Litres"),
                        row(day(5, 4), "Lagoon", 40),
                        row(day(5, 11), "Nursery", 9)),
                sheet("Shopping", row("Item", "Cost"), row("salt", 62), row("carbon", 18.5)));

        assertThat(doses(log)).containsExactly("Lagoon 2026-05-01 KH booster 12", "Nursery 2026-05-03 KH booster 3.5");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-04 40 L", "Nursery 2026-05-11 9 L");
        assertThat(issues(log)).contains("sheetIgnored");
    }

    @Test
    void a_sheet_of_one_test_with_a_column_a_tank() {
        Log log = read(
                Setups.tanks("Lagoon", "Nursery"),
                sheet(
                        "Calcium ppm",
                        row("Date", "Lagoon", "Nursery"),
                        row(day(5, 1), 420, 430),
                        row(day(5, 2), "", 431)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 calcium 420",
                        "Nursery 2026-05-01 calcium 430",
                        "Nursery 2026-05-02 calcium 431");
    }

    @Test
    void another_language_and_another_order_of_columns() {
        Log log = read(sheet(
                "Becken 1",
                row("KH °dH", "Kalzium mg/l", "Datum"),
                row("7,5", 410, LocalDate.of(2026, 1, 4)),
                row("7,4", 405, LocalDate.of(2026, 1, 5))));

        assertThat(readings(log)).hasSize(4).allMatch(r -> r.startsWith("Becken 1 2026-01-0"));
    }

    @Test
    void a_merged_group_gives_its_sense_to_the_short_names_below_it() {
        List<Region> merges = List.of(
                new Region(new CellRef(0, 1), new CellRef(0, 2)), new Region(new CellRef(0, 3), new CellRef(0, 4)));
        Log log = read(sheet(
                "Lagoon",
                merges,
                row("", "Water tests", "", "Daily dosing (ml)", ""),
                row("Date", "KH dKH", "Ca ppm", "KH booster", "Ca booster"),
                row(day(5, 1), 8.2, 420, 12, 6),
                row(day(5, 2), 8.1, 425, "", 7)));

        assertThat(readings(log)).hasSize(4).contains("Lagoon 2026-05-02 alkalinity 8.1");
        assertThat(doses(log)).hasSize(3);
    }

    @Test
    void a_unit_column_beside_tests_that_run_down() {
        Log log = read(sheet(
                "Lagoon",
                row("Test", "Unit", day(5, 1), day(5, 2)),
                row("Alkalinity", "meq/L", 3, 2.9),
                row("KH booster dose", "ml/day", 12, ""),
                row("Water change", "%", "", 10)));

        assertThat(readings(log))
                .containsExactly("Lagoon 2026-05-01 alkalinity 8.412", "Lagoon 2026-05-02 alkalinity 8.131");
        assertThat(doses(log)).containsExactly("Lagoon 2026-05-01 KH booster 12");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-02 0.1");
    }

    @Test
    void rows_under_a_ditto_are_readings_whatever_their_values() {
        Log log = read(sheet(
                "Log",
                row("Date", "Tank", "Ca mg/L", "Mg mg/L"),
                row(day(5, 1), "Lagoon", 420, 1300),
                row("\"", "Nursery", 420, 1300),
                row(day(5, 2), "Lagoon", 420, 1300),
                row("", "Nursery", 420, 1300)));

        assertThat(readings(log)).hasSize(8);
        assertThat(issues(log)).isEmpty();
    }

    @Test
    void a_change_log_in_words() {
        Log log = read(
                Setups.dosing("KH booster", "Lagoon", "Nursery"),
                sheet(
                        "Tests",
                        row("Date", "Tank", "Ca ppm"),
                        row(day(5, 1), "Lagoon", 420),
                        row(day(5, 1), "Nursery", 425)),
                sheet(
                        "Changes",
                        row("Date", "Tank", "What happened"),
                        row(day(5, 4), "Lagoon", "KH booster now 30 ml/day"),
                        row(day(5, 5), "Nursery", "water change 12.5 litres")),
                sheet("WC", row("Date", "Tank", "% changed"), row(day(5, 9), "Lagoon", 15)));

        assertThat(doses(log)).containsExactly("Lagoon 2026-05-04 KH booster 30");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-09 0.15", "Nursery 2026-05-05 12.5 L");
    }

    @Test
    void in_a_list_of_all_sorts_the_unit_tells_results_from_doses() {
        Log log = read(sheet(
                "Log",
                row("Date", "Tank", "What", "Amount", "Unit"),
                row(day(5, 1), "Lagoon", "Alk", 8.2, "dKH"),
                row(day(5, 1), "Lagoon", "Ca", 430, "mg/L"),
                row(day(5, 1), "Lagoon", "Water change", 10, "%"),
                row(day(5, 2), "Lagoon", "Alk dose", 30, "ml/day"),
                row(day(5, 3), "Lagoon", "Alk", 8.1, "dKH")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.2",
                        "Lagoon 2026-05-01 calcium 430",
                        "Lagoon 2026-05-03 alkalinity 8.1");
        assertThat(doses(log)).singleElement().asString().contains("2026-05-02", " 30");
        assertThat(changes(log)).hasSize(1);
    }
}
