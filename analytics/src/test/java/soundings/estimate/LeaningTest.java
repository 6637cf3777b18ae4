package soundings.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import soundings.quantity.Interval;

class LeaningTest {
    private static final Interval USE = new Interval(1, 0.9, 1.1);

    @Test
    void readings_that_all_lie_above_make_room_for_a_lower_use_and_a_higher_level() {
        Leaning leaning = Leaning.of(List.of(-0.3, 0.2, 1.5, 1.5, 1.5, 1.5));

        // four of 1.5: their mean is 1.5 * sqrt(4) = 3 standard deviations off
        assertThat(leaning.by()).isCloseTo(3, within(1e-12));
        assertThat(leaning.widen(USE, false)).satisfies(i -> {
            assertThat(i.low()).isCloseTo(1 - 0.1 * 2.6, within(1e-12));
            assertThat(i.high()).isEqualTo(1.1);
        });
        assertThat(leaning.widen(USE, true).high()).isCloseTo(1 + 0.1 * 2.6, within(1e-12));
    }

    @Test
    void readings_to_either_side_or_a_single_one_widen_nothing() {
        assertThat(Leaning.of(List.of(1.0, -1.2, 0.9, -0.8)).widen(USE, false)).isEqualTo(USE);
        assertThat(Leaning.of(List.of(4.0)).widen(USE, false)).isEqualTo(USE);
        assertThat(Leaning.of(List.of()).widen(USE, true)).isEqualTo(USE);
    }
}
