package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Days told in several cells, and several days told in one. */
class DateInPiecesTest {
    private static final String[] EXPECTED = {
        "Lagoon 2025-12-22 calcium 410",
        "Lagoon 2025-12-29 calcium 415",
        "Lagoon 2026-01-05 calcium 420",
        "Lagoon 2026-01-12 calcium 425"
    };

    @Test
    void year_month_and_day_in_columns_of_their_own() {
        Log log = read(sheet(
                "Lagoon",
                row("Year", "Month", "Day", "Ca mg/L"),
                row(2025, 12, 22, 410),
                row(2025, 12, 29, 415),
                row(2026, 1, 5, 420),
                row(2026, 1, 12, 425)));

        assertThat(readings(log)).containsExactly(EXPECTED);
    }

    @Test
    void a_month_named_once_holds_for_the_days_below_it_and_the_year_turns_by_itself() {
        Log log = read(sheet(
                "Lagoon",
                row("Lagoon tank 2025"),
                row("Month", "Day", "Ca mg/L"),
                row("December", 22, 410),
                row("", 29, 415),
                row("January", 5, 420),
                row("", 12, 425)));

        assertThat(readings(log)).containsExactly(EXPECTED);
    }

    @Test
    void months_merged_over_days_that_stand_across() {
        Log log = read(sheet(
                "Lagoon",
                List.of(
                        new Region(new CellRef(1, 2), new CellRef(1, 3)),
                        new Region(new CellRef(1, 4), new CellRef(1, 5))),
                row("Lagoon tank 2025"),
                row("", "", "December", "", "January"),
                row("Test", "Unit", 22, 29, 5, 12),
                row("Calcium", "mg/L", 410, 415, 420, 425)));

        assertThat(readings(log)).containsExactly(EXPECTED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"3-5 May", "3 - 5 May 2026", "12, 13 May", "3 to 5 May", "30 April - 2 May"})
    void a_result_of_several_days_is_set_aside_and_moves_no_other(String days) {
        Log log = read(sheet(
                "Lagoon",
                row("2026"),
                row("Date", "Ca mg/L"),
                row("1 April", 410),
                row(days, 415),
                row("20 May", 420),
                row("27 May", 425)));

        assertThat(readings(log))
                .filteredOn(r -> !r.endsWith("refused"))
                .containsExactly(
                        "Lagoon 2026-04-01 calcium 410",
                        "Lagoon 2026-05-20 calcium 420",
                        "Lagoon 2026-05-27 calcium 425");
        assertThat(issues(log)).contains("unreadableDate");
    }

    @Test
    void days_without_a_year_do_not_follow_one_that_stands_alone_and_far_off() {
        Log log = read(sheet(
                "Lagoon",
                row("2026"),
                row("Date", "Ca mg/L"),
                row("1 April", 410),
                row("8 April 2016", 415),
                row("15 April", 420),
                row("22 April", 425),
                row("29 April", 425)));

        assertThat(readings(log)).contains("Lagoon 2026-04-15 calcium 420", "Lagoon 2026-04-29 calcium 425");
    }
}
