package soundings.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RobustTest {
    /** Sen 1968, J. Am. Stat. Assoc. 63, the worked example; alpha = 0.07 as printed there; limits to all digits: scipy. */
    @Test
    void sens_own_example_gives_his_slope_and_interval() {
        List<Double> x = List.of(1.0, 2.0, 3.0, 4.0, 10.0, 12.0, 18.0);
        List<Double> y = List.of(9.0, 15.0, 19.0, 20.0, 45.0, 55.0, 78.0);

        Robust.Line line = Robust.line_S68(x, y, 1.8119106729525978);

        assertThat(line.slope().mid()).isCloseTo(4, within(1e-9));
        assertThat(line.slope().low()).isCloseTo(3.7142857, within(1e-6));
        assertThat(line.slope().high()).isCloseTo(4.375, within(1e-9));
        assertThat(line.intercept()).isCloseTo(4, within(1e-9));
    }

    /** Source: scipy tests, test_theilslopes. */
    @Test
    void three_points_give_the_reference_slope() {
        Robust.Line line = Robust.line(List.of(0.0, 1.0, 2.0), List.of(0.0, 1.0, 1.0));

        assertThat(line.slope().mid()).isCloseTo(0.5, within(1e-12));
        assertThat(line.intercept()).isCloseTo(0.5, within(1e-12));
    }

    /** NIST StRD Norris; the robust line by scipy 1.10.1 theilslopes. */
    @Test
    void a_robust_line_through_the_norris_data_is_that_of_the_reference() {
        Robust.Line line = Robust.line_S68(
                Checks.column("/checks/norris.csv", "x"), Checks.column("/checks/norris.csv", "y"), 1.96);

        assertThat(line.slope().mid()).isCloseTo(1.0021968365553604, within(1e-12));
        assertThat(line.intercept()).isCloseTo(-0.0640158172232077, within(1e-9));
        assertThat(line.slope().low()).isCloseTo(1.0011153, within(5e-8));
        assertThat(line.slope().high()).isCloseTo(1.0030534, within(5e-8));
    }

    /** MAD of 1 1 2 2 4 6 9: scipy. */
    @Test
    void the_median_deviation_is_that_of_the_reference() {
        assertThat(Robust.spread(List.of(1.0, 1.0, 2.0, 2.0, 4.0, 6.0, 9.0)))
                .isCloseTo(1.482602218505602, within(1e-12));
    }

    /** MannKendall.jl, test/runtests.jl. */
    @Test
    void a_hundred_rising_numbers_have_the_reference_statistic() {
        MannKendall test = MannKendall.of(
                IntStream.rangeClosed(1, 100).mapToObj(i -> (double) i).toList());

        assertThat(test.s()).isEqualTo(4950);
        assertThat(test.variance()).isCloseTo(112750, within(1e-9));
        assertThat(test.z()).isCloseTo(14.73869998208331, within(1e-9));
    }

    /** R cor.test(method = "kendall", exact = FALSE, continuity = TRUE) on Nile, ties corrected. */
    @Test
    void the_nile_falls_as_the_reference_says() {
        List<Double> flow = Checks.column("/checks/nile.csv", "flow");
        MannKendall test = MannKendall.of(flow);
        List<Double> years = Checks.column("/checks/nile.csv", "year");

        assertThat(test.s()).isEqualTo(-1387);
        assertThat(test.variance()).isCloseTo(112728.333333, within(1e-6));
        assertThat(test.z()).isCloseTo(-4.128066523, within(1e-9));
        assertThat(Robust.line(years, flow).slope().mid()).isCloseTo(-2.6, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "8.2;7.9;8.0;7.7, 0.1",
        "420;425;410;435, 5",
        "430;420;450;410, 10",
        "2.93;2.68;2.57;2.46, 0.01",
        "0.06;0.04;0.10;0.08, 0.02"
    })
    void the_step_of_a_kit_shows_in_the_figures(String written, double step) {
        List<Double> values =
                java.util.Arrays.stream(written.split(";")).map(Double::valueOf).toList();

        assertThat(Steps.writtenStep(values)).isCloseTo(step, within(1e-12));
    }
}
