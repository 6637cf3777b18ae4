package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.entries;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Inferred;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.setup.Setup;
import soundings.sheet.Grid;

/** Columns of a few repeated names whose heading does not say what they name. */
class RepeatedNamesTest {
    @ParameterizedTest
    @ValueSource(strings = {"Which", "Spot", "Room", "What", "Info", ""})
    void names_beside_values_of_their_own_are_tanks_whatever_the_heading(String heading) {
        Log log = read(sheet(
                "Log",
                row("Date", heading, "KH dKH", "Ca ppm"),
                row(day(5, 1), "Hall", 8.2, 420),
                row(day(5, 1), "Lab", 9.6, 455),
                row(day(5, 4), "Hall", 8.1, 418),
                row(day(5, 4), "Lab", 9.5, 452),
                row(day(5, 8), "Hall", 8.2, 421),
                row(day(5, 8), "Lab", 9.7, 450)));

        assertThat(log.tanks()).containsExactly("Hall", "Lab");
        assertThat(readings(log)).contains("Lab 2026-05-04 alkalinity 9.5").hasSize(12);
        assertThat(readings(log)).noneMatch(r -> r.endsWith("refused"));
        assertThat(entries(log, Reading.class)).allMatch(r -> r.inferred().contains(Inferred.TANK));
        assertThat(issues(log)).contains("tanksAssumed");
    }

    @Test
    void tanks_tested_on_different_days_are_told_by_their_values() {
        List<Object[]> rows = new ArrayList<>(List.of(new Object[][] {row("Date", "Site", "NO3 ppm")}));
        for (int i = 0; i < 12; i++) {
            rows.add(row(day(5, 1 + 2 * i), i % 2 == 0 ? "Foyer" : "Cellar", i % 2 == 0 ? 5 + i % 3 : 25 + i % 4));
        }
        assertThat(read(sheet("Log", rows.toArray(Object[][]::new))).tanks()).containsExactly("Foyer", "Cellar");
    }

    @Test
    void one_result_a_row_with_names_of_tanks_under_a_strange_heading() {
        Log log = read(sheet(
                "Log",
                row("Date", "Place", "Test", "Result", "Unit"),
                row(day(5, 1), "Big hall", "KH", 8.2, "dKH"),
                row(day(5, 1), "Big hall", "Ca", 420, "ppm"),
                row(day(5, 1), "Stairs", "KH", 9.9, "dKH"),
                row(day(5, 1), "Stairs", "Ca", 470, "ppm"),
                row(day(5, 5), "Big hall", "KH", 8.1, "dKH"),
                row(day(5, 5), "Stairs", "KH", 9.8, "dKH")));

        assertThat(log.tanks()).containsExactly("Big hall", "Stairs");
    }

    @Test
    void where_the_values_do_not_tell_the_keeper_is_asked_and_nothing_is_used() {
        Grid sheet = sheet(
                "Log",
                row("Date", "Which", "KH dKH"),
                row(day(5, 1), "Hall", 8.2),
                row(day(5, 1), "Lab", 8.1),
                row(day(5, 4), "Hall", 8.0),
                row(day(5, 4), "Lab", 8.3),
                row(day(5, 8), "Hall", 8.3),
                row(day(5, 8), "Lab", 8.2));
        Log log = read(sheet);

        assertThat(readings(log)).hasSize(6).allMatch(r -> r.endsWith("refused"));
        assertThat(issues(log)).containsExactly("tanksUnclear");
        assertThat(read(saying("tank"), sheet).tanks()).containsExactly("Hall", "Lab");
        assertThat(readings(read(saying("ignored"), sheet))).noneMatch(r -> r.endsWith("refused"));
    }

    @ParameterizedTest
    @CsvSource({"morning, evening", "am, pm", "before, after"})
    void times_of_day_are_no_tanks(String first, String second) {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Which", "pH"),
                row(day(5, 1), first, 7.9),
                row(day(5, 1), second, 8.3),
                row(day(5, 2), first, 7.9),
                row(day(5, 2), second, 8.3),
                row(day(5, 3), first, 7.9),
                row(day(5, 3), second, 8.3)));

        assertThat(log.tanks()).containsExactly("Lagoon");
        assertThat(issues(log)).doesNotContain("tanksAssumed", "tanksUnclear");
    }

    @Test
    void what_changes_once_and_for_good_is_no_tank() {
        List<Object[]> rows = new ArrayList<>(List.of(new Object[][] {row("Date", "Salt", "Ca ppm")}));
        for (int i = 0; i < 12; i++) {
            rows.add(row(day(5, 1 + 2 * i), i < 6 ? "blue bag" : "red bag", i < 6 ? 410 + i % 2 : 450 + i % 2));
        }
        Log log = read(sheet("Lagoon", rows.toArray(Object[][]::new)));

        assertThat(log.tanks()).containsExactly("Lagoon");
    }

    @Test
    void names_that_are_tanks_elsewhere_in_the_workbook_are_tanks_here() {
        Log log = read(
                sheet("Tests", row("Date", "Tank", "Ca ppm"), row(day(5, 1), "Hall", 420), row(day(5, 2), "Lab", 430)),
                sheet(
                        "Water changes",
                        row("Date", "Spot", "%"),
                        row(day(5, 3), "Hall", 10),
                        row(day(5, 9), "Lab", 20)));

        assertThat(Sheets.changes(log)).containsExactly("Hall 2026-05-03 0.1", "Lab 2026-05-09 0.2");
    }

    private static Setup saying(String meaning) {
        return Setups.correcting(new Setup.Column("Log", "", "Which", meaning, "", "", Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Who tested", "Checked by", "Rota", "gemessen von"})
    void who_took_turns_at_testing_one_water_is_no_tank(String heading) {
        List<Object[]> rows = new ArrayList<>(List.of(new Object[][] {row("Date", "KH dKH", "NO3 mg/L", heading)}));
        String[] names = {"Ada", "Ben", "Year 9", "Ada", "Year 9", "Ben", "Ben", "Ada", "Year 9", "Ada", "Ben", "Year 9"
        };
        double[] found = {8.1, 8.2, 8.1, 8.1, 8.2, 8.2, 8.2, 8.1, 8.1, 8.1, 8.2, 8.1};
        for (int i = 0; i < names.length; i++) {
            rows.add(row(day(5, 1 + 2 * i), found[i], 8, names[i]));
        }
        Log log = read(sheet("Log", rows.toArray(Object[][]::new)));

        assertThat(log.tanks()).containsExactly("club");
    }
}
