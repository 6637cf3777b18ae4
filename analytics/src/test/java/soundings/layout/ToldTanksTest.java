package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import soundings.log.Log;
import soundings.log.Reading;

/** Tanks that only the words of a diary tell apart. */
class ToldTanksTest {
    private static Log diary(String first, String second, String third) {
        return read(sheet(
                "Diary", row("Date", "Notes"), row(day(5, 1), first), row(day(5, 8), second), row(day(5, 15), third)));
    }

    private static java.util.List<String> alkalinities(Log log) {
        return log.entries().stream()
                .filter(Reading.class::isInstance)
                .map(Reading.class::cast)
                .filter(r -> r.parameter().id().equals("alkalinity"))
                .map(r -> r.tank() + " " + r.amount().about())
                .toList();
    }

    @Test
    void names_that_share_their_cells_are_tanks() {
        Log log = diary(
                "Lagoon alk 8.2, ca 420. Pier alk 7.6",
                "Lagoon alk 8.1 dKH. Pier tank alk 7.5; 10% water change on the pier",
                "Lagoon: alk 8.0, Pier: alk 7.4");

        assertThat(alkalinities(log))
                .containsExactlyInAnyOrder(
                        "Lagoon 8.2", "Pier 7.6", "Lagoon 8.1", "Pier 7.5", "Lagoon 8.0", "Pier 7.4");
        assertThat(issues(log)).contains("tanksFromText");
    }

    @Test
    void a_name_that_stands_alone_in_its_cells_may_be_the_testers() {
        Log log = diary("Mia alk 8.2", "Ben alk 8.1", "Mia alk 8.0");

        assertThat(alkalinities(log)).noneMatch(r -> r.startsWith("Mia") || r.startsWith("Ben"));
        assertThat(issues(log)).doesNotContain("tanksFromText");
    }

    @Test
    void a_name_met_twice_is_not_enough() {
        Log log = diary("Lagoon alk 8.2, Pier alk 7.6", "Lagoon alk 8.1, Pier alk 7.5", "new carbon");

        assertThat(alkalinities(log)).isEmpty();
    }
}
