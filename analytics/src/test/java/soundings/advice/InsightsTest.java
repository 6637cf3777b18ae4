package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.estimate;
import static soundings.advice.Given.log;
import static soundings.setup.SmallReference.ALKALINITY;
import static soundings.setup.SmallReference.AMMONIA;
import static soundings.setup.SmallReference.CALCIUM;
import static soundings.setup.SmallReference.MAGNESIUM;
import static soundings.setup.SmallReference.PH;
import static soundings.setup.SmallReference.SALINITY;
import static soundings.setup.SmallReference.TEMPERATURE;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;

class InsightsTest {
    private static final Setup TOTAL_SCALE = new Setup(
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            Map.of("ph scale", "total"),
            List.of());

    /**
     * Computed with PyCO2SYS 1.8.3.4 (Lueker 2000, Uppstroem 1974, total scale): alkalinity 2800 umol/kg, pH 8.2, S 35, 25 degC give
     * an aragonite saturation of 5.411 and a pCO2 of 311.96 uatm. 2800 umol/kg at 1.02334 kg/L are 8.034 dKH; 10.28457 mmol/kg
     * calcium are 421.8 mg/L.
     */
    @Test
    void saturation_and_carbon_dioxide_agree_with_a_published_program() {
        Advice advice = Given.advice(water().history(TOTAL_SCALE));

        assertThat(value(advice, Insight.Kind.ARAGONITE)).isCloseTo(5.411, within(0.01));
        assertThat(value(advice, Insight.Kind.CARBON_DIOXIDE)).isCloseTo(311.96, within(0.6));
    }

    /** Clegg and Whitfield 1995, total scale: 8.53 % of total ammonia is un-ionised at pH 8.2, S 35, 25 degC. */
    @Test
    void free_ammonia_is_the_share_that_ph_and_warmth_leave() {
        Advice advice = Given.advice(water().reading(AMMONIA, 4, 0.5).history(TOTAL_SCALE));

        assertThat(value(advice, Insight.Kind.FREE_AMMONIA)).isCloseTo(0.5 * 0.085306, within(0.0005));
    }

    @Test
    void a_ph_of_unstated_scale_is_taken_for_a_poison_as_the_one_that_gives_the_higher_figure() {
        Advice advice = Given.advice(water().reading(AMMONIA, 4, 0.5).history(Setup.EMPTY));

        assertThat(value(advice, Insight.Kind.FREE_AMMONIA)).isCloseTo(0.5 * 0.085306, within(0.0005));
    }

    @Test
    void use_in_the_ratio_of_calcium_carbonate_is_growth() {
        History history = water().history(TOTAL_SCALE);

        Advice advice = Given.advice(
                history,
                estimate(history.asOf(), ALKALINITY, 8, 0.1, 1, 0.02, 0),
                estimate(history.asOf(), CALCIUM, 420, 2, 7.1, 0.2, 0));

        assertThat(value(advice, Insight.Kind.CALCIFICATION)).isCloseTo(7.1, within(1e-9));
        assertThat(advice.insights().get(0).says()).contains("growing");
    }

    @Test
    void ions_are_held_against_seawater_only_where_the_salinity_differs() {
        Advice at35 = Given.advice(water().history(TOTAL_SCALE));
        Advice at33 = Given.advice(water().reading(SALINITY, 5, 33).history(TOTAL_SCALE));

        assertThat(at35.insights()).noneMatch(i -> i.kind() == Insight.Kind.AT_STANDARD_SALINITY);
        assertThat(at33.insights())
                .filteredOn(i -> i.label().equals("calcium at salinity 35"))
                .singleElement()
                .satisfies(i -> assertThat(i.value().orElseThrow().mid()).isBetween(446.0, 449.0));
    }

    @Test
    void what_was_not_tested_lately_gives_no_figure() {
        History old = water().readings(ALKALINITY, 60, 1, 8, 8).history(TOTAL_SCALE);

        assertThat(Given.advice(old).insights()).isEmpty();
    }

    /** 4 mL a day of 80 g NaHCO3 (84.006 g/mol, sodium 22.990; IUPAC 2021) in 1 L leave 0.7007 mg/L sodium a day in 125 L. */
    @Test
    void the_months_doses_leave_the_sodium_their_recipe_holds() {
        Reference whole = ReferenceTables.load();
        WrittenLog log = new WrittenLog(whole).tank("Cube").rate("soda", 0, 4).rate("mixture", 0, 1);
        History history = log.reading(whole.parameter("alkalinity"), 9, 8)
                .history(Given.setup(
                        OptionalDouble.of(125),
                        List.of(new Setup.Additive(
                                "soda",
                                List.of(),
                                whole.parameter("alkalinity"),
                                OptionalDouble.of(2.67),
                                "NaHCO3 80 g in 1 L",
                                OptionalDouble.empty(),
                                "Additives!F2"))));

        Insight left = Advising.of(history, Given.estimates(), whole).insights().stream()
                .filter(i -> i.kind() == Insight.Kind.SALT_OF_DOSES)
                .findFirst()
                .orElseThrow();

        double days = history.asOf().getDayOfMonth();
        assertThat(left.says()).startsWith("sodium " + Math.round(days * 4 * 80 * 22.990 / 84.006 / 125) + " mg/L");
        assertThat(left.says()).contains("not counted").contains("mixture");
        assertThat(left.restsOn()).containsExactly("Additives!F2");
    }

    @Test
    void magnesium_use_beyond_what_skeletons_take_is_told() {
        History history = water().reading(MAGNESIUM, 4, 1300).history(TOTAL_SCALE);

        Advice much = Given.advice(
                history,
                estimate(history.asOf(), ALKALINITY, 8, 0.1, 1, 0.02, 0),
                estimate(history.asOf(), MAGNESIUM, 1300, 5, 3, 0.2, 0));

        assertThat(much.insights())
                .filteredOn(i -> i.label().startsWith("magnesium used"))
                .singleElement()
                .satisfies(i -> assertThat(i.says()).startsWith("more than skeletons"));
    }

    private static WrittenLog water() {
        return log().reading(ALKALINITY, 4, 8.0340)
                .reading(CALCIUM, 4, 421.80)
                .reading(SALINITY, 4, 35)
                .reading(TEMPERATURE, 4, 25)
                .reading(PH, 4, 8.2);
    }

    private static double value(Advice advice, Insight.Kind kind) {
        return advice.insights().stream()
                .filter(i -> i.kind() == kind)
                .findFirst()
                .orElseThrow()
                .value()
                .orElseThrow()
                .mid();
    }
}
