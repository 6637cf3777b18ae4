package soundings.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;

class SeawaterTest {
    private static final Reference REFERENCE = ReferenceTables.load();

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 5, 20, 35, 42})
    void inverses_give_back_the_salinity(double salinity) {
        assertThat(Seawater.salinityFromConductivity_PSS78(Seawater.conductivity_PSS78(salinity, 25), 25))
                .isCloseTo(salinity, within(1e-9));
        assertThat(Seawater.salinityFromSpecificGravity_EOS80(Seawater.specificGravity_EOS80(salinity, 25, 25), 25, 25))
                .isCloseTo(salinity, within(1e-9));
        assertThat(Seawater.salinityFromRefractiveIndex_MS90(Seawater.refractiveIndex_MS90(salinity, 20), 20))
                .isCloseTo(salinity, within(1e-9));
    }

    @ParameterizedTest(name = "{0} {2} {1}: {3} decimals")
    @CsvSource({
        "copper, mg/L, 2.24662, 2",
        "copper, mg/L, 0.00025, 5",
        "copper, mg/L, 0.0123, 4",
        "copper, ug/L, 2010, 2",
        "nitrate, mg/L, 27.32, 2",
        "alkalinity, dKH, 8.25, 2",
        "salinity, SG, 1.0264, 4",
        "temperature, [degF], 77.9, 1",
    })
    void a_figure_has_the_digits_that_count(String parameter, String scale, double written, int decimals) {
        assertThat(REFERENCE
                        .findScale(REFERENCE.parameter(parameter), scale)
                        .orElseThrow()
                        .decimalsAt(written))
                .isEqualTo(decimals);
    }

    @Test
    void a_figure_from_another_scale_comes_out_far_off_and_not_as_an_error() {
        Scale gravity =
                REFERENCE.findScale(REFERENCE.parameter("salinity"), "SG").orElseThrow();

        assertThat(gravity.canonical(35)).isGreaterThan(1000);
        assertThat(gravity.canonical(0)).isLessThan(0);
    }

    /** Round robin: the same water from each pair of its numbers. */
    @ParameterizedTest
    @ValueSource(doubles = {7.6, 8.0, 8.4})
    void the_carbonate_system_is_the_same_from_every_pair(double ph) {
        CarbonateConstants k = CarbonateConstants.at(34, 26, Boron.U74, NutrientAcids.at(34, 26, 3e-6, 20e-6));

        CarbonateSystem fromPh = CarbonateSystem.ofAlkalinityAndPh(2.6e-3, ph, 26, k);
        CarbonateSystem fromDic = CarbonateSystem.ofAlkalinityAndDic(2.6e-3, fromPh.dic(), 26, k);
        CarbonateSystem fromPco2 = CarbonateSystem.ofAlkalinityAndPco2(2.6e-3, fromPh.pCo2(), 26, k);

        assertThat(fromDic.ph()).isCloseTo(ph, within(1e-9));
        assertThat(fromPco2.ph()).isCloseTo(ph, within(1e-9));
        assertThat(fromPco2.dic()).isCloseTo(fromPh.dic(), within(1e-12));
    }

    /** Between its first and second constant a phosphate is H2PO4-, between second and third HPO4--: 0 and 1 equivalent. */
    @Test
    void phosphate_and_silicate_hold_a_little_of_the_alkalinity() {
        NutrientAcids k = NutrientAcids.at(35, 25, 1e-5, 0);
        double h2po4 = Math.sqrt(k.k1P() * k.k2P());
        double hpo4 = Math.sqrt(k.k2P() * k.k3P());

        assertThat(k.alkalinity(h2po4)).isCloseTo(0, within(1e-11));
        assertThat(k.alkalinity(hpo4)).isCloseTo(1e-5, within(1e-11));
        assertThat(k.alkalinity(1e3)).isCloseTo(-1e-5, within(1e-8));
        assertThat(NutrientAcids.at(35, 25, 0, 1e-5).alkalinity(k.kSi())).isCloseTo(5e-6, within(1e-12));
    }

    @Test
    void nutrients_in_a_tank_leave_less_of_its_alkalinity_to_carbonate() {
        TankWater clean = new TankWater(35, 25, 8.2, PhScale.NBS);
        TankWater rich = new TankWater(35, 25, 8.2, PhScale.NBS, 1.0, 1.0);

        assertThat(rich.carbonate(8).carbonate()).isLessThan(clean.carbonate(8).carbonate());
        assertThat(rich.aragoniteSaturation(8, 420)).isCloseTo(clean.aragoniteSaturation(8, 420), within(0.05));
    }

    @ParameterizedTest
    @EnumSource(PhScale.class)
    void a_ph_scale_that_counts_more_hydrogen_reads_lower(PhScale scale) {
        double above = scale.aboveTotal(35, 25);

        assertThat(above).isBetween(-0.02, 0.16);
        assertThat(scale.toTotal(8.2, 35, 25)).isCloseTo(8.2 - above, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"NBS,NBS", "total,TOTAL", "Total scale,TOTAL", "'',NBS", "seawater,SEAWATER", "what?,NBS"})
    void a_scale_is_found_by_what_the_keeper_calls_it(String said, PhScale scale) {
        assertThat(PhScale.called(said)).isEqualTo(scale);
    }

    @Test
    void free_ammonia_does_not_depend_on_the_scale_the_same_water_is_read_on() {
        double total = Ammonia.unionisedShare(8.0, PhScale.TOTAL, 25, 35);
        double free = Ammonia.unionisedShare(8.0 + PhScale.FREE.aboveTotal(35, 25), PhScale.FREE, 25, 35);

        assertThat(free).isCloseTo(total, within(1e-12));
    }

    @Test
    void ions_at_standard_salinity_undo_dilution_by_pure_water() {
        Parameter calcium = REFERENCE.parameter("calcium");
        double at33 = NaturalSeawater.level(calcium, 33, REFERENCE).orElseThrow();
        double at35 = NaturalSeawater.level(calcium, 35, REFERENCE).orElseThrow();

        assertThat(Ions.atStandardSalinity(at33, 33)).isCloseTo(at35, within(1e-9));
    }

    @Test
    void a_trace_has_a_spread_between_compilations_and_no_single_figure() {
        Interval zinc = NaturalSeawater.spread(REFERENCE.parameter("zinc"), 35, REFERENCE)
                .orElseThrow();

        assertThat(zinc.high() / zinc.low()).isGreaterThan(50);
        assertThat(NaturalSeawater.level(REFERENCE.parameter("zinc"), 35, REFERENCE))
                .isEmpty();
        assertThat(REFERENCE.findTarget(REFERENCE.parameter("zinc"))).isEmpty();
    }

    @Test
    void saturation_in_a_keepers_units_is_that_of_the_published_row() {
        double density = Seawater.kilogramsPerLitre(35, 25);
        double dkh = 2800 / 1000.0 * density * 56.077 / 20;
        double calcium = CarbonateConstants.calcium_RT67(35) * 40.078 * 1000 * density;

        TankWater water = new TankWater(35, 25, 8.2, PhScale.TOTAL);

        assertThat(water.aragoniteSaturation(dkh, calcium)).isCloseTo(5.41121, within(0.0033));
        assertThat(water.pCo2(dkh)).isCloseTo(311.960, within(0.16));
        assertThat(water.freeAmmonia(1)).isCloseTo(0.085306, within(1e-4));
    }
}
