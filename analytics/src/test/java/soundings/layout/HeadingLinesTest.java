package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.doses;
import static soundings.layout.Sheets.entries;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.log.VolumeTold;
import soundings.log.WaterChange;

/** What stands in, above and beside the lines that head a table. The logs are invented. */
class HeadingLinesTest {
    /** One meq/L is 2.804 dKH; nitrate is 62.0049 g/mol and nitrogen 14.007: IUPAC, Standard atomic weights 2021. */
    @Test
    void a_line_of_units_goes_on_with_the_headings_above_it() {
        Log log = read(sheet(
                "Lagoon",
                row("", "", "OBSERVED", "", "", "", "", "DERIVED", ""),
                row("No.", "Date", "S.G.", "Total alk.", "Ca", "NO3-N", "Remarks", "Alk.", "d(Alk)/dt"),
                row("", "", "25 °C", "meq/L", "mg/L", "mg/L as N", "", "dKH", "dKH/day"),
                row(1, day(5, 1), 1.0264, 3.0, 420, 2.0, "", 8.4, ""),
                row(2, day(5, 8), 1.0262, 2.9, 425, 1.8, "", 8.1, -0.04)));

        assertThat(readings(log))
                .contains(
                        "Lagoon 2026-05-01 alkalinity 8.412",
                        "Lagoon 2026-05-08 calcium 425",
                        "Lagoon 2026-05-08 nitrate 7.968")
                .hasSize(8);
    }

    @Test
    void units_alone_over_two_tests_name_neither() {
        Log log = read(
                sheet("Lagoon", row("Date", "mg/L", "mg/L"), row(day(5, 1), 420, 1310), row(day(5, 8), 425, 1300)));

        assertThat(readings(log)).isEmpty();
    }

    @Test
    void rows_of_many_days_are_not_of_the_one_day_in_the_title() {
        Log log = read(sheet(
                "Spring term",
                row("Week 1 starts Monday 5 January 2026"),
                row("Week", "KH", "Ca"),
                row(1, 8.2, 420),
                row(2, 8.1, 421),
                row(3, 8.0, 422),
                row(4, 7.9, 423)));

        assertThat(readings(log)).isEmpty();
    }

    @Test
    void samples_of_one_day_with_a_time_each_are_told_apart_by_their_names() {
        Log log = read(sheet(
                "Titrations",
                row("Date", "Sample", "V(HCl) / mL", "Alkalinity / meq/L"),
                row("2026-05-01 08:05", "Blank", 0.03, 0.01),
                row("2026-05-01 09:40", "Lagoon", 6.8, 2.72),
                row("2026-05-01 10:20", "Pier", 8.1, 3.24),
                row("2026-05-08 09:05", "Lagoon", 6.9, 2.76),
                row("2026-05-08 09:20", "Pier", 8.2, 3.28),
                row("2026-05-15 09:05", "Lagoon", 6.8, 2.72),
                row("2026-05-15 09:20", "Pier", 8.1, 3.24)));

        assertThat(log.tanks()).containsExactlyInAnyOrder("Lagoon", "Pier");
        assertThat(readings(log)).hasSize(6);
        assertThat(doses(log)).isEmpty();
    }

    @Test
    void a_change_in_litres_and_per_cent_is_one_and_new_waters_tests_are_not_the_tanks() {
        Log log = read(sheet(
                "Water changes",
                row("Date", "Tank", "Litres", "% of tank", "New water: salinity"),
                row(day(5, 1), "Lagoon", 38, "10%", 35.2),
                row(day(5, 8), "Lagoon", 57, "15%", 34.8)));

        assertThat(entries(log, WaterChange.class))
                .hasSize(2)
                .allMatch(c -> c.fraction().isPresent());
        assertThat(readings(log)).isEmpty();
    }

    @Test
    void a_list_of_tanks_tells_their_litres() {
        Log log = read(
                sheet("Log", row("Date", "Tank", "KH dKH"), row(day(5, 1), "Lagoon", 8.2), row(day(5, 1), "Pier", 7.9)),
                sheet("About", row("Tank", "Volume (litres)"), row("Lagoon", 380), row("Pier", 95)));

        assertThat(log.issues())
                .filteredOn(VolumeTold.class::isInstance)
                .extracting(i -> ((VolumeTold) i).tank() + " "
                        + ((VolumeTold) i).litres().orElse(0))
                .containsExactlyInAnyOrder("Lagoon 380.0", "Pier 95.0");
    }

    @Test
    void a_column_of_dates_may_be_mostly_dittos() {
        Log log = read(sheet(
                "Log",
                row("Date", "Tank", "Test", "Result", "Unit"),
                row("1 May 2026", "Lagoon", "Ca", 430, "ppm"),
                row("\"", "Lagoon", "Mg", 1330, "ppm"),
                row("\"", "Lagoon", "KH", "didn't do", "dKH"),
                row("\"", "Pier", "Ca", 410, "ppm"),
                row("\"", "Pier", "Mg", 1300, "ppm")));

        assertThat(readings(log)).contains("Pier 2026-05-01 magnesium 1300").hasSize(4);
    }

    @Test
    void doses_so_many_times_a_day_under_a_heading_a_day_are_summed() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH", "Alk dose per day"),
                row(day(5, 1), 8.2, "3 x 2.5 ml"),
                row(day(5, 8), 8.1, "9 ml")));

        assertThat(doses(log)).containsExactly("Lagoon 2026-05-01 Alk 7.5", "Lagoon 2026-05-08 Alk 9");
    }

    @Test
    void the_letter_l_before_a_test_is_whose_it_is() {
        Log log = read(sheet(
                "Log",
                row("Date", "L Alk", "R Alk", "L Ca", "R Ca", "L WC %"),
                row(day(5, 1), 8.1, 9.1, 405, 415, 20),
                row(day(5, 8), 8.2, 9.0, 410, 420, "")));

        assertThat(log.tanks()).containsExactlyInAnyOrder("L", "R");
        assertThat(entries(log, WaterChange.class))
                .singleElement()
                .satisfies(c -> assertThat(c.tank()).isEqualTo("L"));
    }

    @Test
    void averages_below_a_column_of_weeks_are_no_results() {
        Log log = read(sheet(
                "Lagoon",
                row("Week", "Date", "KH dKH", "Ca ppm"),
                row("Wk 1", day(5, 1), 8.2, 420),
                row("Wk 2", day(5, 8), 8.0, 425),
                row("Average", "", 8.1, 422.7)));

        assertThat(readings(log)).hasSize(4).noneMatch(r -> r.contains("422"));
    }

    @Test
    void tests_over_tanks_that_other_sheets_name_are_each_tanks_own() {
        Log log = read(
                sheet("Lagoon", row("Date", "pH"), row(day(5, 1), 8.1), row(day(5, 8), 8.2)),
                sheet("Pier", row("Date", "pH"), row(day(5, 1), 8.0), row(day(5, 8), 8.1)),
                sheet(
                        "Results",
                        row("", "alk (dKH)", "", "calcium (ppm)", ""),
                        row("Date", "Lagoon", "Pier", "Lagoon", "Pier"),
                        row(day(5, 1), 8.3, 7.4, 440, 420),
                        row(day(5, 8), 8.2, 7.5, 438, 421)));

        assertThat(readings(log))
                .contains("Lagoon 2026-05-01 alkalinity 8.3", "Pier 2026-05-08 calcium 421")
                .hasSize(12);
    }

    @Test
    void a_title_over_the_dates_says_nothing_of_the_columns() {
        Log log = read(sheet(
                "Lagoon 2026",
                row("Lagoon, tests and doses 2026"),
                row("", "Tests", "", "Doses, ml/day"),
                row("Date", "KH", "Ca", "alk"),
                row("", "dKH", "mg/l", ""),
                row("1/5", 8.2, 420, 86),
                row("8/5", 8.1, 425, 84),
                row("20/5", 8.0, 424, 84)));

        assertThat(readings(log)).contains("Lagoon 2026-05-20 calcium 424").hasSize(6);
        assertThat(doses(log)).contains("Lagoon 2026-05-01 alk 86");
    }

    @Test
    void a_weekday_tells_the_year_where_a_title_tells_the_old_one() {
        Log log = read(sheet(
                "Lagoon",
                row("Week starting Monday 30 December 2024"),
                row("Date", "KH dKH"),
                row("Thu 2 Jan", 8.2),
                row("Fri 3 Jan", 8.1)));

        assertThat(entries(log, Reading.class))
                .extracting(Reading::date)
                .containsExactlyInAnyOrder(LocalDate.of(2025, 1, 2), LocalDate.of(2025, 1, 3));
    }

    @Test
    void a_line_of_a_tanks_name_among_the_rows_is_of_the_rows_below_it() {
        Log log = read(sheet(
                "Sep 2025",
                row("day", "KH dKH", "Mg mg/l"),
                row("Corner tank"),
                row(2, 8.2, 1359),
                row(27, 8.3, 1365),
                row(""),
                row("Window tank"),
                row(2, 7.4, 1290),
                row(26, 7.5, 1295)));

        assertThat(readings(log))
                .contains("Corner tank 2025-09-27 magnesium 1365", "Window tank 2025-09-02 alkalinity 7.4")
                .hasSize(8);
    }

    @Test
    void a_year_in_a_column_of_its_own_holds_until_the_next() {
        Log log = read(sheet(
                "Tabelle1",
                row("Jahr", "Tag", "KH °dH"),
                row(2024, "7.11.", 8.5),
                row("", "29.12.", 8.4),
                row(2025, "4.1.", 8.3),
                row("", "11.1.", 8.2)));

        assertThat(entries(log, Reading.class))
                .extracting(Reading::date)
                .containsExactlyInAnyOrder(
                        LocalDate.of(2024, 11, 7),
                        LocalDate.of(2024, 12, 29),
                        LocalDate.of(2025, 1, 4),
                        LocalDate.of(2025, 1, 11));
    }

    @Test
    void a_title_above_tables_side_by_side_is_of_both() {
        Log log = read(sheet(
                "Hoja1",
                row("Acuario grande (400 litros) - club marino"),
                row(""),
                row("2.º trimestre 2026", "", "", "3.º trimestre 2026"),
                row("Fecha", "KH (dKH)", "", "Fecha", "KH (dKH)"),
                row(day(4, 7), 8.5, "", day(7, 1), 8.8),
                row(day(4, 13), 8.4, "", day(7, 7), 8.9)));

        assertThat(log.tanks()).containsExactly("Acuario grande");
        assertThat(readings(log)).hasSize(4);
    }

    @Test
    void weekdays_under_the_monday_of_their_week_are_days() {
        Log log = read(sheet(
                "Weeks",
                row("Week from Monday 04.05.2026"),
                row("Day", "KH dKH", "Ca ppm"),
                row("Monday", 8.1, 420),
                row("Thursday", 8.2, 421),
                row(""),
                row("Week from Monday 11.05.2026"),
                row("Day", "KH dKH", "Ca ppm"),
                row("Monday", "", 424),
                row("Tuesday", 8.0, 425)));

        assertThat(entries(log, Reading.class))
                .extracting(Reading::date)
                .containsExactlyInAnyOrder(
                        LocalDate.of(2026, 5, 4),
                        LocalDate.of(2026, 5, 4),
                        LocalDate.of(2026, 5, 7),
                        LocalDate.of(2026, 5, 7),
                        LocalDate.of(2026, 5, 11),
                        LocalDate.of(2026, 5, 12),
                        LocalDate.of(2026, 5, 12));
    }

    @Test
    void numbered_waters_of_one_day_are_not_one_water() {
        Log log = read(sheet(
                "rounds",
                row("Round of Mon 4 May 2026"),
                row("No.", "KH dKH", "NO3 mg/l"),
                row(1, 7.9, 20),
                row(2, "", 11),
                row(3, 8.5, 10)));

        assertThat(readings(log)).noneMatch(r -> !r.endsWith("refused"));
    }

    @Test
    void a_year_above_the_first_table_holds_for_the_others() {
        Log log = read(sheet(
                "Tests",
                row("Water tests 2025"),
                row(""),
                row("Tide pool"),
                row("Day", "KH dKH"),
                row("Apr 5", 8.7),
                row("Apr 8", 8.6),
                row(""),
                row("Nursery"),
                row("Day", "KH dKH"),
                row("Apr 5", 7.7),
                row("Apr 8", 7.6)));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Tide pool 2025-04-05 alkalinity 8.7",
                        "Tide pool 2025-04-08 alkalinity 8.6",
                        "Nursery 2025-04-05 alkalinity 7.7",
                        "Nursery 2025-04-08 alkalinity 7.6");
    }

    @Test
    void a_tank_called_l_is_not_the_litre_of_a_unit() {
        Log log = read(sheet(
                "Club log",
                row("Date", "Tank", "KH (dKH)", "NO3 (mg/l)"),
                row(day(5, 1), "B", 7.9, 30),
                row(day(5, 1), "L", 7.3, 8),
                row(day(5, 8), "B", 8.0, 30),
                row(day(5, 8), "L", 7.3, 8)));

        assertThat(readings(log))
                .contains("B 2026-05-01 nitrate 30", "L 2026-05-08 nitrate 8")
                .hasSize(8);
    }
}
