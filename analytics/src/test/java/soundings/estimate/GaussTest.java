package soundings.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class GaussTest {
    @ParameterizedTest(name = "N({2}, {3}) in ({0}, {1})")
    @CsvFileSource(resources = "/checks/truncated-normal.csv", useHeadersInDisplayName = true)
    void a_truncated_normal_has_the_moments_of_the_reference(
            double low, double high, double mean, double sd, double expected, double variance, double tolerance) {
        Gauss.Moments cut = Gauss.truncated(mean, sd, low, high);

        assertThat(cut.mean()).isCloseTo(expected, within(tolerance));
        assertThat(cut.variance()).isCloseTo(variance, within(tolerance));
    }

    /** Against the error function of Hipparchus, an independent implementation: to 1e-15, and a tail to 1e-8 of itself. */
    @Test
    void the_share_below_agrees_with_a_reference_library_over_the_whole_line() {
        for (double z = -37; z <= 37; z += 0.013) {
            double expected = Erf.erfc(-z / Math.sqrt(2)) / 2;
            assertThat(Gauss.cumulative(z))
                    .as("z = %s", z)
                    .isCloseTo(expected, within(Math.min(1e-15, 1e-8 * expected) + 1e-300));
        }
        assertThat(Gauss.cumulative(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(Gauss.cumulative(Double.POSITIVE_INFINITY)).isOne();
    }

    /** E max(0, N): scipy. */
    @ParameterizedTest
    @CsvSource({"0, 1, 0.398942280401", "1, 2, 1.395593114803", "-1, 1, 0.083315470588"})
    void clipping_at_zero_has_the_mean_of_the_reference(double mean, double sd, double expected) {
        assertThat(Gauss.clippedAtZero(mean, sd).mean()).isCloseTo(expected, within(1e-11));
    }

    /** E X^2 over X > 0 of N(0, 1) is 1/2 by symmetry. */
    @Test
    void clipping_at_zero_has_the_variance_of_its_second_moment() {
        double first = 1 / Math.sqrt(2 * Math.PI);
        assertThat(Gauss.clippedAtZero(0, 1).variance()).isCloseTo(0.5 - first * first, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"30, Infinity", "-Infinity, -30", "30, 31", "13, 14"})
    void limits_far_out_in_the_tail_leave_the_variable_at_the_nearer_one(double low, double high) {
        Gauss.Moments cut = Gauss.truncated(0, 1, low, high);
        double near = Math.abs(low) < Math.abs(high) ? low : high;

        assertThat(cut.mean()).isCloseTo(near, within(0.1));
        assertThat(cut.variance()).isBetween(0.0, 0.01);
        assertThat(cut.probability()).isPositive();
    }
}
