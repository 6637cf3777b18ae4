package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.advice.Given.additive;
import static soundings.advice.Given.estimate;
import static soundings.advice.Given.log;
import static soundings.setup.SmallReference.ALKALINITY;
import static soundings.setup.SmallReference.AMMONIA;
import static soundings.setup.SmallReference.CALCIUM;
import static soundings.setup.SmallReference.IODINE;
import static soundings.setup.SmallReference.TEMPERATURE;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import soundings.advice.Action.Urgency;
import soundings.history.History;
import soundings.setup.Setup;

class ActionsTest {
    private static final Setup SETUP = Given.setup(
            OptionalDouble.of(90), List.of(additive("Soda", ALKALINITY, 5), additive("Iodide", IODINE, 0.1)));

    @Test
    void what_may_kill_comes_first() {
        History history = log().rate("Soda", 0, 9)
                .rate("Iodide", 0, 1)
                .readings(ALKALINITY, 0, 3, 8, 7.8, 7.6, 7.4, 7.2, 7, 6.8, 6.6, 6.4, 6.2, 6)
                .readings(IODINE, 0, 5, .06, .06, .06, .06, .06, .06, .06)
                .readings(AMMONIA, 29, 1, 0.6, 0.8)
                .readings(TEMPERATURE, 29, 1, 27.6, 27.8)
                .history(SETUP);

        List<Action> actions = Given.advice(history, estimate(history.asOf(), ALKALINITY, 6, 0.1, 1.2, 0.05, 0.5))
                .actions();

        assertThat(actions.get(0).what()).startsWith("Test ammonia again");
        assertThat(actions.get(0).parameter()).hasValue(AMMONIA);
        assertThat(actions.get(0).urgency()).isEqualTo(Urgency.NOW);
        assertThat(actions.get(0).caution()).contains("vet");
        assertThat(actions.get(0).restsOn()).containsExactly("Log!H23");
        assertThat(actions).extracting(Action::urgency).isSorted();
        assertThat(actions).anySatisfy(a -> {
            assertThat(a.what()).isEqualTo("Dose 21.6 mL of Soda a day in place of 9.00");
            assertThat(a.steps())
                    .containsExactly(
                            "On each of the first 2 days 18.0 mL more by the pump or by hand, 36.0 mL in all, to raise alkalinity");
            assertThat(a.urgency()).isEqualTo(Urgency.SOON);
        });
        assertThat(actions)
                .filteredOn(a -> a.parameter().equals(java.util.Optional.of(TEMPERATURE)))
                .singleElement()
                .satisfies(a -> assertThat(a.urgency()).isEqualTo(Urgency.SOON));
    }

    @Test
    void a_tank_far_too_warm_is_a_danger_now() {
        History history = log().readings(TEMPERATURE, 0, 1, 26, 30).history(Setup.EMPTY);

        assertThat(Given.advice(history).actions())
                .singleElement()
                .satisfies(a -> assertThat(a.urgency()).isEqualTo(Urgency.NOW));
    }

    @Test
    void what_is_missing_for_several_doses_is_asked_for_once() {
        Setup noVolume = Given.setup(
                OptionalDouble.empty(), List.of(additive("Soda", ALKALINITY, 5), additive("Lime", CALCIUM, 37)));
        History history = log().rate("Soda", 0, 9)
                .rate("Lime", 0, 9)
                .readings(ALKALINITY, 0, 3, 8, 8, 8)
                .readings(CALCIUM, 0, 3, 420, 420, 420)
                .history(noVolume);

        assertThat(Given.advice(history).actions())
                .filteredOn(a -> a.what().contains("litres"))
                .hasSize(1);
    }

    @Test
    void an_additive_nobody_described_is_asked_about() {
        History history =
                log().rate("Elixir", 0, 4).readings(ALKALINITY, 0, 3, 8, 8, 8).history(SETUP);

        assertThat(Given.advice(history).actions()).anySatisfy(a -> {
            assertThat(a.what()).contains("Elixir");
            assertThat(a.restsOn()).containsExactly("Log!CC2");
        });
    }

    @Test
    void concentrated_iodine_comes_with_its_caution() {
        History history = log().rate("Iodide", 0, 3)
                .readings(IODINE, 0, 5, .045, .04, .035, .03, .025, .02)
                .history(SETUP);

        List<Action> actions = Given.advice(
                        history, estimate(history.asOf(), IODINE, 0.02, 0.003, 0.005, 0.0002, 0.0033))
                .actions();

        assertThat(actions)
                .singleElement()
                .satisfies(a -> assertThat(a.caution()).contains("gloves").contains("local rules"));
    }

    @Test
    void what_carries_a_high_trace_is_named_even_where_its_strength_is_unknown() {
        History history = log().rate("Iodide drops", 0, 3)
                .readings(IODINE, 0, 5, .07, .08, .09, .1, .11, .12)
                .history(Given.setup(OptionalDouble.of(90), List.of(additive("Iodide drops", IODINE, 0))));

        List<Action> actions = Given.advice(
                        history, estimate(history.asOf(), IODINE, 0.12, 0.003, 0.001, 0.0002, 0.0033))
                .actions();

        assertThat(actions)
                .extracting(Action::what)
                .anyMatch(w -> w.startsWith("Lower or stop Iodide drops, which carries iodine"))
                .anyMatch(w -> w.startsWith("Enter what the label or the recipe says of Iodide drops"));
    }

    @Test
    void a_quiet_month_asks_for_nothing() {
        History history = log().rate("Soda", 0, 9)
                .readings(ALKALINITY, 0, 3, 8, 8.1, 8, 7.9, 8, 8.1, 8)
                .history(SETUP);

        assertThat(Given.advice(history, estimate(history.asOf(), ALKALINITY, 8, 0.1, 0.5, 0.01, 0.5))
                        .actions())
                .isEmpty();
    }
}
