package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TimedAmountsTest {
    private static List<TimedAmounts.Timed> in(String text) {
        return TimedAmounts.in(text, DecimalMark.POINT, WordingTables.WORDS);
    }

    @ParameterizedTest
    @CsvSource({
        "8:00 7.9 / 20:00 8.2, 08:00 7.9 20:00 8.2",
        "7.8 (8am) 8.3 (8pm), 08:00 7.8 20:00 8.3",
        "7.8 @ 8 am; 8.3 @ 8 pm, 08:00 7.8 20:00 8.3",
        "8.0 am / 8.2 pm, - 8 - 8.2",
        "morning: 7.8 evening: 8.2, ",
        "morning 7.8 / evening 8.2, - 7.8 - 8.2",
        "7h30 7.9 & 19h 8.1, 07:30 7.9 19:00 8.1"
    })
    void each_amount_keeps_its_time(String text, String expected) {
        assertThat(in(text).stream()
                        .map(t -> t.time().map(LocalTime::toString).orElse("-") + " "
                                + AmountsTest.shown(t.amount().amount()))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(expected == null ? "" : expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"7.9 / 8.0", "8:00 7.9", "7.9 (8am) / 8.2", "8am / 8pm", "7.9 am / 8.2 am", "8.2", "1.025 / 34"})
    void amounts_whose_times_do_not_tell_them_apart_are_left(String text) {
        assertThat(in(text)).isEmpty();
    }
}
