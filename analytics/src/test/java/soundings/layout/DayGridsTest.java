package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.Reading;

/** Grids whose every cell has a day of its own. Weeks are numbered as in ISO 8601: week 15 of 2026 begins on Monday, 6 April. */
class DayGridsTest {
    private static final Object[] WEEK = row("Week", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    @Test
    void numbered_weeks_have_the_year_of_the_sheet() {
        Log log = read(sheet("Alkalinity dKH 2026", WEEK, row(15, 8.2, "", 8.1), row(16, 8.0, "", "", "", 7.9)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-06 alkalinity 8.2",
                        "club 2026-04-08 alkalinity 8.1",
                        "club 2026-04-13 alkalinity 8",
                        "club 2026-04-17 alkalinity 7.9");
        assertThat(Sheets.entries(log, Reading.class)).allSatisfy(r -> {
            assertThat(r.inferred()).contains(Inferred.DATE);
            assertThat(r.at().text()).isNotEmpty();
        });
        assertThat(Sheets.entries(log, Reading.class))
                .extracting(r -> r.at().cell().toString())
                .contains("B2", "F3");
    }

    @Test
    void numbered_weeks_of_no_year_are_left_out() {
        assertThat(readings(read(sheet("Alkalinity dKH", WEEK, row(15, 8.2), row(16, 8.0)))))
                .isEmpty();
    }

    @Test
    void a_week_in_the_title_dates_the_tests_below_it() {
        Log log = read(sheet(
                "Lagoon",
                row("Week 15 (6 - 12 April 2026)"),
                row("Test", "Mon", "Tue", "Wed", "Thu"),
                row("Alk", 8.2, "", 8.1),
                row("Ca", "", 430),
                row("Week 16 (13 - 19 April 2026)"),
                row("Test", "Mon", "Tue", "Wed", "Thu"),
                row("Alk", 8.0, "", "", 7.9),
                row("Ca", 425)));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 2026-04-06 alkalinity 8.2",
                        "Lagoon 2026-04-08 alkalinity 8.1",
                        "Lagoon 2026-04-07 calcium 430",
                        "Lagoon 2026-04-13 alkalinity 8",
                        "Lagoon 2026-04-16 alkalinity 7.9",
                        "Lagoon 2026-04-13 calcium 425");
    }

    @Test
    void dates_under_the_weekdays_are_theirs() {
        Log log = read(sheet(
                "Lagoon",
                row("", "Mon", "Tue", "Wed"),
                row("Date", day(4, 6), day(4, 7), day(4, 8)),
                row("Alk", 8.2, "", 8.1),
                row("", "Mon", "Tue", "Wed"),
                row("Date", day(4, 13), day(4, 14), day(4, 15)),
                row("Alk", "", 8.0)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-04-06 alkalinity 8.2",
                        "Lagoon 2026-04-08 alkalinity 8.1",
                        "Lagoon 2026-04-14 alkalinity 8");
    }

    @Test
    void a_date_of_another_weekday_dates_nothing() {
        Log log = read(sheet(
                "Lagoon",
                row("", "Mon", "Tue", "Wed"),
                row("Date", day(4, 7), day(4, 8), day(4, 9)),
                row("Alk", 8.2, "", 8.1)));

        assertThat(readings(log)).allMatch(r -> r.endsWith("refused"));
    }

    @Test
    void days_down_and_months_across_are_a_year() {
        Log log = read(sheet(
                "Lagoon 2026",
                row("Alkalinity (dKH)"),
                row("Day", "Jan", "Feb", "Mar"),
                row(1, 8.2, "", 8.0),
                row(2, "", 8.1),
                row(30, "", "", 7.9)));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 2026-01-01 alkalinity 8.2",
                        "Lagoon 2026-03-01 alkalinity 8",
                        "Lagoon 2026-02-02 alkalinity 8.1",
                        "Lagoon 2026-03-30 alkalinity 7.9");
    }

    @Test
    void months_down_and_days_across_are_a_year_too() {
        Object[] days = new Object[32];
        Object[] january = new Object[32];
        Object[] march = new Object[32];
        days[0] = "Month";
        january[0] = "January";
        march[0] = "March";
        for (int i = 1; i <= 31; i++) {
            days[i] = i;
        }
        january[5] = 8.2;
        march[31] = 8.0;

        assertThat(readings(read(sheet("Pier 2026", row("Alkalinity"), days, january, march))))
                .containsExactly("Pier 2026-01-05 alkalinity 8.2", "Pier 2026-03-31 alkalinity 8");
    }

    @Test
    void days_of_the_month_in_the_title_stand_across_over_the_tests() {
        Object[] days = new Object[31];
        Object[] alkalinity = new Object[31];
        Object[] calcium = new Object[31];
        days[0] = "Test";
        alkalinity[0] = "Alk";
        calcium[0] = "Ca";
        for (int i = 1; i <= 30; i++) {
            days[i] = i;
        }
        alkalinity[6] = 8.2;
        calcium[30] = 430;

        assertThat(readings(read(sheet("April 2026", row("Lagoon"), days, alkalinity, calcium))))
                .containsExactly("Lagoon 2026-04-06 alkalinity 8.2", "Lagoon 2026-04-30 calcium 430");
    }

    @Test
    void weekdays_down_have_the_week_of_the_sheet() {
        Log log = read(
                sheet("W15 2026", row("Day", "Alk", "Ca"), row("Mon", 8.2), row("Tue", "", 430), row("Wed", 8.1)),
                sheet("W16 2026", row("Day", "Alk", "Ca"), row("Mon", 8.0), row("Tue", "", 425), row("Wed", 7.9)));

        assertThat(readings(log))
                .containsExactly(
                        "club 2026-04-06 alkalinity 8.2",
                        "club 2026-04-07 calcium 430",
                        "club 2026-04-08 alkalinity 8.1",
                        "club 2026-04-13 alkalinity 8",
                        "club 2026-04-14 calcium 425",
                        "club 2026-04-15 alkalinity 7.9");
    }

    @Test
    void a_title_that_names_a_test_and_its_unit_names_no_tank() {
        Log log = read(sheet("Lagoon", row("Temperature (C) 2026"), WEEK, row(15, 25.3, "", 25.6)));

        assertThat(readings(log))
                .containsExactly("Lagoon 2026-04-06 temperature 25.3", "Lagoon 2026-04-08 temperature 25.6");
    }

    @Test
    void a_test_without_results_does_not_entitle_the_next_week() {
        Log log = read(sheet(
                "Lagoon",
                row("Week 15 (30 March - 5 April 2026)"),
                row("Test", "Mon", "Tue", "Wed"),
                row("Alk", 8.2, "", 8.1),
                row("Temperature (C)"),
                row("Week 15 (6 - 12 April 2026)"),
                row("Test", "Mon", "Tue", "Wed"),
                row("Alk", 8.0, "", 7.9),
                row("Temperature (C)")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-03-30 alkalinity 8.2",
                        "Lagoon 2026-04-01 alkalinity 8.1",
                        "Lagoon 2026-04-06 alkalinity 8",
                        "Lagoon 2026-04-08 alkalinity 7.9");
    }

    @Test
    void a_name_in_the_corner_of_a_months_days_is_their_tank() {
        Object[] lagoon = row("Lagoon", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16);
        Object[] pier = row("Pier", 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16);
        Log log = read(sheet(
                "May 2026",
                lagoon,
                row("KH dKH", 8.2, "", "", 8.1),
                row("Alk ml/day", 20),
                row(""),
                pier,
                row("KH dKH", "", 7.4, "", 7.5)));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-05-01 alkalinity 8.2",
                        "Lagoon 2026-05-04 alkalinity 8.1",
                        "Pier 2026-05-02 alkalinity 7.4",
                        "Pier 2026-05-04 alkalinity 7.5");
        assertThat(Sheets.doses(log)).containsExactly("Lagoon 2026-05-01 Alk 20");
    }
}
