package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.estimate;
import static soundings.advice.Given.judged;
import static soundings.advice.Given.log;
import static soundings.setup.SmallReference.AMMONIA;
import static soundings.setup.SmallReference.CALCIUM;
import static soundings.setup.SmallReference.IODINE;
import static soundings.setup.SmallReference.TEMPERATURE;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.history.History;
import soundings.quantity.Interval;
import soundings.setup.Setup;

class JudgingTest {
    /** Iodine in a tank whose range is 0.04 to 0.08 mg/L; dosed 0.001 mg/L a day where it is dosed. */
    @ParameterizedTest
    @CsvSource({
        "0.060, 0.002, 0.0010, 0.00005, true, STEADY",
        "0.075, 0.002, 0.0002, 0.0001, true, OVER_DOSED",
        "0.100, 0.003, 0.0010, 0.0002, true, OVER_DOSED",
        "0.045, 0.002, 0.0020, 0.0001, true, UNDER_DOSED",
        "0.030, 0.002, 0.0010, 0.0001, true, UNDER_DOSED",
        "0.030, 0.002, 0.0000, 0.0001, false, LOW",
        "0.100, 0.003, 0.0000, 0.0002, false, HIGH",
        "0.100, 0.003, 0.0030, 0.0001, true, HIGH",
        "0.075, 0.001, 0.0008, 0.0001, false, FALLING",
        "0.060, 0.020, 0.0010, 0.0010, true, CANNOT_TELL",
    })
    void a_trace_is_judged_by_level_drift_and_dose_together(
            double level, double levelSd, double use, double useSd, boolean dosed, Verdict verdict) {
        Setup setup = Given.setup(OptionalDouble.of(100), List.of(Given.additive("Iodide", IODINE, 0.1)));
        History history = (dosed ? log().rate("Iodide", 0, 1) : log())
                .readings(IODINE, 0, 5, level, level, level)
                .history(setup);

        Judgement judgement = judged(
                Given.advice(history, estimate(history.asOf(), IODINE, level, levelSd, use, useSd, dosed ? 0.001 : 0)),
                IODINE);

        assertThat(judgement.verdict()).isEqualTo(verdict);
        assertThat(judgement.probability()).isBetween(0.0, 1.0);
        assertThat(judgement.because()).contains("The range is 0.04 to 0.08 mg/L");
        if (verdict != Verdict.CANNOT_TELL) {
            assertThat(judgement.probability()).isGreaterThanOrEqualTo(0.8);
        }
    }

    @Test
    void a_poison_s_last_reading_is_not_smoothed_away() {
        History history = log().readings(AMMONIA, 0, 2, 0, 0, 0, 0, 0, 1).history(Setup.EMPTY);

        Judgement judgement =
                judged(Given.advice(history, estimate(history.asOf(), AMMONIA, 0.02, 0.01, 0, 0.001, 0)), AMMONIA);

        assertThat(judgement.verdict()).isEqualTo(Verdict.HIGH);
    }

    @Test
    void one_reading_tells_a_tank_that_is_too_warm() {
        History history = log().readings(TEMPERATURE, 0, 1, 30.5).history(Setup.EMPTY);

        assertThat(judged(Given.advice(history), TEMPERATURE).verdict()).isEqualTo(Verdict.HIGH);
    }

    @Test
    void an_old_test_tells_nothing() {
        History history = log().readings(CALCIUM, 0, 3, 420, 421, 419)
                .readings(IODINE, 70, 1, 0.06)
                .history(Setup.EMPTY);

        Judgement judgement =
                judged(Given.advice(history, estimate(history.asOf(), CALCIUM, 420, 1, 0, 0.001, 0)), CALCIUM);

        assertThat(judgement.verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(judgement.because()).contains("64 days old");
    }

    /** Table values of the standard normal distribution: Abramowitz and Stegun 1964, table 26.1 (1.96: 0.97500). */
    @Test
    void probabilities_follow_the_normal_distribution_of_the_interval() {
        Interval about = Interval.normal(10, 2);

        assertThat(Odds.below(about, 10)).isCloseTo(0.5, within(1e-7));
        assertThat(Odds.below(about, 10 + 2 * 1.96)).isCloseTo(0.9750021, within(1e-6));
        assertThat(Odds.above(about, 10 + 2 * 1.6448536)).isCloseTo(0.05, within(1e-6));
    }

    @Test
    void an_interval_cut_at_zero_takes_its_spread_from_the_other_side() {
        assertThat(Odds.below(new Interval(0.01, 0, 0.04), 0.005)).isBetween(0.3, 0.5);
    }
}
