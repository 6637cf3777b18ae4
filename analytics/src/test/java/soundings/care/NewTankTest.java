package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.care.Clinic.FIRST;
import static soundings.care.Clinic.test;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.care.NewTank.Lacks;
import soundings.history.WrittenLog;
import soundings.quantity.Amount;
import soundings.quantity.Interval;
import soundings.setup.Setup;

class NewTankTest {
    private static final Setup LAGOON = Clinic.tanks(Clinic.tank("Lagoon", 100, 0));

    private static WrittenLog log() {
        return Clinic.log().tank("Lagoon");
    }

    private static NewTank lagoon(WrittenLog log, Setup setup) {
        return Caring.of(log.history(setup), Plans.NONE, Clinic.REFERENCE)
                .newTanks()
                .get(0);
    }

    private static NewTank lagoon(WrittenLog log) {
        return lagoon(log, LAGOON);
    }

    private static WrittenLog gone(WrittenLog log, int from) {
        return log.readings(test("ammonia"), from, 2, 0, 0, 0).readings(test("nitrite"), from, 2, 0, 0, 0);
    }

    /** A straight line 2.05 - 0.2 d meets 0.05 at d = 10. */
    @Test
    void a_straight_fall_reaches_none_where_its_line_does() {
        NewTank tank = lagoon(log().readings(test("ammonia"), 0, 2, 2.05, 1.65, 1.25, 0.85));

        Falling gone = tank.clearing(test("ammonia")).gone().orElseThrow();
        assertThat(gone.shape()).isEqualTo(Falling.Shape.LINEAR);
        assertThat(gone.day().mid()).isCloseTo(10, within(1e-6));
        assertThat(tank.lacks()).isEqualTo(Lacks.NITRITE_TESTS);
    }

    /** 4 exp(-0.3 d) meets 0.05 at d = ln(80) / 0.3 = 14.6068. */
    @Test
    void a_fall_by_the_same_share_a_day_is_read_on_logarithms() {
        WrittenLog log = log();
        for (int day = 0; day <= 10; day += 2) {
            log.reading(test("ammonia"), day, 4 * Math.exp(-0.3 * day));
        }

        Falling gone = lagoon(log).clearing(test("ammonia")).gone().orElseThrow();
        assertThat(gone.shape()).isEqualTo(Falling.Shape.LOG_LINEAR);
        assertThat(gone.day().mid()).isCloseTo(Math.log(80) / 0.3, within(1e-6));
    }

    /** Falls of a known shape with normal scatter: the true day is ln(61) / 0.28 or (3.05 - 0.05) / 0.2. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void the_interval_holds_the_true_day_at_least_as_often_as_it_says(boolean straight) {
        Random random = new Random(7);
        double trueDay = straight ? 15 : Math.log(61) / 0.28;
        int held = 0;
        int all = 0;
        for (int i = 0; i < 1000; i++) {
            List<Falling.At> readings = new ArrayList<>();
            for (int day = 0; day <= 10; day += 2) {
                double level = straight ? 3.05 - 0.2 * day : 3.05 * Math.exp(-0.28 * day);
                readings.add(new Falling.At(day, level + (straight ? 0.1 : 0.04) * random.nextGaussian()));
            }
            Optional<Interval> day = Falling.to(0.05, readings).map(Falling::day);
            if (day.isPresent()) {
                held += day.get().low() <= trueDay && day.get().high() >= trueDay ? 1 : 0;
                all++;
            }
        }
        assertThat(held / (double) all).isBetween(0.88, 0.985);
    }

    @Test
    void a_fall_that_grows_steeper_is_foretold_by_its_last_tests() {
        WrittenLog log = log().readings(test("ammonia"), 0, 1, 3, 3, 2.9, 2.7, 2.3, 1.7, 1.1, 0.5);

        Falling gone = lagoon(log).clearing(test("ammonia")).gone().orElseThrow();

        // the last four fall by 0.6 a day: (0.5 - 0.05) / 0.6 days after the sixth from the peak
        assertThat(gone.day().mid()).isCloseTo(6.75, within(0.05));
        assertThat(gone.day().high()).isLessThan(8);
    }

    @Test
    void a_fall_no_clearer_than_its_scatter_has_no_day() {
        NewTank tank = lagoon(log().readings(test("ammonia"), 0, 1, 2, 1.2, 1.9, 1.3, 1.8));

        assertThat(tank.clearing(test("ammonia")).standing()).isEqualTo(Clearing.Standing.UNCLEAR);
        assertThat(tank.clearing(test("ammonia")).gone()).isEmpty();
    }

    @Test
    void a_level_that_still_rises_has_no_day() {
        NewTank tank = lagoon(log().readings(test("ammonia"), 0, 2, 0.5, 1, 2));

        assertThat(tank.clearing(test("ammonia")).standing()).isEqualTo(Clearing.Standing.RISING);
    }

    /** S = 35, 25 degC, pH 8.2 on the total scale: 8.5306 % of the ammonia is free: check-values section 4 (C, CW95 total). */
    @Test
    void free_ammonia_is_worked_out_where_the_water_was_tested() {
        NewTank tank = lagoon(log().reading(test("ammonia"), 0, 2)
                .reading(test("ph"), 1, 8.2)
                .reading(test("salinity"), 1, 35)
                .reading(test("temperature"), 0, 25)
                .reading(test("ammonia"), 9, 1));

        assertThat(tank.free()).singleElement().satisfies(f -> {
            assertThat(f.on()).isEqualTo(FIRST);
            assertThat(f.mgPerLitre()).isCloseTo(2 * 0.085306, within(2e-4));
        });
    }

    @Test
    void enough_zero_tests_and_a_challenge_gone_in_a_day_make_it_ready() {
        NewTank tank = lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10)
                .note("note", 16, "challenge 2 mg/L")
                .reading(test("ammonia"), 16, 2)
                .reading(test("ammonia"), 17, 0)
                .reading(test("nitrite"), 17, 0));

        assertThat(tank.lacks()).isEqualTo(Lacks.NOTHING);
        assertThat(tank.zerosOn()).contains(FIRST.plusDays(14));
        assertThat(tank.readyOn()).contains(FIRST.plusDays(17));
        assertThat(tank.challenge().orElseThrow().mgPerLitre().orElseThrow()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "challenge gone",
                "challenge tomorrow",
                "no challenge yet",
                "Probedosis abgebaut",
                "prueba de carga mañana"
            })
    void a_note_that_only_speaks_of_a_challenge_is_none(String note) {
        NewTank tank =
                lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10).note("note", 16, note));

        assertThat(tank.challenge()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ammoniak-Testdosis 2 mg/l",
                "dose d'essai 2 mg/l",
                "dosis de prueba 2 mg/l",
                "proefdosis 2 mg/l",
                "dose di prova 2 mg/l"
            })
    void a_challenge_is_read_in_other_languages(String note) {
        NewTank tank =
                lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10).note("note", 16, note));

        assertThat(tank.challenge().orElseThrow().mgPerLitre().orElseThrow()).isEqualTo(2);
    }

    @Test
    void zero_tests_alone_do_not_make_it_ready() {
        assertThat(lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10)).lacks())
                .isEqualTo(Lacks.CHALLENGE);
    }

    /** Ammonia given to animals kills them: where some are noted no challenge is asked for. */
    @Test
    void with_animals_in_nobody_is_told_to_put_in_ammonia() {
        NewTank tank =
                lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10).note("added", 16, "2 clownfish in"));

        assertThat(tank.animals()).isTrue();
        assertThat(NotReady.because(tank)).contains("with animals in none is to be given");
    }

    @Test
    void a_challenge_that_is_still_there_next_day_is_not_cleared() {
        NewTank tank = lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10)
                .note("note", 16, "challenge 2 ppm")
                .reading(test("ammonia"), 17, 0)
                .reading(test("nitrite"), 17, 0.5)
                .reading(test("nitrite"), 18, 0)
                .reading(test("nitrite"), 19, 0)
                .reading(test("nitrite"), 20, 0));

        assertThat(tank.lacks()).isEqualTo(Lacks.CHALLENGE_CLEARED);
    }

    @Test
    void a_challenge_nobody_tested_the_day_after_tells_nothing() {
        NewTank tank = lagoon(gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10)
                .note("note", 16, "challenge 2 ppm")
                .reading(test("ammonia"), 19, 0)
                .reading(test("nitrite"), 19, 0));

        assertThat(tank.lacks()).isEqualTo(Lacks.CHALLENGE_TESTED);
    }

    @Test
    void the_keeper_may_want_more_zero_tests() {
        NewTank tank = lagoon(
                gone(log().readings(test("ammonia"), 0, 4, 2, 1), 10),
                Clinic.tanks(Map.of("zero tests", "5"), Clinic.tank("Lagoon", 100, 0)));

        assertThat(tank.zerosNeeded()).isEqualTo(5);
        assertThat(tank.zerosInARow()).isEqualTo(3);
        assertThat(tank.lacks()).isEqualTo(Lacks.ZERO_TESTS);
    }

    @Test
    void under_a_coarse_limit_is_not_none() {
        assertThat(Tests.showsNone(new Amount.Below(0.1), 0.05)).isTrue();
        assertThat(Tests.showsNone(new Amount.Below(1), 0.05)).isFalse();
        assertThat(Tests.showsNone(new Amount.Between(0, 0.2), 0.05)).isFalse();
    }

    /** The reef was filled 200 days before the log: its zeros came at 10, 12, 14 days of the log, but nobody watched it from the start. */
    @Test
    void it_is_set_beside_the_keepers_earlier_tanks_where_the_log_shows_them() {
        Setup setup = Clinic.tanks(
                Clinic.tank("Old reef", 300, 200), Clinic.tank("Cube", 60, 0), Clinic.tank("Lagoon", 100, -100));
        WrittenLog log = gone(Clinic.log().tank("Old reef"), 10);
        gone(log.tank("Cube").readings(test("ammonia"), 0, 4, 2, 1), 20);
        log.tank("Lagoon").readings(test("ammonia"), 100, 2, 2, 1.8, 1.5);

        NewTank tank = Caring.of(log.history(setup), Plans.NONE, Clinic.REFERENCE).newTanks().stream()
                .filter(t -> t.tank().equals("Lagoon"))
                .findFirst()
                .orElseThrow();
        assertThat(tank.earlier()).extracting(NewTank.Earlier::tank).containsExactly("Cube", "Old reef");
        assertThat(tank.earlier())
                .extracting(NewTank.Earlier::daysToZeros)
                .containsExactly(OptionalLong.of(24), OptionalLong.empty());
    }

    @Test
    void a_tank_that_was_never_tested_for_it_is_no_new_tank() {
        assertThat(Caring.of(
                                log().readings(test("calcium"), 0, 2, 420, 430).history(LAGOON),
                                Plans.NONE,
                                Clinic.REFERENCE)
                        .newTanks())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_order_of_entries_does_not_matter(long seed) {
        WrittenLog log =
                gone(log().readings(test("ammonia"), 0, 2, 2, 1.5, 1), 10).note("note", 16, "challenge 2 ppm");

        assertThat(Caring.of(log.historyShuffled(LAGOON, seed), Plans.NONE, Clinic.REFERENCE))
                .isEqualTo(Caring.of(log.history(LAGOON), Plans.NONE, Clinic.REFERENCE));
    }

    @Test
    void ammonia_with_animals_in_is_a_danger_and_without_them_is_not() {
        WrittenLog empty = log().readings(test("ammonia"), 0, 2, 1, 1);
        assertThat(Caring.of(empty.history(LAGOON), Plans.NONE, Clinic.REFERENCE)
                        .dangers())
                .isEmpty();

        WrittenLog stocked = empty.note("added", 1, "new fish");
        assertThat(Caring.of(stocked.history(LAGOON), Plans.NONE, Clinic.REFERENCE)
                        .dangers())
                .singleElement()
                .satisfies(d -> assertThat(d.value()).isEqualTo(1));
    }
}
