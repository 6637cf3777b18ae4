package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.care.Clinic.FIRST;
import static soundings.care.Clinic.test;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import soundings.care.Move.Standing;
import soundings.care.Plans.PlannedMove;
import soundings.history.WrittenLog;
import soundings.setup.Setup;

class MoveTest {
    private static final Setup TANKS = Clinic.tanks(Clinic.tank("Sick bay", 200), Clinic.tank("Reef", 400));
    private static final Plans PLAN =
            Clinic.moves(new PlannedMove("blenny", "Sick bay", "Reef", Optional.of(FIRST.plusDays(9)), "Moves!A2"));

    private static WrittenLog log() {
        return Clinic.log()
                .tank("Sick bay")
                .reading(test("salinity"), 8, 30)
                .reading(test("temperature"), 8, 26)
                .reading(test("ph"), 1, 8.0)
                .tank("Reef")
                .reading(test("salinity"), 9, 35)
                .reading(test("temperature"), 9, 25.5)
                .reading(test("ph"), 9, 8.2);
    }

    private static Move move(WrittenLog log, Plans plans) {
        return Caring.of(log.history(TANKS), plans, Clinic.REFERENCE).moves().get(0);
    }

    private static Move.Side side(Move move, String id) {
        return move.sides().stream()
                .filter(s -> s.parameter().equals(test(id)))
                .findFirst()
                .orElseThrow();
    }

    /** 5 psu at 1 psu an hour are 5 hours (care-rules.csv, common practice). */
    @Test
    void what_differs_too_much_says_how_long_to_take_over_it() {
        Move move = move(log(), PLAN);

        assertThat(side(move, "salinity").standing()).isEqualTo(Standing.APART);
        assertThat(side(move, "temperature").standing()).isEqualTo(Standing.ALIKE);
        assertThat(move.hours().orElseThrow()).isCloseTo(5, within(1e-9));
    }

    @Test
    void an_old_test_does_not_compare_and_a_missing_one_is_named() {
        Move move = move(log(), PLAN);

        assertThat(side(move, "ph").standing()).isEqualTo(Standing.STALE);
        assertThat(side(move, "nitrate").standing()).isEqualTo(Standing.UNTESTED);
    }

    @Test
    void the_waters_are_compared_as_they_were_on_the_day() {
        WrittenLog log = log().tank("Sick bay").reading(test("salinity"), 15, 35);

        assertThat(side(move(log, PLAN), "salinity").difference().orElseThrow()).isCloseTo(5, within(1e-9));
    }

    @Test
    void a_medicine_in_the_water_is_named_with_what_is_left() {
        Plans plans =
                new Plans(Clinic.course("Sick bay", 2000, "mg", 10, 5).treatments(), PLAN.moves(), java.util.List.of());
        Move move = move(log().tank("Sick bay").change(3, 0.5), plans);

        assertThat(move.medicines()).singleElement().satisfies(m -> {
            assertThat(m.tank()).isEqualTo("Sick bay");
            assertThat(m.mgPerLitre().orElseThrow()).isCloseTo(5, within(1e-9));
        });
    }

    @Test
    void a_noted_move_names_its_two_tanks_in_either_direction() {
        Move away = move(log().tank("Sick bay").note("moved", 9, "moved the blenny to the reef"), Plans.NONE);
        assertThat(away.from()).isEqualTo("Sick bay");
        assertThat(away.to()).isEqualTo("Reef");

        Move here = move(log().tank("Reef").note("moved", 9, "moved the blenny in from the sick bay"), Plans.NONE);
        assertThat(here.from()).isEqualTo("Sick bay");
        assertThat(here.to()).isEqualTo("Reef");
    }

    @Test
    void a_move_that_names_no_second_tank_is_not_compared() {
        WrittenLog log = log().tank("Sick bay").note("moved", 9, "moved the pump to the left");

        assertThat(Caring.of(log.history(TANKS), Plans.NONE, Clinic.REFERENCE).moves())
                .isEmpty();
    }
}
