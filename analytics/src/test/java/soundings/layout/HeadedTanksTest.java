package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
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
import soundings.log.Reading;
import soundings.sheet.CellRef;
import soundings.sheet.Region;

/** Tanks that stand in headings and are set up nowhere. */
class HeadedTanksTest {
    @Test
    void names_merged_over_several_tests_are_tanks() {
        Log log = read(sheet(
                "All",
                List.of(
                        new Region(new CellRef(0, 1), new CellRef(0, 2)),
                        new Region(new CellRef(0, 3), new CellRef(0, 4))),
                row("", "Lagoon", "", "Nursery", ""),
                row("Date", "KH", "Ca", "KH", "Ca"),
                row(day(5, 1), 8.2, 420, 7.4, 400),
                row(day(5, 8), 8.1, 425, 7.5, 405)));

        assertThat(readings(log))
                .contains("Lagoon 2026-05-01 alkalinity 8.2", "Nursery 2026-05-01 alkalinity 7.4")
                .contains("Lagoon 2026-05-08 calcium 425", "Nursery 2026-05-08 calcium 405");
        assertThat(issues(log)).contains("tanksFromHeadings");
    }

    @Test
    void a_name_before_each_test_is_a_tank_also_where_only_one_has_the_test() {
        Log log = read(sheet(
                "Log",
                row("Date", "A1 KH", "A1 Ca", "B2 KH", "B2 Ca", "B2 NO3 mg/L"),
                row(day(5, 1), 8.2, 420, 8.3, 400, 4),
                row(day(5, 8), 8.1, 425, 8.2, 405, 5)));

        assertThat(readings(log))
                .contains("A1 2026-05-01 alkalinity 8.2", "B2 2026-05-01 calcium 400", "B2 2026-05-08 nitrate 5");
    }

    @Test
    void one_test_under_two_names_with_values_apart_is_asked_and_not_used() {
        Log log = read(sheet(
                "Log",
                row("Date", "KH", "KH cove", "Ca mg/L"),
                row(day(5, 1), 8.2, 7.1, 420),
                row(day(5, 8), 8.1, 7.3, 425),
                row(day(5, 15), 8.3, 7.0, 425)));

        assertThat(readings(log)).filteredOn(r -> r.contains("7.")).allMatch(r -> r.endsWith("refused"));
        assertThat(readings(log)).filteredOn(r -> r.contains("alkalinity 8.")).noneMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).contains("waterUnclear");
    }

    @ParameterizedTest
    @ValueSource(strings = {"drop kit", "photometer", "evening", "lab", "2", "after"})
    void a_way_or_a_time_of_testing_is_no_tank(String how) {
        Log log = read(sheet(
                "Log",
                row("Date", "KH", "KH " + how),
                row(day(5, 1), 8.2, 8.4),
                row(day(5, 8), 8.1, 8.2),
                row(day(5, 15), 8.3, 8.4)));

        assertThat(issues(log)).doesNotContain("waterUnclear", "tanksFromHeadings");
        assertThat(Sheets.entries(log, Reading.class))
                .hasSize(6)
                .allMatch(r -> r.refused().isEmpty());
    }

    @Test
    void a_sheet_of_one_test_holds_a_tank_in_each_column_and_each_row_alike() {
        Object[] names = row("", "Lagoon", "Nursery", "Rock pool");
        Object[] first = row(day(5, 1), 8.2, 7.4, 9.1);
        Object[] second = row(day(5, 8), 8.1, 7.5, 9);
        Object[] third = row(day(5, 15), 8.1, 7.5, 9);
        Log down = read(sheet("KH", names, first, second, third));
        Log across = read(sheet(
                "KH",
                row("Tank", first[0], second[0], third[0]),
                row(names[1], first[1], second[1], third[1]),
                row(names[2], first[2], second[2], third[2]),
                row(names[3], first[3], second[3], third[3])));

        assertThat(readings(down)).hasSize(9).contains("Rock pool 2026-05-08 alkalinity 9");
        assertThat(readings(across)).isEqualTo(readings(down));
    }

    @Test
    void names_over_the_results_beside_the_tests_are_tanks() {
        Log log = read(sheet(
                "6 April 2026",
                row("Test", "Lagoon", "Pier", "Unit"),
                row("Alk", 8.2, 7.6, "dKH"),
                row("Ca", 430, 400, "mg/L")));

        assertThat(readings(log))
                .containsExactly(
                        "Lagoon 2026-04-06 alkalinity 8.2",
                        "Lagoon 2026-04-06 calcium 430",
                        "Pier 2026-04-06 alkalinity 7.6",
                        "Pier 2026-04-06 calcium 400");
    }

    @Test
    void tests_over_the_tanks_are_read_as_tanks_over_the_tests() {
        Log log = read(sheet(
                "Log",
                row("", "Alk", "", "Ca", ""),
                row("Date", "Lagoon", "Pier", "Lagoon", "Pier"),
                row(day(5, 1), 8.2, 7.6, 430, 400),
                row(day(5, 8), 8.1, 7.5, 425, 405)));

        assertThat(readings(log))
                .hasSize(8)
                .contains("Pier 2026-05-08 calcium 405", "Lagoon 2026-05-08 alkalinity 8.1");
    }

    @Test
    void a_name_beside_several_tests_in_rows_holds_for_all_of_them() {
        Log log = read(sheet(
                "Log",
                row("Tank", "Test", day(5, 1), day(5, 8)),
                row("Lagoon", "Alk", 8.2, 8.1),
                row("", "Ca", 430, 425),
                row("Pier", "Alk", 7.6, 7.5),
                row("", "Ca", 400, 405)));

        assertThat(readings(log)).hasSize(8).contains("Pier 2026-05-08 calcium 405", "Lagoon 2026-05-08 calcium 425");
    }

    @Test
    void two_columns_headed_alike_whose_values_differ_are_asked_about() {
        Log log = read(sheet(
                "Log",
                row("Date", "KH", "KH"),
                row(day(5, 1), 8.2, 7.4),
                row(day(5, 8), 8.1, 7.5),
                row(day(5, 15), 8.3, 7.4)));

        assertThat(readings(log)).hasSize(6).allMatch(r -> r.endsWith("refused"));
    }

    @Test
    void a_test_that_nothing_was_found_for_is_no_heading_of_the_tanks() {
        Log log = read(
                sheet(
                        "6 April 2026",
                        row("Test", "Lagoon", "Pier"),
                        row("KH", "", ""),
                        row("Ca", 430, 400),
                        row("NO3 mg/l", "", 8.1)),
                sheet("13 April 2026", row("Test", "Lagoon", "Pier"), row("KH", "", 7.6), row("Ca", "", 405)));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 2026-04-06 calcium 430",
                        "Pier 2026-04-06 calcium 400",
                        "Pier 2026-04-06 nitrate 8.1",
                        "Pier 2026-04-13 alkalinity 7.6",
                        "Pier 2026-04-13 calcium 405");
    }

    @Test
    void names_that_alone_tell_results_of_one_day_apart_are_asked_about() {
        Log log = read(sheet("6 April 2026", row("Sample", "KH", "Ca"), row("blue", 8.2, 430), row("grey", 7.6, 400)));

        assertThat(readings(log)).isNotEmpty().allMatch(r -> r.endsWith("refused"));
    }

    @Test
    void a_name_beside_a_laboratorys_with_values_apart_is_asked() {
        Log log = read(sheet(
                "Log",
                row("Date", "Frag KH", "Frag Ca", "Lab KH", "Lab Ca"),
                row(day(5, 1), 8.2, 420, 7.0, 380),
                row(day(5, 8), 8.1, 425),
                row(day(5, 15), 8.1, 425),
                row(day(5, 22), 8.1, 425)));

        assertThat(readings(log)).allMatch(r -> r.endsWith("refused"));
    }

    @Test
    void a_tank_called_lab_is_tested_as_often_as_the_others() {
        Log log = read(sheet(
                "Log",
                row("Date", "Frag KH", "Frag Ca", "Lab KH", "Lab Ca"),
                row(day(5, 1), 8.2, 420, 8.0, 420),
                row(day(5, 8), 8.1, 425, 8.1, 421)));

        assertThat(log.tanks()).containsExactlyInAnyOrder("Frag", "Lab");
        assertThat(issues(log)).contains("tanksFromHeadings");
    }
}
