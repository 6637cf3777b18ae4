package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.additive;
import static soundings.advice.Given.log;
import static soundings.history.WrittenLog.FIRST;
import static soundings.setup.SmallReference.ALKALINITY;
import static soundings.setup.SmallReference.CALCIUM;
import static soundings.setup.SmallReference.MAGNESIUM;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.estimate.Estimate;
import soundings.history.History;
import soundings.setup.Setup;

class SuppliesTest {
    private static final List<Setup.Additive> ADDITIVES =
            List.of(additive("Soda", ALKALINITY, 5), additive("Lime", CALCIUM, 37), additive("Bitter", MAGNESIUM, 20));

    @Test
    void a_container_s_rest_is_what_was_filled_in_less_what_went_out_since() {
        Setup setup = setup(pump("Soda", 6, 500, 10, 1, 1));
        History history = log().rate("Soda", 0, 10)
                .rate("Soda", 20, 20)
                .readings(ALKALINITY, 25, 1, 8)
                .history(setup);

        Supply supply = Given.advice(history).supplies().get(0);

        // filled on day 10: days 11 to 19 at 10 mL, days 20 to 25 at 20 mL: 90 + 120 = 210 mL out
        assertThat(supply.mlLeft().orElseThrow()).isCloseTo(290, within(1e-9));
        // 290 / 20 = 14 whole days, the fifteenth is short
        assertThat(supply.emptyOn()).hasValue(FIRST.plusDays(25 + 15));
        assertThat(supply.orderBy()).hasValue(FIRST.plusDays(25 + 8));
        assertThat(supply.mlPerDose().orElseThrow()).isCloseTo(20 / 6.0, within(1e-9));
    }

    @Test
    void a_pump_that_gives_less_empties_its_container_later() {
        Setup setup = setup(pump("Soda", 6, 500, 0, 100, 80));
        History history =
                log().rate("Soda", 0, 10).readings(ALKALINITY, 10, 1, 8).history(setup);

        Supply supply = Given.advice(history).supplies().get(0);

        assertThat(supply.mlLeft().orElseThrow()).isCloseTo(420, within(1e-9));
        assertThat(supply.delivered().orElseThrow()).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void a_container_is_emptied_by_what_is_proposed_and_the_present_setting_stands_beside() {
        Setup setup = setup(pump("Soda", 4, 500, 29, 100, 80));
        History history = log().rate("Soda", 0, 9)
                .readings(ALKALINITY, 0, 3, 8, 7.8, 7.6, 7.4, 7.2, 7, 6.8, 6.6, 6.4, 6.2, 6)
                .history(setup);
        Estimate estimate = Given.estimate(history.asOf(), ALKALINITY, 6, 0.1, 1.2, 0.05, 9 * 0.8 * 5 / 90);

        Advice advice = Given.advice(history, estimate);

        Supply supply = advice.supplies().get(0);
        // day 30; one day at 9 * 0.8 = 7.2 mL out of 500: 492.8 left
        // 1.2 * 90 / 5 / 0.8 = 27 mL a day to be set, of which 21.6 go out; 2 dKH once: 36 mL by hand, 45 by the pump
        assertThat(supply.proposedMlPerDay().orElseThrow()).isCloseTo(27, within(1e-9));
        assertThat(supply.correctionMl()).isCloseTo(45, within(1e-9));
        // (492.8 - 36) / 21.6 = 21 whole days; 492.8 / 7.2 = 68
        assertThat(supply.emptyOn()).hasValue(FIRST.plusDays(30 + 22));
        assertThat(supply.emptyUnchanged()).hasValue(FIRST.plusDays(30 + 69));
        assertThat(advice.plans().get(0).doses()).allSatisfy(d -> {
            assertThat(d.ml()).isCloseTo(9 / 4.0, within(1e-9));
            assertThat(d.proposedMl()).isCloseTo(27 / 4.0, within(1e-9));
        });
        assertThat(advice.actions())
                .anySatisfy(a -> assertThat(a.why())
                        .anySatisfy(w -> assertThat(w)
                                .contains("at 27.0 mL a day and 45.0 mL besides, as proposed,")
                                .contains("as the pump is set, 9.00 mL a day")));
    }

    @Test
    void containers_that_run_out_are_one_errand_with_a_line_each() {
        LocalDate asOf = LocalDate.of(2026, 4, 30);
        List<Action> actions = SupplyActions.of(
                List.of(container("Soda", asOf.plusDays(20)), container("Lime", asOf.plusDays(4))), asOf);

        assertThat(actions).singleElement().satisfies(a -> {
            assertThat(a.urgency()).isEqualTo(Action.Urgency.SOON);
            assertThat(a.what()).isEqualTo("Get Lime, Soda: 2 containers run out, the first on 2026-05-04");
            assertThat(a.steps())
                    .containsExactly(
                            "Reef A, Lime: fill it up before 2026-05-04 (100 mL left, 5.00 mL a day)",
                            "Reef A, Soda: order by 2026-05-13 (100 mL left, 5.00 mL a day)");
        });
        assertThat(SupplyActions.of(List.of(container("Soda", asOf.plusDays(90))), asOf))
                .isEmpty();
    }

    private static Supply container(String additive, LocalDate empty) {
        OptionalDouble none = OptionalDouble.empty();
        return new Supply(
                "Reef A",
                additive,
                5,
                none,
                0,
                none,
                none,
                none,
                none,
                OptionalDouble.of(100),
                Optional.of(empty),
                Optional.empty(),
                Optional.of(empty.minusDays(7)),
                "Pumps!D2");
    }

    @Test
    void nothing_is_made_up_where_the_setup_is_silent() {
        History history = log().rate("Soda", 0, 10)
                .readings(ALKALINITY, 10, 1, 8)
                .history(Given.setup(OptionalDouble.of(90), ADDITIVES));

        assertThat(Given.advice(history).supplies()).isEmpty();
        assertThat(Given.advice(history).plans()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4,4,180", "6,6,120", "24,24,30", "1,1,720", "12,6,60", "2,3,120"})
    void alkalinity_and_calcium_are_as_far_apart_as_they_go(int soda, int lime, int least) {
        DayPlan plan = plan(soda, lime, 1);

        assertThat(plan.apartMinutes()).isGreaterThanOrEqualTo(least);
        assertThat(plan.doses()).hasSize(soda + lime + 1);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void no_plan_gives_alkalinity_and_calcium_in_one_minute(long seed) {
        Random random = new Random(seed);
        DayPlan plan = plan(1 + random.nextInt(48), 1 + random.nextInt(48), 1 + random.nextInt(24));

        for (DayPlan.Dose soda : of(plan, "Soda")) {
            for (DayPlan.Dose other : plan.doses()) {
                if (!other.additive().equals("Soda")) {
                    assertThat(other.at()).isNotEqualTo(soda.at());
                }
            }
        }
        assertThat(plan.apartMinutes()).isPositive();
        assertThat(of(plan, "Soda").stream().mapToDouble(DayPlan.Dose::ml).sum())
                .isCloseTo(48, within(1e-6));
    }

    @Test
    void one_pump_alone_begins_at_midnight() {
        History history =
                log().rate("Soda", 0, 48).readings(ALKALINITY, 1, 1, 8).history(setup(pump("Soda", 4, 500, 0, 1, 1)));

        assertThat(Given.advice(history).plans().get(0).doses())
                .extracting(DayPlan.Dose::at)
                .containsExactly(LocalTime.MIDNIGHT, LocalTime.of(6, 0), LocalTime.NOON, LocalTime.of(18, 0));
    }

    private static List<DayPlan.Dose> of(DayPlan plan, String additive) {
        return plan.doses().stream().filter(d -> d.additive().equals(additive)).toList();
    }

    private static DayPlan plan(int soda, int lime, int bitter) {
        History history = log().rate("Soda", 0, 48)
                .rate("Lime", 0, 30)
                .rate("Bitter", 0, 10)
                .readings(ALKALINITY, 1, 1, 8)
                .history(setup(
                        pump("Soda", soda, 500, 0, 1, 1),
                        pump("Lime", lime, 500, 0, 1, 1),
                        pump("Bitter", bitter, 500, 0, 1, 1)));
        return Given.advice(history).plans().get(0);
    }

    private static Setup setup(Setup.Pump... pumps) {
        return Given.setup(OptionalDouble.of(90), ADDITIVES, List.of(pumps));
    }

    private static Setup.Pump pump(
            String additive, double doses, double container, int filled, double commanded, double measured) {
        return new Setup.Pump(
                "Cube",
                additive,
                OptionalDouble.of(doses),
                OptionalDouble.of(container),
                Optional.of(FIRST.plusDays(filled)),
                OptionalDouble.of(commanded),
                OptionalDouble.of(measured),
                "Pumps!D2");
    }
}
