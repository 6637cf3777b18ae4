package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.log;
import static soundings.history.WrittenLog.FIRST;
import static soundings.setup.SmallReference.ALKALINITY;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.setup.Setup;

/** A made-up tank whose use is known on either side of the day something was changed. */
class EventsTest {
    private static final int LAST = 90;
    private static final int ON = 48;

    @Test
    void a_use_that_rose_since_new_lights_is_told_with_its_interval() {
        assertThat(since("light", ON, 0.02, 0.08)).singleElement().satisfies(i -> {
            assertThat(i.kind()).isEqualTo(Insight.Kind.EVENT);
            assertThat(i.label()).isEqualTo("alkalinity: change of the use since the change of light");
            assertThat(i.value()).hasValueSatisfying(v -> {
                assertThat(v.mid()).isCloseTo(0.06, within(0.03));
                assertThat(v.low()).isPositive();
            });
            assertThat(i.says()).startsWith("since " + FIRST.plusDays(ON) + " more is used than before");
            assertThat(i.restsOn()).hasSize(1);
        });
    }

    @Test
    void a_use_that_stayed_is_not_said_to_have_changed() {
        assertThat(since("carbon", ON, 0.03, 0.03))
                .singleElement()
                .satisfies(i -> assertThat(i.says()).contains("it cannot be told whether the use changed"));
    }

    @Test
    void too_few_tests_since_are_named() {
        assertThat(since("bottle", LAST - 8, 0.03, 0.03))
                .singleElement()
                .satisfies(i -> assertThat(i.says()).contains("4 each are needed"));
    }

    @Test
    void what_is_long_past_or_only_just_done_and_other_notes_are_left_out() {
        assertThat(since("carbon", 10, 0.03, 0.03)).isEmpty();
        assertThat(since("carbon", LAST - 2, 0.03, 0.03)).isEmpty();
        assertThat(since("loss", ON, 0.03, 0.03)).isEmpty();
    }

    private static List<Insight> since(String kind, int on, double before, double after) {
        Random random = new Random(3);
        WrittenLog log = log().note(kind, on, "noted");
        double level = 10;
        for (int day = 0; day <= LAST; day++) {
            if (day % 3 == 0) {
                log.reading(ALKALINITY, day, Math.rint((level + 0.1 * random.nextGaussian()) * 10) / 10);
            }
            level -= day < on ? before : after;
        }
        History history = log.history(Setup.EMPTY);
        Estimates estimates = Estimating.of(history, Given.REFERENCE);
        return Events.of(history, estimates, Given.REFERENCE);
    }
}
