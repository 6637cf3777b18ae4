package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import soundings.log.Log;
import soundings.log.WaterChange;

/** Several columns that stand in one. The logs are invented. */
class JoinedTest {
    @Test
    void a_column_of_several_tests_is_taken_apart() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Alk/Ca/Mg", "NO3"),
                row("2026-04-06", "8.2/420/1310", 5),
                row("2026-04-13", "8.1 / - / 1300", 6),
                row("2026-04-20", "8,0/415/1290", 7)));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 2026-04-06 alkalinity 8.2",
                        "Lagoon 2026-04-06 calcium 420",
                        "Lagoon 2026-04-06 magnesium 1310",
                        "Lagoon 2026-04-06 nitrate 5",
                        "Lagoon 2026-04-13 alkalinity 8.1",
                        "Lagoon 2026-04-13 magnesium 1300",
                        "Lagoon 2026-04-13 nitrate 6",
                        "Lagoon 2026-04-20 alkalinity 8",
                        "Lagoon 2026-04-20 calcium 415",
                        "Lagoon 2026-04-20 magnesium 1290",
                        "Lagoon 2026-04-20 nitrate 7");
    }

    @Test
    void a_cell_that_does_not_hold_all_of_them_is_named_and_not_used() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca/Mg"),
                row("2026-04-06", "420/1310"),
                row("2026-04-13", "415"),
                row("2026-04-20", "417/1300"),
                row("2026-04-27", "412/1290")));

        assertThat(readings(log)).hasSize(6).noneMatch(r -> r.contains("2026-04-13"));
        assertThat(log.issues().toString()).contains("cell=B3");
    }

    @Test
    void a_ratio_under_two_tests_is_no_result_of_either() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca", "Mg", "Mg/Ca"),
                row("2026-04-06", 420, 1310, 3.1),
                row("2026-04-13", 415, 1300, 3.1),
                row("2026-04-20", 417, 1300, 3.1)));

        assertThat(readings(log)).hasSize(6);
    }

    @Test
    void a_text_table_that_was_never_taken_apart_is_read_by_its_fields() {
        Log log = read(sheet(
                "Lagoon",
                row("Datum;KH;Calcium;Notiz"),
                row("06.04.2026;8,2;420;"),
                row("13.04.2026;8,1;;\"10 % Wasserwechsel; Glas geputzt\""),
                row("20.04.2026;8,0;415;")));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 2026-04-06 alkalinity 8.2",
                        "Lagoon 2026-04-06 calcium 420",
                        "Lagoon 2026-04-13 alkalinity 8.1",
                        "Lagoon 2026-04-20 alkalinity 8",
                        "Lagoon 2026-04-20 calcium 415");
        assertThat(Sheets.entries(log, WaterChange.class)).hasSize(1);
    }

    @Test
    void a_diary_with_commas_stays_a_diary() {
        Log log = read(sheet(
                "Lagoon",
                row("6 April 2026, alk 8.2, ca 420"),
                row("13 April 2026, alk 8.1, ca 417"),
                row("20 April 2026, alk 8.0, ca 415")));

        assertThat(readings(log)).hasSize(6);
    }

    @Test
    void pasted_text_above_a_table_is_read_and_so_is_the_table() {
        Log log = read(sheet(
                "Lagoon",
                row("pasted from the phone"),
                row("date,alk,ca,note"),
                row("2026-04-06,8.2,420,"),
                row("2026-04-13,8.1,,\"cleaned glass, fed\""),
                row("2026-04-20,8.0,415,"),
                row(""),
                row("Date", "KH", "Ca"),
                row("2026-04-27", 7.9, 412),
                row("2026-05-04", 7.8, 410)));

        assertThat(readings(log))
                .contains("Lagoon 2026-04-20 calcium 415", "Lagoon 2026-05-04 alkalinity 7.8")
                .hasSize(9);
    }

    @Test
    void a_tank_and_a_test_in_one_column_are_taken_apart() {
        Log log = read(sheet(
                "Log",
                row("Datum", "Becken/Messung", "Ergebnis", "Einheit"),
                row("06.05.2026", "Hafen/KH", 8.2, "dKH"),
                row("06.05.2026", "Insel/KH", 7.4, "dKH"),
                row("13.05.2026", "Hafen/Calcium", 414, "mg/l"),
                row("13.05.2026", "Insel/Calcium", 402, "mg/l")));

        assertThat(readings(log))
                .containsExactlyInAnyOrder(
                        "Hafen 2026-05-06 alkalinity 8.2",
                        "Insel 2026-05-06 alkalinity 7.4",
                        "Hafen 2026-05-13 calcium 414",
                        "Insel 2026-05-13 calcium 402");
    }

    @Test
    void cards_may_stand_side_by_side() {
        Log log = read(sheet(
                "cards",
                row("Tank", "Shrimp", "", "Tank", "Coral"),
                row("Date", "5 Apr 2026", "", "Date", "5 Apr 2026"),
                row("KH", 8.3, "", "KH", 8.5),
                row("Ca", 411, "", "Ca", 438),
                row(""),
                row("Tank", "Shrimp", "", "Tank", "Coral"),
                row("Date", "9 Apr 2026", "", "Date", "9 Apr 2026"),
                row("KH", 8.2, "", "KH", 8.4),
                row("Ca", 413, "", "Ca", 440)));

        assertThat(readings(log))
                .contains("Shrimp 2026-04-09 calcium 413", "Coral 2026-04-05 alkalinity 8.5")
                .hasSize(8);
    }
}
