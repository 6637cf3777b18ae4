package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import soundings.log.Log;

/** Units nobody wrote and which are not the same all the way down a column. */
class UnitsOfTanksTest {
    /** 1 meq/L is 2.8 dKH: half of 56.08 mg/L CaO, 10 mg/L of which are a degree (DIN 38409-6). */
    @Test
    void each_tank_may_have_its_own() {
        Log log = read(sheet(
                "All",
                row("Date", "Tank", "Alk"),
                row(day(5, 1), "Lagoon", 8.2),
                row(day(5, 1), "Nursery", 2.8),
                row(day(5, 8), "Lagoon", 8.1),
                row(day(5, 8), "Nursery", 2.9),
                row(day(5, 15), "Lagoon", 8.3),
                row(day(5, 15), "Nursery", 2.85)));

        assertThat(readings(log)).contains("Lagoon 2026-05-01 alkalinity 8.2", "Nursery 2026-05-01 alkalinity 7.851");
        assertThat(issues(log)).filteredOn("unitAssumed"::equals).hasSize(2);
    }

    /** Seven dKH are no seven meq/L: read as the other tank's unit they would be nearly 20 dKH, and the advice the wrong way round. */
    @Test
    void a_tank_that_the_others_unit_cannot_be_meant_for_is_asked_about() {
        Object[][] rows = new Object[25][];
        rows[0] = row("Date", "Tank", "Alk");
        for (int i = 1; i <= 24; i++) {
            rows[i] = i % 4 == 0 ? row(day(5, i), "Nursery", 8.5 - 0.1 * i) : row(day(5, i), "Lagoon", 2.7 + 0.02 * i);
        }
        Log log = read(sheet("All", rows));

        assertThat(issues(log)).contains("unitAssumed", "unitUnclear");
        assertThat(log.entries())
                .filteredOn(e -> e.tank().equals("Nursery"))
                .hasSize(6)
                .allSatisfy(e -> assertThat(e.toString()).contains("more than one fits"));
        assertThat(readings(log)).filteredOn(r -> r.startsWith("Lagoon")).hasSize(18);
    }

    @Test
    void one_may_follow_another_half_way_down() {
        Object[][] rows = new Object[21][];
        rows[0] = row("Date", "Temp");
        for (int i = 1; i <= 20; i++) {
            rows[i] = row(day(5, i), i <= 10 ? 25 + i % 2 * 0.2 : 77 + i % 2 * 0.4);
        }
        Log log = read(sheet("Lagoon", rows));

        assertThat(readings(log)).contains("Lagoon 2026-05-02 temperature 25", "Lagoon 2026-05-12 temperature 25");
        assertThat(issues(log)).contains("unitAssumed", "unitChanged");
    }

    @Test
    void a_salinity_goes_by_its_own_figure_where_scales_take_turns() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Salinity"),
                row(day(5, 1), 35),
                row(day(5, 2), 1.0264),
                row(day(5, 3), 34.9),
                row(day(5, 4), 1.0263),
                row(day(5, 5), "1.0264 / 35")));

        assertThat(readings(log)).hasSize(5).allMatch(r -> r.matches(".* salinity 3[45](\\.[0-9]+)?"));
    }

    @Test
    void rows_that_name_the_unit_of_a_dose_or_change_are_counted_in_it() {
        Log log = read(
                sheet(
                        "Doses",
                        row("Additive", "ml per dose", "Doses per day", "From"),
                        row("blue mix", 7.5, 4, day(5, 1)),
                        row("green mix", 10, "", day(5, 1))),
                sheet(
                        "Water changes",
                        row("Date", "Volume", "Unit"),
                        row(day(5, 1), 5, "gal"),
                        row(day(5, 8), 10, "%"),
                        row(day(5, 15), 40, "l")),
                sheet(
                        "Bought",
                        row("Date", "Item", "Price", "Qty"),
                        row(day(5, 1), "Salt", 60, 1),
                        row(day(5, 2), "KH", 8.2, 2)),
                sheet("Lagoon", row("Date", "KH dKH"), row(day(5, 1), 8.2), row(day(5, 8), 8.1)));

        assertThat(Sheets.doses(log)).containsExactly("Lagoon 2026-05-01 blue mix 30");
        assertThat(Sheets.changes(log))
                .containsExactly("Lagoon 2026-05-01 18.927 L", "Lagoon 2026-05-08 0.1", "Lagoon 2026-05-15 40 L");
        assertThat(readings(log)).hasSize(2);
    }

    @Test
    void a_letter_in_a_date_makes_it_none() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "KH dKH"),
                row("03/04/2026", 8.2),
                row("1O/04/2026", 8.1),
                row("17/04/2026", 8.3)));

        assertThat(readings(log)).hasSize(2);
        assertThat(issues(log)).contains("unreadableDate");
    }
}
