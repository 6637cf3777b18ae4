package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.log.WaterChange;
import soundings.sheet.Grid;

/** Days that head the lines below them. */
class DayBlocksTest {
    private static Grid lagoon(Object[]... rows) {
        return sheet("Lagoon", rows);
    }

    private static List<String> results(Log log) {
        return log.entries().stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .map(r -> r.tank() + " " + r.date().getDayOfMonth() + "."
                        + r.date().getMonthValue() + ". " + r.parameter().id() + " "
                        + r.amount().about() + " " + r.at().cell())
                .toList();
    }

    @Test
    void lines_of_text_under_a_day_are_of_that_day() {
        Log log = read(lagoon(
                row("3 May 2026"),
                row("Alk: 8.2"),
                row("Calcium 430"),
                row("7 May 2026"),
                row("Alk: 8.0"),
                row("10% water change")));

        assertThat(results(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 3.5. alkalinity 8.2 A2",
                        "Lagoon 3.5. calcium 430.0 A3",
                        "Lagoon 7.5. alkalinity 8.0 A5");
        assertThat(log.entries().stream().filter(WaterChange.class::isInstance).toList())
                .singleElement()
                .satisfies(c -> assertThat(c.date().getDayOfMonth()).isEqualTo(7));
    }

    @Test
    void a_word_for_the_date_and_a_tank_may_stand_before_them() {
        Log log = read(sheet(
                "Tests",
                row("Date: 3 May 2026"),
                row("Tank: Lagoon"),
                row("Alk: 8.2"),
                row("Date: 7 May 2026"),
                row("Tank: Pier"),
                row("Alk: 7.6")));

        assertThat(results(log))
                .containsExactlyInAnyOrder("Lagoon 3.5. alkalinity 8.2 A3", "Pier 7.5. alkalinity 7.6 A6");
    }

    @Test
    void names_beside_or_above_nearly_every_day_are_tanks() {
        List<Object[]> beside = new ArrayList<>();
        List<Object[]> above = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            String tank = i % 2 == 0 ? "Lagoon" : "Pier";
            beside.addAll(List.of(row((3 + i) + " May - " + tank), row("Alk 8." + i + " dKH")));
            above.addAll(List.of(row(tank), row((3 + i) + " May"), row("Alk 8." + i + " dKH")));
        }

        assertThat(results(read(sheet("Diary", beside.toArray(Object[][]::new)))))
                .contains("Lagoon 3.5. alkalinity 8.0 A2", "Pier 8.5. alkalinity 8.5 A12")
                .hasSize(6);
        assertThat(results(read(sheet("Diary", above.toArray(Object[][]::new)))))
                .contains("Lagoon 3.5. alkalinity 8.0 A3", "Pier 8.5. alkalinity 8.5 A18")
                .hasSize(6);
    }

    @Test
    void small_tables_under_their_days_are_read_with_them() {
        Log log = read(lagoon(
                row(day(5, 3)), row("Alk", "Ca"), row(8.2, 430), row(day(5, 7)), row("Alk", "Ca"), row(8.0, 425)));

        assertThat(results(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 3.5. alkalinity 8.2 A3",
                        "Lagoon 3.5. calcium 430.0 B3",
                        "Lagoon 7.5. alkalinity 8.0 A6",
                        "Lagoon 7.5. calcium 425.0 B6");
    }

    @Test
    void tests_and_results_under_their_days_are_read_with_them() {
        Log log = read(lagoon(
                row(day(5, 3)), row("Alk", 8.2), row("Ca", 430), row(day(5, 7)), row("Alk", 8.0), row("Ca", 425)));

        assertThat(results(log)).contains("Lagoon 7.5. alkalinity 8.0 B5").hasSize(4);
    }

    @Test
    void dates_written_ahead_of_a_table_are_no_heads() {
        Log log = read(
                lagoon(row("Date", "Alk"), row(day(5, 3), 8.2), row(day(5, 7), 8.0), row(day(5, 11)), row(day(5, 15))));

        assertThat(results(log)).contains("Lagoon 3.5. alkalinity 8.2 B2").hasSize(2);
    }

    @Test
    void a_day_and_a_tank_in_one_cell_are_taken_apart() {
        Log log = read(sheet(
                "Log",
                row("When", "Alk"),
                row("3 May 2026, Lagoon", 8.2),
                row("4 May 2026, Pier", 7.6),
                row("7 May 2026, Lagoon", 8.1),
                row("8 May 2026, Pier", 7.5)));

        assertThat(results(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 3.5. alkalinity 8.2 B2",
                        "Pier 4.5. alkalinity 7.6 B3",
                        "Lagoon 7.5. alkalinity 8.1 B4",
                        "Pier 8.5. alkalinity 7.5 B5");
    }

    @Test
    void tests_down_and_tanks_across_under_each_day_are_each_tanks_own() {
        Log log = read(sheet(
                "Weekly checks",
                row("Week of", day(5, 4)),
                row("Test", "Lagoon", "Pier"),
                row("KH", 8.2, 7.4),
                row("Calcium", 430, 410),
                row("Water change", "10 %", ""),
                row(""),
                row("Week of", day(5, 11)),
                row("Test", "Lagoon", "Pier"),
                row("KH", 8.1, 7.5),
                row("Calcium", 428, 412)));

        assertThat(results(log))
                .contains(
                        "Lagoon 4.5. alkalinity 8.2 B3", "Pier 4.5. alkalinity 7.4 C3", "Pier 11.5. calcium 412.0 C10")
                .hasSize(8);
    }

    @Test
    void blocks_side_by_side_each_have_their_own_day() {
        Log log = read(sheet(
                "Check sheets",
                row("Checked 4/5/2026", "", "", "", "Date:", day(5, 11), ""),
                row("Test", "Lagoon", "Pier", "", "Test", "Lagoon", "Pier"),
                row("KH", 8.2, 7.4, "", "KH", 8.1, 7.5),
                row("Calcium", 430, 410, "", "Calcium", 428, 412),
                row(""),
                row("Week 3: Monday 18 May 2026", "", "", "", "Date:", day(5, 25), ""),
                row("Test", "Lagoon", "Pier", "", "Test", "Lagoon", "Pier"),
                row("KH", 8.0, 7.6, "", "KH", 7.9, 7.7),
                row("Calcium", 426, 414, "", "Calcium", 424, 416)));

        assertThat(results(log))
                .contains(
                        "Lagoon 4.5. alkalinity 8.2 B3",
                        "Pier 11.5. alkalinity 7.5 G3",
                        "Lagoon 18.5. calcium 426.0 B9")
                .contains("Pier 25.5. calcium 416.0 G9")
                .hasSize(16);
    }
}
