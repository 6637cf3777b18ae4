package soundings.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.upkeep.Sheets.book;
import static soundings.upkeep.Sheets.sheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.log.Log;
import soundings.reference.ReferenceTables;
import soundings.setup.OtherSheet;
import soundings.setup.Setup;

class LightsTest {
    private static final Reference REFERENCE = ReferenceTables.load();

    private static List<Light> lights(WrittenLog written, String... rows) {
        Log log = written.log();
        History history = written.history(Setup.EMPTY);
        List<Lights.Row> stated = OtherSheet.read(
                        book(sheet("Light", rows)), "Light", "Place", REFERENCE, Lights.Row::of)
                .rows();
        return Lights.of(log, history, stated, REFERENCE);
    }

    /**
     * PPFD times seconds of light: 0.0864 and 11.52 stand in published tables of plant science (a maker's conversion page for
     * quantum sensors); 7.2 and 6.48 follow from the definition, 200 * 10 * 3600 / 1e6 and 150 * 12 * 3600 / 1e6.
     */
    @ParameterizedTest(name = "{0} umol/m2/s for {1} h: {2} mol/m2/d")
    @CsvSource({"1, 24, 0.0864", "200, 16, 11.52", "200, 10, 7.2", "150, 12, 6.48"})
    void a_reading_and_the_hours_give_the_days_light(double par, double hours, double perDay) {
        Light light = new Light(
                "Cube",
                "rock",
                List.of(new Light.Measured(WrittenLog.FIRST, par, "Log!B2")),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(hours),
                Optional.empty());

        assertThat(light.perDay().orElseThrow()).isCloseTo(perDay, within(1e-9));
    }

    @Test
    void each_place_is_judged_by_the_range_stated_for_it() {
        List<Light> lights = lights(
                new WrittenLog(REFERENCE).note("note", 3, "PAR 210 left rock, 95 on the sand and 320 top"),
                "Tank|Place|PAR low|PAR high|Hours a day",
                "Cube|left rock|150|250|10",
                "|sand|100|150|10",
                "Cube|cave||50|10");

        assertThat(lights)
                .extracting(l -> l.place() + ": " + l.standing().words())
                .containsExactlyInAnyOrder(
                        "left rock: within its range",
                        "sand: not measured",
                        "cave: not measured",
                        "sand: below its range",
                        "top: no range is stated");
        Light rock = lights.get(0);
        assertThat(rock.perDay().orElseThrow()).isCloseTo(7.56, within(1e-9)); // 210 * 10 * 3600 / 1e6
        assertThat(rock.perDayLow().orElseThrow()).isCloseTo(5.4, within(1e-9));
        assertThat(rock.perDayHigh().orElseThrow()).isCloseTo(9.0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PAR meter lent to the other school
            PAR 180 at 60 % on the rock
            PAR 60 % rock
            lamps 12 h, rock looks bleached
            PAR on the rock is better since the 14.3.
            PAR 2x as high on the rock as 90 on the sand
            """)
    void a_note_with_other_numbers_gives_no_reading(String note) {
        assertThat(lights(new WrittenLog(REFERENCE).note("note", 3, note))).isEmpty();
    }

    @Test
    void what_a_place_had_before_is_of_an_earlier_day_and_of_the_same_place() {
        List<Light> lights = lights(new WrittenLog(REFERENCE)
                .note("note", 3, "PAR 210 left rock, 95 on the sand")
                .note("note", 40, "PAR 290 left rock"));

        Light rock = lights.stream()
                .filter(l -> l.place().equals("left rock"))
                .findFirst()
                .orElseThrow();
        assertThat(rock.before()).map(Light.Measured::par).contains(210.0);
        assertThat(lights)
                .filteredOn(l -> l.place().equals("sand"))
                .allMatch(l -> l.before().isEmpty());
    }

    @Test
    void light_outside_the_keepers_own_numbers_is_on_the_first_page_while_it_was_measured_lately() {
        Light high = light(290);

        assertThat(UpkeepActions.of(List.of(), List.of(high), NO_TESTS, WrittenLog.FIRST.plusDays(92)))
                .singleElement()
                .satisfies(a -> {
                    assertThat(a.what()).isEqualTo("Look at the light at rock: PAR 290 where you want at most 250");
                    assertThat(a.restsOn()).containsExactly("Log!B2", "Light!B2");
                });
        assertThat(UpkeepActions.of(List.of(), List.of(high), NO_TESTS, WrittenLog.FIRST.plusDays(93)))
                .isEmpty();
        assertThat(UpkeepActions.of(List.of(), List.of(light(200)), NO_TESTS, WrittenLog.FIRST))
                .isEmpty();
    }

    private static final Testing NO_TESTS = new Testing(List.of(), List.of(), List.of());

    private static Light light(double par) {
        return new Light(
                "Cube",
                "rock",
                List.of(new Light.Measured(WrittenLog.FIRST, par, "Log!B2")),
                OptionalDouble.of(150),
                OptionalDouble.of(250),
                OptionalDouble.of(10),
                Optional.of("Light!B2"));
    }

    @Test
    void a_number_in_a_column_is_a_reading_even_without_a_place() {
        List<Light> lights = lights(new WrittenLog(REFERENCE).readings(REFERENCE.parameter("par"), 0, 30, 120, 140));

        assertThat(lights).singleElement().satisfies(l -> {
            assertThat(l.measured()).hasSize(2);
            assertThat(l.last().orElseThrow().par()).isEqualTo(140);
            assertThat(l.perDay()).isEmpty();
        });
    }
}
