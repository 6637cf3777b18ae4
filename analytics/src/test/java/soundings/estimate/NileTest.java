package soundings.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The filter on the classic example, as a level without use: published and independently computed values. */
class NileTest {
    private static final double OBSERVATION = 15099;
    private static final double LEVEL = 1469.1;
    private static final IntPredicate ALL = t -> true;
    private static final IntPredicate GAPS = t -> !(t >= 21 && t <= 40 || t >= 61 && t <= 80);

    private final List<Double> flow = Checks.column("/checks/nile.csv", "flow");

    private Balance start(double level, double variance) {
        Start start = new Start(level, Math.sqrt(variance), 0, 0, 0, 0, 1, Double.POSITIVE_INFINITY, 0, false);
        return new Balance(start, spread(OBSERVATION, LEVEL), Trust.full(), 0);
    }

    private static Spread spread(double observation, double level) {
        return new Spread(List.of(Math.sqrt(observation)), 0, Math.sqrt(level), 0);
    }

    private List<Stage> stages(IntPredicate measured) {
        List<Stage> stages = new ArrayList<>();
        for (int t = 1; t <= flow.size(); t++) {
            double y = flow.get(t - 1);
            List<Sight> sights = measured.test(t) ? List.of(Samples.sight(y)) : List.of();
            stages.add(new Stage(t - 1, t == 1 ? 0 : 1, 0, 0, sights, 1, 0, 0, 0));
        }
        return stages;
    }

    private List<Smoother.Smoothed> smooth(IntPredicate measured) {
        Balance balance = start(0, 1e7);
        Start start = new Start(0, Math.sqrt(1e7), 0, 0, 0, 0, 1, Double.POSITIVE_INFINITY, 0, false);
        return Smoother.back(Trace.of(balance, stages(measured)), start);
    }

    @ParameterizedTest(name = "t = {0}")
    @CsvFileSource(resources = "/checks/nile-local-level.csv", useHeadersInDisplayName = true)
    void filter_and_smoother_agree_with_the_reference(
            int t,
            double predicted,
            double predictedVariance,
            double filtered,
            double filteredVariance,
            double smoothed,
            double smoothedVariance) {
        Balance balance = start(0, 1e7);
        stages(ALL).subList(0, t - 1).forEach(balance::take);
        balance.pass(stages(ALL).get(t - 1));
        near(balance, predicted, predictedVariance, 1e-5);

        balance.look(stages(ALL).get(t - 1).sights().get(0));
        near(balance, filtered, filteredVariance, 1e-5);

        Smoother.Belief back = smooth(ALL).get(t - 1).before();
        assertThat(back.mean()).isCloseTo(smoothed, within(1e-5 + 1e-8 * smoothed));
        assertThat(back.variance()).isCloseTo(smoothedVariance, within(1e-4));
    }

    private static void near(Balance balance, double mean, double variance, double tolerance) {
        assertThat(balance.mean(Start.LEVEL)).isCloseTo(mean, within(tolerance));
        assertThat(balance.covariance(0, 0)).isCloseTo(variance, within(1e-8 * variance + tolerance));
    }

    @ParameterizedTest(name = "t = {0}")
    @CsvFileSource(resources = "/checks/nile-missing.csv", useHeadersInDisplayName = true)
    void missing_years_are_bridged_as_the_reference_does(
            int t, double predicted, double predictedVariance, double smoothed, double smoothedVariance) {
        Balance balance = start(0, 1e7);
        stages(GAPS).subList(0, t - 1).forEach(balance::take);
        balance.pass(stages(GAPS).get(t - 1));
        near(balance, predicted, predictedVariance, 1e-4);

        Smoother.Belief back = smooth(GAPS).get(t - 1).before();
        assertThat(back.mean()).isCloseTo(smoothed, within(1e-4));
        assertThat(back.variance()).isCloseTo(smoothedVariance, within(1e-3));
    }

    @Test
    void one_stage_of_twenty_one_days_is_as_good_as_twenty_one_of_one() {
        Balance daily = start(0, 1e7);
        stages(GAPS).subList(0, 41).forEach(daily::take);

        Balance atOnce = start(0, 1e7);
        stages(GAPS).subList(0, 20).forEach(atOnce::take);
        atOnce.take(new Stage(40, 21, 0, 0, stages(GAPS).get(40).sights(), 1, 0, 0, 0));

        assertThat(atOnce.mean(0)).isCloseTo(daily.mean(0), within(1e-9));
        assertThat(atOnce.covariance(0, 0)).isCloseTo(daily.covariance(0, 0), within(1e-6));
    }

    /** First observation included: statsmodels, and the first dropped: statsmodels' own test of the state space package. */
    @Test
    void the_log_likelihood_is_that_of_the_reference() {
        Balance balance = start(0, 1e7);
        stages(ALL).forEach(balance::take);
        assertThat(balance.logLikelihood()).isCloseTo(-641.5855784594, within(1e-6));

        Balance first = start(0, 1e7);
        first.take(stages(ALL).get(0));
        assertThat(balance.logLikelihood() - first.logLikelihood()).isCloseTo(-632.54421, within(1e-5));
    }

    /** P of a steady local level: P / s2 = (q + sqrt(q^2 + 4 q)) / 2; R StructTS and Durbin & Koopman 2012, 2.11. */
    @Test
    void the_variance_settles_at_its_steady_state() {
        Balance balance = start(0, 1e7);
        stages(ALL).forEach(balance::take);
        double q = LEVEL / OBSERVATION;
        double steady = OBSERVATION * (q + Math.sqrt(q * q + 4 * q)) / 2;

        assertThat(steady).isCloseTo(5501.258, within(1e-3));
        assertThat(balance.covariance(0, 0) + LEVEL).isCloseTo(steady, within(1e-3));
    }

    @Test
    void thirty_years_ahead_the_level_stays_and_its_variance_grows() {
        Balance balance = start(0, 1e7);
        stages(ALL).forEach(balance::take);
        balance.pass(new Stage(129, 30, 0, 0, List.of(), 1, 0, 0, 0));

        near(balance, 798.37029, 48105.16, 6e-3);
    }

    /** Durbin & Koopman 2012, 2.12.1 print -0.03 and 0.09 above 3; the further digits were recomputed with another program. */
    @Test
    void standardised_residuals_have_the_published_moments() {
        List<Double> residuals = residuals();
        double mean = residuals.stream().mapToDouble(z -> z).average().orElseThrow();
        double second = moment(residuals, mean, 2);

        assertThat(moment(residuals, mean, 3) / Math.pow(second, 1.5)).isCloseTo(-0.0306, within(1e-3));
        assertThat(moment(residuals, mean, 4) / (second * second)).isCloseTo(3.0873, within(1e-3));
    }

    @Test
    void a_model_that_fits_passes_the_residual_check() {
        assertThat(ResidualCheck.of(residuals()).sound()).isTrue();
    }

    private List<Double> residuals() {
        return Trace.of(start(0, 1e7), stages(ALL)).moments().stream()
                .skip(1)
                .map(m -> m.seen.get(0).did.surprise())
                .toList();
    }

    private static double moment(List<Double> values, double mean, int power) {
        return values.stream()
                .mapToDouble(z -> Math.pow(z - mean, power))
                .average()
                .orElseThrow();
    }
}
