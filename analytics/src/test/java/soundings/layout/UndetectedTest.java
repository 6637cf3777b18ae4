package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.entries;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.sheet.Grid;

class UndetectedTest {
    private static final Grid NEVER_FOUND =
            sheet("Lagoon", row("Date", "NO2 mg/L"), row(day(5, 1), "nd"), row(day(5, 2), "not detected"));

    @ParameterizedTest
    @ValueSource(strings = {"ND", "n.d.", "Not detected", "undetectable", "below detection", "nicht nachweisbar"})
    void what_was_not_detected_lies_below_the_least_ever_found_and_is_never_zero(String words) {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "PO4 mg/L"),
                row(day(5, 1), 0.08),
                row(day(5, 2), words),
                row(day(5, 3), 0.03),
                row(day(5, 4), 0)));

        assertThat(on(log, 2)).containsExactly(new Amount.Below(0.03));
        assertThat(entries(log, Reading.class)).allMatch(r -> r.refused().isEmpty());
    }

    @Test
    void a_limit_written_in_the_column_is_its_limit() {
        Log log = read(sheet("Lagoon", row("Date", "PO4 ppb"), row(day(5, 1), "<20"), row(day(5, 2), "nd")));

        assertThat(on(log, 2)).containsExactly(new Amount.Below(0.02));
    }

    @Test
    void the_first_step_of_the_kit_set_up_comes_before_what_the_column_shows() {
        Log log = read(
                Setups.kit("phosphate", 0.04),
                sheet("Lagoon", row("Date", "PO4 mg/L"), row(day(5, 1), 0.02), row(day(5, 2), "nd")));

        assertThat(on(log, 2)).containsExactly(new Amount.Below(0.04));
    }

    @Test
    void without_a_limit_it_is_not_used_and_says_what_is_missing() {
        assertThat(entries(read(NEVER_FOUND), Reading.class))
                .hasSize(2)
                .allMatch(r -> r.refused().contains("the least the kit can show is not known"));
        assertThat(entries(read(Setups.kit("nitrite", 0.05), NEVER_FOUND), Reading.class))
                .allMatch(r -> r.refused().isEmpty() && r.amount().equals(new Amount.Below(0.05)));
    }

    /** Nothing is nothing in any unit that begins at zero. */
    @Test
    void nothing_but_zeros_needs_no_unit() {
        Log log = read(sheet("Lagoon", row("Date", "NO2"), row(day(5, 1), 0), row(day(5, 3), 0), row(day(5, 5), 0.0)));

        assertThat(readings(log)).hasSize(3).contains("Lagoon 2026-05-01 nitrite 0");
        assertThat(entries(log, Reading.class)).allMatch(r -> r.refused().isEmpty());
    }

    @Test
    void an_ion_sea_water_never_lacks_is_not_below_its_usual_values() {
        Log log = read(sheet("Lagoon", row("Date", "Ca mg/L"), row(day(5, 1), 420), row(day(5, 2), "nd")));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 calcium 420").hasSize(2);
        assertThat(entries(log, Reading.class).get(1).refused()).isNotEmpty();
    }

    @Test
    void in_running_text_it_is_no_zero_either() {
        Log log = read(sheet("Lagoon", row("Date", "Notes"), row(day(5, 1), "PO4 0.05"), row(day(5, 2), "PO4 nd")));

        assertThat(on(log, 2)).doesNotContain(new Amount.Exact(0));
    }

    private static List<Amount> on(Log log, int day) {
        return entries(log, Reading.class).stream()
                .filter(r -> r.date().equals(day(5, day)))
                .map(Reading::amount)
                .toList();
    }
}
