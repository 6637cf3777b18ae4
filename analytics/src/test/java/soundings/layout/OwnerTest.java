package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;

/** Whose water a table speaks of when its rows do not say. */
class OwnerTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Log kept by the caretaker",
                "Tank log kept by the caretaker",
                "Tank: please fill in every week",
                "This tank is tested on Mondays"
            })
    void a_sentence_above_a_table_is_no_tanks_name(String title) {
        Log log = read(sheet(
                "Tests",
                row(title),
                row(""),
                row("Date", "Ca ppm"),
                row(day(5, 1), 420),
                row(""),
                row("Water changes"),
                row("Date", "WC %"),
                row(day(5, 2), 10)));

        assertThat(log.tanks()).containsExactly("club");
    }

    @Test
    void the_title_next_to_a_table_names_its_tank_rather_than_the_sheets() {
        Log log = read(sheet(
                "Tests",
                row("Marine club"),
                row("Lagoon"),
                row("Date", "Ca ppm"),
                row(day(5, 1), 420),
                row(""),
                row("Nursery"),
                row("Date", "Ca ppm"),
                row(day(5, 2), 430)));

        assertThat(log.tanks()).containsExactly("Lagoon", "Nursery");
    }

    @Test
    void a_sheet_whose_name_is_a_tanks_but_for_a_letter_is_said() {
        Log log = read(Setups.tanks("Lagoon", "Nursery"), sheet("Lagon", row("Date", "Ca ppm"), row(day(5, 1), 420)));

        assertThat(Sheets.readings(log)).containsExactly("Lagoon 2026-05-01 calcium 420");
        assertThat(issues(log)).containsExactly("nameMerged");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Spring term", "Q1 2026", "1st half", "2025-26", "Sommer 2026", "Weekly checks"})
    void a_part_of_the_year_is_no_tank(String sheet) {
        Log log = read(
                sheet(sheet, row("Date", "Ca ppm"), row(day(5, 1), 420), row(day(5, 8), 421)),
                sheet("Autumn term", row("Date", "Ca ppm"), row(day(9, 1), 425)));

        assertThat(log.tanks()).containsExactly("club");
    }

    @Test
    void home_tests_are_of_the_tank_that_laboratory_sheets_name_and_that_is_said() {
        Log log = read(
                sheet("Home tests", row("Date", "KH dKH"), row(day(5, 1), 8.2), row(day(5, 8), 8.1)),
                sheet(
                        "Laboratory",
                        row("Sample taken", day(5, 2)),
                        row("Tank", "Lagoon"),
                        row("Element", "Measured", "Unit"),
                        row("Calcium", 420, "mg/l"),
                        row("Magnesium", 1310, "mg/l")));

        assertThat(log.tanks()).containsExactly("Lagoon");
        assertThat(issues(log)).contains("nameMerged");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Lagoon tank (420 litres) - marine club log",
                "Lagoon tank (old form, see the next sheet for later)",
                "Marine club - water record.  Tank: Lagoon.  Volume 420 L"
            })
    void a_long_title_may_name_a_tank(String title) {
        Log log = read(sheet("Log", row(title), row("Date", "Ca ppm"), row(day(5, 1), 420), row(day(5, 8), 421)));

        assertThat(log.tanks()).singleElement().asString().startsWith("Lagoon");
    }

    @Test
    void a_word_beside_numbers_is_no_tank() {
        Log log = read(sheet(
                "Record",
                row("factor", "", 1, 2.8),
                row("Date", "", "Ca mg/L", "KH"),
                row(day(5, 1), "", 420, 8.2),
                row(day(5, 8), "", 421, 8.1)));

        assertThat(log.tanks()).containsExactly("club");
    }
}
