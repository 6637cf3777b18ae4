package soundings.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.chemistry.Calcification.Finding;
import soundings.chemistry.Calcification.Verdict;
import soundings.quantity.Interval;
import soundings.quantity.Normal;

class CalcificationTest {
    @ParameterizedTest(name = "{0} dKH and {1} mg/L a day, each known to {2}: {3}")
    @CsvSource({
        "1, 7.15, 0.05, GROWTH",
        "1, 3.5, 0.1, ALKALINITY_GOES_ELSEWHERE",
        "1, 14, 0.1, CALCIUM_GOES_ELSEWHERE",
        "1, 7.15, 0.4, CANNOT_TELL",
        "1, 8.5, 0.1, CANNOT_TELL",
    })
    void the_ratio_tells_growth_from_other_sinks(double dkh, double calcium, double share, Verdict verdict) {
        Interval alkalinityUse = new Interval(dkh, dkh * (1 - share), dkh * (1 + share));
        Interval calciumUse = new Interval(calcium, calcium * (1 - share), calcium * (1 + share));

        Finding finding = Calcification.judge(alkalinityUse, calciumUse);

        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.ratio().mid()).isCloseTo(calcium / dkh, within(1e-9));
        assertThat(finding.probability()).isBetween(0.0, 1.0);
    }

    @Test
    void nothing_is_told_from_a_use_that_may_be_nothing() {
        Finding finding = Calcification.judge(new Interval(0.1, -0.1, 0.3), new Interval(2, 1, 3));

        assertThat(finding.verdict()).isEqualTo(Verdict.CANNOT_TELL);
    }

    /** Abramowitz & Stegun 1964, Table 26.1. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.8413447461", "-1, 0.1586552539", "1.6448536270, 0.95", "3, 0.9986501020"})
    void the_normal_distribution_agrees_with_its_table(double z, double below) {
        assertThat(Normal.below(z)).isCloseTo(below, within(2e-7));
    }
}
