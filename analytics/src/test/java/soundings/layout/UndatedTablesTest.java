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

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.Reading;

/** Tables without a column of dates: laboratory sheets, diaries whose texts begin with their day; and ways of testing. */
class UndatedTablesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lab results 3 May 2026",
                "Sample taken: 3.5.2026",
                "Laboratory, 2026-05-03, sheet 2",
                "ICP May 3, 2026"
            })
    void results_under_a_dated_title_are_of_that_day_and_from_the_laboratory(String title) {
        Log log = read(sheet(
                "Sheet1",
                row(title),
                row(),
                row("Element", "Result", "Unit"),
                row("Ca", 420, "mg/L"),
                row("I", 60, "ug/L"),
                row("Sr", 8000, "ug/L")));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-05-03 calcium 420", "club 2026-05-03 iodine 0.06", "club 2026-05-03 strontium 8");
        assertThat(entries(log, Reading.class)).allMatch(r -> r.inferred().contains(Inferred.DATE));
        assertThat(issues(log)).containsExactly("dateFromTitle");
        assertThat(entries(log, Reading.class))
                .allMatch(r -> r.method().equals(title.startsWith("Sample") ? "" : "laboratory"));
    }

    @Test
    void a_date_above_the_results_leaves_the_units_beside_them() {
        Log log = read(sheet(
                "Lab",
                row("Laboratory report"),
                row("Sample date", day(5, 3)),
                row(),
                row("Parameter", "Measured", "Reference", "Unit"),
                row("Calcium", 420, 410, "mg/L"),
                row("Iodine", 60, 60, "ug/L")));

        assertThat(readings(log)).containsExactly("club 2026-05-03 calcium 420", "club 2026-05-03 iodine 0.06");
        assertThat(entries(log, Reading.class)).allMatch(r -> r.method().equals("laboratory"));
    }

    @Test
    void two_dates_above_a_table_are_not_chosen_between() {
        Log log = read(sheet(
                "Lab",
                row("Sampled 3 May 2026, measured 9 May 2026"),
                row("Element", "Result", "Unit"),
                row("Ca", 420, "mg/L"),
                row("Mg", 1300, "mg/L")));

        assertThat(readings(log)).isEmpty();
    }

    @Test
    void what_a_salt_mix_holds_is_no_tanks_water() {
        Log log = read(sheet(
                "Lab",
                row("Salt mix, 3 May 2026"),
                row("Element", "Result", "Unit"),
                row("Ca", 440, "mg/L"),
                row("Mg", 1300, "mg/L")));

        assertThat(readings(log)).isEmpty();
    }

    @Test
    void a_laboratorys_dates_across_with_a_title_above() {
        Log log = read(sheet(
                "Sheet1",
                row("Lab analysis Lagoon"),
                row("Element", "Unit", day(5, 3), day(6, 7)),
                row("Ca", "mg/L", 420, 430),
                row("I", "ug/L", 60, 55)));

        assertThat(readings(log)).contains("Lagoon 2026-06-07 iodine 0.055").hasSize(4);
        assertThat(entries(log, Reading.class)).allMatch(r -> r.method().equals("laboratory"));
    }

    @Test
    void texts_that_begin_with_their_day_are_a_diary() {
        Log log = read(sheet(
                "Lagoon",
                row("1 May 2026: Alk 8.2 dKH, Ca 420 ppm"),
                row("Sunday 3 May - Alk 8.1 dKH, 10 % WC"),
                row("5.5. Alk 8.0 dKH, changed carbon"),
                row("new lamp"),
                row("9.5.2026 alk 7.9 dKH; dosing alk 30 ml x4/day")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.2",
                        "Lagoon 2026-05-01 calcium 420",
                        "Lagoon 2026-05-03 alkalinity 8.1",
                        "Lagoon 2026-05-05 alkalinity 8",
                        "Lagoon 2026-05-09 alkalinity 7.9");
        assertThat(changes(log)).containsExactly("Lagoon 2026-05-03 0.1");
        assertThat(doses(log)).containsExactly("Lagoon 2026-05-09 alk 120");
    }

    @Test
    void columns_of_one_test_are_told_apart_by_their_way_of_testing() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH kit A dKH", "KH kit B dKH", "Ca ppm"),
                row(day(5, 1), 8.2, 8.6, 420),
                row(day(5, 3), 8.1, 8.5, 421)));

        assertThat(entries(log, Reading.class).stream().map(r -> r.parameter().id() + " " + r.method()))
                .containsExactlyInAnyOrder(
                        "alkalinity KH kit A dKH",
                        "alkalinity KH kit A dKH",
                        "alkalinity KH kit B dKH",
                        "alkalinity KH kit B dKH",
                        "calcium ",
                        "calcium ");
    }

    @Test
    void days_parted_by_points_stand_day_first_even_when_they_lie_a_month_apart() {
        Log log = read(sheet(
                "Lagoon", row("Date", "Ca ppm"), row("1.5.2026", 420), row("1.6.2026", 421), row("1.7.2026", 422)));

        assertThat(readings(log)).contains("Lagoon 2026-06-01 calcium 421");
    }

    @Test
    void names_over_the_days_of_a_sheet_are_asked_about_before_anything_is_used() {
        Log log = read(sheet(
                "Sheet1",
                row("", "Lagoon", "Nursery"),
                row("Sampled", day(5, 3), day(5, 4)),
                row("Ca (mg/L)", 420, 430),
                row("Mg (mg/L)", 1300, 1310)));

        assertThat(readings(log)).hasSize(4).allMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).containsExactly("tanksUnclear");
    }
}
