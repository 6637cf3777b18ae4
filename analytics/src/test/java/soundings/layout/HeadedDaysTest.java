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

import java.util.List;
import org.junit.jupiter.api.Test;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Columns headed by the days of the week, by hours, or by a calendar's names of days; weeks by their number. */
class HeadedDaysTest {
    @Test
    void in_a_strip_of_weekdays_each_cell_has_its_own_day() {
        Log log = read(sheet(
                "Alkalinity dKH",
                row("Week of", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row(day(4, 6), 8.1, "", 8.0, "", "", 7.9),
                row(day(4, 13), 8.2, "", "", 8.3)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-06 alkalinity 8.1",
                        "club 2026-04-08 alkalinity 8",
                        "club 2026-04-11 alkalinity 7.9",
                        "club 2026-04-13 alkalinity 8.2",
                        "club 2026-04-16 alkalinity 8.3");
        assertThat(Sheets.entries(log, Reading.class))
                .allSatisfy(r -> assertThat(r.inferred()).contains(Inferred.DATE));
    }

    @Test
    void a_strip_dated_by_its_last_day_counts_back() {
        Log log = read(sheet(
                "Alkalinity dKH",
                row("Week ending", "Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"),
                row(day(4, 12), 8.1, "", 8.0, "", "", 7.9, 8.0)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-06 alkalinity 8.1",
                        "club 2026-04-08 alkalinity 8",
                        "club 2026-04-11 alkalinity 7.9",
                        "club 2026-04-12 alkalinity 8");
    }

    @Test
    void a_date_in_the_middle_of_its_strip_is_used_for_none_of_its_days() {
        Log log = read(sheet(
                "Alkalinity dKH",
                row("Week", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row(day(4, 8), 8.1, "", 8.0),
                row(day(4, 15), 8.2, "", 8.1)));

        assertThat(readings(log)).isNotEmpty().allMatch(r -> r.endsWith("refused"));
    }

    @Test
    void strips_of_a_week_each_with_the_tests_beside_them() {
        Log log = read(sheet(
                "Weekly",
                row("Week beginning 6 April 2026"),
                row("", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row("KH dKH", "", 8.1, "", "", 8.0),
                row("Temp °C", 25.1, 25.2, 25, 25.3, 24.9, 25, 25.1),
                row(""),
                row("Week beginning 13 April 2026"),
                row("", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row("KH dKH", "", 8.2),
                row("Temp °C", 25.4)));

        assertThat(readings(log))
                .hasSize(11)
                .contains(
                        "club 2026-04-07 alkalinity 8.1",
                        "club 2026-04-10 alkalinity 8",
                        "club 2026-04-12 temperature 25.1",
                        "club 2026-04-13 temperature 25.4",
                        "club 2026-04-14 alkalinity 8.2");
    }

    /** 1 April 2026 is a Wednesday. */
    @Test
    void in_a_calendar_the_number_above_a_text_is_its_day() {
        Log log = read(sheet(
                "Calendar",
                row("April 2026"),
                row("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row("", "", 1, 2, 3, 4, 5),
                row("", "", "Alk 8.1 dKH", "", "", "Alk 8.0 dKH\nCa 420 ppm"),
                row(6, 7, 8, 9, 10, 11, 12),
                row("10 % wc", "", "", "Alk 8.2 dKH")));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-01 alkalinity 8.1",
                        "club 2026-04-04 alkalinity 8",
                        "club 2026-04-04 calcium 420",
                        "club 2026-04-09 alkalinity 8.2");
        assertThat(changes(log)).containsExactly("club 2026-04-06 0.1");
    }

    @Test
    void a_calendar_whose_numbers_do_not_fall_on_their_weekdays_is_not_used() {
        Log log = read(sheet(
                "Calendar",
                row("April 2025"),
                row("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"),
                row("", "", 1, 2, 3, 4, 5),
                row("", "", "Alk 8.1 dKH", "", "", "Alk 8.0 dKH"),
                row(6, 7, 8, 9, 10, 11, 12),
                row("", "", "", "Alk 8.2 dKH")));

        assertThat(readings(log)).isEmpty();
        assertThat(log.issues()).isNotEmpty();
    }

    @Test
    void hours_over_the_columns_are_the_time_of_the_test() {
        Log log =
                read(sheet("pH", row("Date", "08:00", "20:00"), row(day(4, 6), 7.98, 8.2), row(day(4, 7), 7.99, 8.21)));

        assertThat(Sheets.entries(log, Reading.class))
                .extracting(r -> r.time().map(Object::toString).orElse(""))
                .containsExactlyInAnyOrder("08:00", "20:00", "08:00", "20:00");
    }

    /** ISO 8601: week 1 is that of 4 January; week 14 of 2026 begins on Monday 30 March. */
    @Test
    void a_week_by_its_number_and_the_day_beside_it_are_a_date() {
        Log log = read(sheet(
                "Cove",
                row("Week", "Day", "KH dKH"),
                row("2026-W14", "Wed", 8.1),
                row("2026-W15", "Fri", 8.0),
                row("2026-W16", "Wed", 8.2)));

        assertThat(readings(log))
                .containsExactly(
                        "Cove 2026-04-01 alkalinity 8.1",
                        "Cove 2026-04-10 alkalinity 8",
                        "Cove 2026-04-15 alkalinity 8.2");
    }

    @Test
    void a_week_without_its_day_dates_no_result() {
        Log log = read(sheet(
                "Cove", row("Week", "KH dKH"), row("2026-W14", 8.1), row("2026-W15", 8.0), row("KW 16/2026", 8.2)));

        assertThat(readings(log)).hasSize(3).allMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).contains("unreadableDate");
    }

    @Test
    void a_week_number_without_a_year_says_what_is_missing() {
        Log log = read(sheet(
                "Cove",
                row("Date", "KH dKH"),
                row(day(4, 6), 8.1),
                row("wk 16", 8.0),
                row(day(4, 20), 8.2),
                row(day(4, 27), 8.2)));

        assertThat(readings(log)).hasSize(3);
        assertThat(log.issues()).anySatisfy(i -> assertThat(i.message()).contains("it is a week's number"));
    }

    @Test
    void under_a_heading_of_several_columns_each_column_is_what_its_own_word_says() {
        Log log = read(sheet(
                "Lagoon",
                row("Tests", "", "", "", "Doses", "", "", "", "Water changes"),
                row("Date", "KH dKH", "Ca ppm", "", "From", "Solution", "ml/day", "", "Date", "Litres"),
                row(day(4, 3), 8.1, 420, "", day(4, 1), "alk mix", 30, "", day(4, 5), 30),
                row(day(4, 7), 8.0, 425, "", day(4, 12), "alk mix", 34, "", day(4, 19), 25),
                row(day(4, 11), 8.2, 430)));

        assertThat(readings(log)).hasSize(6);
        assertThat(doses(log)).containsExactly("Lagoon 2026-04-01 alk mix 30", "Lagoon 2026-04-12 alk mix 34");
        assertThat(changes(log)).containsExactly("Lagoon 2026-04-05 30 L", "Lagoon 2026-04-19 25 L");
    }

    /** {@code KH} is a test's name and a unit. */
    @Test
    void results_under_a_title_that_names_the_test_are_its() {
        Log log = read(sheet(
                "Notes",
                row("KH"),
                row("Date", "Result", "Remark"),
                row(day(4, 3), 8.1),
                row(day(4, 8), 8.2, "cloudy vial"),
                row("Calcium"),
                row("Date", "Result", "Remark"),
                row(day(4, 3), 420),
                row(day(4, 8), 425)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-03 alkalinity 8.1",
                        "club 2026-04-03 calcium 420",
                        "club 2026-04-08 alkalinity 8.2",
                        "club 2026-04-08 calcium 425");
    }

    @Test
    void a_list_of_all_sorts_is_read_by_what_each_row_names() {
        Log log = read(sheet(
                "Everything",
                row("When", "Tank", "What", "How much"),
                row(day(4, 3), "Lagoon", "KH", 8.1),
                row(day(4, 3), "Ledge", "Ca", 420),
                row(day(4, 3), "Lagoon", "alk mix", "30 ml/day"),
                row(day(4, 5), "Lagoon", "water change", "40 L"),
                row(day(4, 7), "Lagoon", "KH", 8.0),
                row(day(4, 7), "Ledge", "alk mix", "15 ml"),
                row(day(4, 9), "Ledge", "Ca", 425)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-04-03 alkalinity 8.1",
                        "Lagoon 2026-04-07 alkalinity 8",
                        "Ledge 2026-04-03 calcium 420",
                        "Ledge 2026-04-09 calcium 425");
        assertThat(doses(log)).containsExactly("Lagoon 2026-04-03 alk mix 30");
        assertThat(changes(log)).containsExactly("Lagoon 2026-04-05 40 L");
    }

    @Test
    void a_text_merged_over_tests_is_a_note_of_its_row() {
        Log log = read(sheet(
                "Cove",
                List.of(new Region(new CellRef(2, 1), new CellRef(2, 2))),
                row("Date", "KH dKH", "Ca ppm"),
                row(day(4, 3), 8.1, 420),
                row(day(4, 4), "changed 20 litres, all well"),
                row(day(4, 5), 8.0, 425)));

        assertThat(changes(log)).containsExactly("Cove 2026-04-04 20 L");
        assertThat(readings(log)).hasSize(4);
    }
}
