package soundings.history;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.setup.SmallReference.ALKALINITY;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import soundings.log.Reading;
import soundings.setup.Setup;
import soundings.setup.SmallReference;

/** The test that stands for a day nobody tested on. */
class NearestTest {
    private final Series series = new WrittenLog(SmallReference.load())
            .readings(ALKALINITY, 0, 4, 8.0, 8.2, 8.4)
            .history(Setup.EMPTY)
            .tanks()
            .get(0)
            .series()
            .get(0);
    private final LocalDate first = series.used().get(0).reading().date();

    @Test
    void the_nearest_reading_is_taken_and_of_two_as_near_the_earlier() {
        assertThat(series.near(first.plusDays(3), 7)).map(Reading::date).contains(first.plusDays(4));
        assertThat(series.near(first.plusDays(2), 7)).map(Reading::date).contains(first);
    }

    @Test
    void a_reading_too_far_off_stands_for_nothing() {
        assertThat(series.near(first.plusDays(20), 7)).isEmpty();
        assertThat(series.near(first.plusDays(15), 7)).map(Reading::date).contains(first.plusDays(8));
    }
}
