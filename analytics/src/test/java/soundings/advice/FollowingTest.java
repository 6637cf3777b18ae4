package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.additive;
import static soundings.advice.Given.estimate;
import static soundings.advice.Given.log;
import static soundings.history.WrittenLog.FIRST;
import static soundings.setup.SmallReference.ALKALINITY;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.advice.Followed.Kept;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.quantity.Interval;
import soundings.setup.Setup;

class FollowingTest {
    private static final Setup SETUP = Given.setup(OptionalDouble.of(90), List.of(additive("Soda", ALKALINITY, 5)));

    /** The second row is 28.0 left as it was where 28.8 was advised: near, and yet nothing was done. */
    @ParameterizedTest(name = "{0} mL, advised {1} to {2}: then {3} is {4}")
    @CsvSource({
        "53.2, 57.1, 60.3, 58.5, FOLLOWED",
        "28.0, 28.6, 29.0, 28.0, NOT",
        "28.0, 28.6, 29.0, 28.6, FOLLOWED",
        "53.2, 57.1, 60.3, 53.2, NOT",
        "53.2, 57.1, 60.3, 55.5, PARTLY",
        "53.2, 57.1, 60.3, 60.0, FOLLOWED",
        "53.2, 57.1, 60.3, 66.0, PARTLY",
        "53.2, 57.1, 60.3, 48.0, OTHERWISE",
        "3.0, 0.6, 1.2, 0.9, FOLLOWED",
        "3.0, 0.6, 1.2, 2.0, PARTLY",
        "3.0, 0.6, 1.2, 4.0, OTHERWISE",
        "0, 4.0, 6.0, 0, NOT"
    })
    void advice_is_kept_as_far_as_the_dose_moved_toward_it(
            double present, double low, double high, double since, Kept kept) {
        assertThat(Following.kept(present, new Interval((low + high) / 2, low, high), since))
                .isEqualTo(kept);
    }

    @Test
    void what_was_advised_stands_beside_what_was_dosed_since_and_what_the_level_did() {
        Following.End then = end(dosed(), 8, 1.2, 0.5);
        Following.End now = end(dosed().rate("Soda", 40, 21).readings(ALKALINITY, 58, 1, 8), 7.9, 1.2, 1.17);

        List<Followed> followed = Following.of(then, now);

        assertThat(followed).singleElement().satisfies(f -> {
            assertThat(f.tank()).isEqualTo("Cube");
            assertThat(f.additive()).isEqualTo("Soda");
            assertThat(f.advisedOn()).isEqualTo(then.history().asOf());
            assertThat(f.presentMlPerDay()).isEqualTo(9);
            assertThat(f.proposedMlPerDay().mid()).isCloseTo(21.6, within(1e-9));
            assertThat(f.sinceMlPerDay()).isEqualTo(21);
            assertThat(f.changedOn()).hasValue(FIRST.plusDays(40));
            assertThat(f.kept()).isEqualTo(Kept.FOLLOWED);
            assertThat(f.levelThen().mid()).isEqualTo(8);
            assertThat(f.levelNow()).hasValueSatisfying(l -> assertThat(l.mid()).isEqualTo(7.9));
        });
    }

    @Test
    void a_dose_nobody_touched_is_not_followed_and_has_no_day_of_change() {
        Following.End then = end(dosed(), 8, 1.2, 0.5);
        Following.End now = end(dosed().readings(ALKALINITY, 58, 1, 6), 6, 1.2, 0.5);

        assertThat(Following.of(then, now)).singleElement().satisfies(f -> {
            assertThat(f.kept()).isEqualTo(Kept.NOT);
            assertThat(f.changedOn()).isEmpty();
        });
    }

    @Test
    void where_nothing_was_proposed_there_is_nothing_to_follow() {
        assertThat(Following.of(end(dosed(), 8, 0.5, 0.5), end(dosed(), 8, 0.5, 0.5)))
                .isEmpty();
    }

    private static WrittenLog dosed() {
        return log().rate("Soda", 0, 9).readings(ALKALINITY, 0, 3, 8, 8.1, 8, 7.9, 8, 8.1, 8, 8, 8.1, 8, 8.1);
    }

    private static Following.End end(WrittenLog log, double level, double use, double dosed) {
        History history = log.history(SETUP);
        Estimate estimate = estimate(history.asOf(), ALKALINITY, level, 0.1, use, 0.05, dosed);
        Estimates estimates = Given.estimates(estimate);
        return new Following.End(history, estimates, Advising.of(history, estimates, Given.REFERENCE));
    }
}
