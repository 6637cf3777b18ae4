package soundings.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Everything published that the chemistry must reproduce; value, tolerance and citation stand in one row of {@code /checks/*.csv}. */
class PublishedChecksTest {
    private static final List<String> FILES = List.of(
            "seawater.csv", "carbonate.csv", "ammonia.csv", "units.csv", "stoichiometry.csv", "light-and-dilution.csv");

    static Stream<Check> seawater() {
        return Check.of("seawater.csv").stream();
    }

    static Stream<Check> carbonate() {
        return Check.of("carbonate.csv").stream();
    }

    static Stream<Check> ammonia() {
        return Check.of("ammonia.csv").stream();
    }

    static Stream<Check> units() {
        return Check.of("units.csv").stream();
    }

    static Stream<Check> stoichiometry() {
        return Check.of("stoichiometry.csv").stream();
    }

    static Stream<Check> lightAndDilution() {
        return Check.of("light-and-dilution.csv").stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seawater")
    void salinity_density_and_refraction_agree_with(Check check) {
        agrees(check);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("carbonate")
    void the_carbonate_system_agrees_with(Check check) {
        agrees(check);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ammonia")
    void free_ammonia_agrees_with(Check check) {
        agrees(check);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("units")
    void units_agree_with(Check check) {
        agrees(check);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("stoichiometry")
    void masses_and_strengths_agree_with(Check check) {
        agrees(check);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("lightAndDilution")
    void light_and_water_changes_agree_with(Check check) {
        agrees(check);
    }

    @Test
    void every_row_has_a_source_and_a_verified_status_and_every_function_is_checked() {
        List<Check> all = FILES.stream().flatMap(f -> Check.of(f).stream()).toList();

        assertThat(all).allSatisfy(c -> {
            assertThat(c.source()).isNotBlank();
            assertThat(c.status()).isIn(Check.STATUSES);
            assertThat(c.tolerance()).isNotNegative();
        });
        assertThat(all.stream().map(Check::function).toList()).doesNotContainNull();
        assertThat(new TreeSet<>(all.stream().map(Check::function).toList())).isSubsetOf(Computed.FUNCTIONS.keySet());
    }

    private static void agrees(Check check) {
        double computed = Computed.FUNCTIONS.get(check.function()).applyAsDouble(check);

        assertThat(computed).as(check.toString()).isCloseTo(check.expected(), within(check.tolerance()));
    }
}
