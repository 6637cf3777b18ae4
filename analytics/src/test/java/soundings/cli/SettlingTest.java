package soundings.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import soundings.cli.Settling.Due;
import soundings.cli.Settling.Stamp;

/** One log called {@code a}; the clock is the test's own. */
class SettlingTest {
    private final Map<String, Stamp> files = new HashMap<>();
    private final Settling<String> settling = new Settling<>(log -> files.getOrDefault(log, new Stamp(0, 0)));

    private void saved(long size, long now) {
        files.put("a", new Stamp(size, now));
        settling.touched("a", now);
    }

    @Test
    void a_burst_of_events_is_one_save_due_when_the_file_has_come_to_rest() {
        for (long now = 0; now <= 200; now += 20) {
            saved(100 + now, now);
            assertThat(settling.due(now)).isEmpty();
        }

        assertThat(settling.due(499)).isEmpty();
        assertThat(settling.due(500)).containsExactly(new Due<>("a", false));
        settling.read("a");

        assertThat(settling.due(1_000)).isEmpty();
        assertThat(settling.isIdle()).isTrue();
    }

    @Test
    void a_file_that_grows_without_an_event_is_waited_for() {
        saved(100, 0);
        files.put("a", new Stamp(200, 290));

        assertThat(settling.due(310)).isEmpty();
        assertThat(settling.due(610)).hasSize(1);
    }

    @Test
    void a_late_event_of_a_save_that_was_reported_is_no_other_save_and_a_changed_file_is() {
        saved(100, 0);
        settling.due(300);
        settling.read("a");

        settling.touched("a", 900);
        assertThat(settling.due(1_300)).isEmpty();

        saved(101, 2_000);
        assertThat(settling.due(2_300)).hasSize(1);
    }

    @Test
    void a_file_that_is_gone_is_not_due() {
        saved(100, 0);
        files.remove("a");

        assertThat(settling.due(1_000)).isEmpty();
        assertThat(settling.due(2_000)).isEmpty();
        assertThat(settling.isIdle()).isTrue();
    }

    @Test
    void a_half_saved_file_is_tried_again_less_and_less_often_and_said_to_be_unreadable_once_at_the_end() {
        saved(100, 0);
        List<Long> tries = new ArrayList<>();
        List<Long> told = new ArrayList<>();
        for (long now = 0; now <= 30_000; now += 50) {
            for (Due<String> due : settling.due(now)) {
                (due.last() ? told : tries).add(now);
                if (due.last()) {
                    settling.read("a");
                } else {
                    settling.unreadable("a", now);
                }
            }
        }

        assertThat(tries).containsExactly(300L, 600L, 1_200L, 2_400L, 4_800L, 9_600L);
        assertThat(told).containsExactly(Settling.PATIENCE_MILLIS);
    }

    @Test
    void the_rest_of_a_half_saved_file_makes_it_due_afresh() {
        saved(100, 0);
        settling.due(300);
        settling.unreadable("a", 300);

        saved(200, 400);

        assertThat(settling.due(600)).isEmpty();
        assertThat(settling.due(700)).containsExactly(new Due<>("a", false));
    }
}
