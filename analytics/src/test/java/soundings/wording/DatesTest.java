package soundings.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.sheet.Value;

class DatesTest {
    static Stream<Arguments> dates() {
        return WordingTables.rows("dates.csv").map(r -> Arguments.of(r.getField("text"), r.getField("expected")));
    }

    @ParameterizedTest(name = "\"{0}\" is {1}")
    @MethodSource("dates")
    void a_text_means_the_days_the_table_says(String text, String expected) {
        Optional<WrittenDate> read = Dates.read(WordingTables.spaced(text));

        assertThat(read.map(DatesTest::shown).orElse("")).isEqualTo(expected);
    }

    static String shown(WrittenDate date) {
        String text = days(date.readings())
                + date.time().map(t -> " " + t.withSecond(0)).orElse("")
                + date.weekday().map(d -> " wd" + d.getValue()).orElse("")
                + (date.until().isEmpty() ? "" : " until" + spaceBeforeOrders(days(date.until())))
                + (date.origin() == WrittenDate.Origin.SERIAL ? " serial" : "")
                + (date.sure() < 0.5 ? " weak" : "");
        return text.strip();
    }

    private static String spaceBeforeOrders(String days) {
        return days.startsWith("=") ? days : " " + days;
    }

    private static String days(Map<DateOrder, PartialDate> readings) {
        if (readings.values().stream().distinct().count() == 1) {
            return "=" + day(readings.values().iterator().next());
        }
        return readings.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey().name().charAt(0) + day(e.getValue()))
                .collect(Collectors.joining(" "));
    }

    private static String day(PartialDate day) {
        String year = day.year().isPresent() ? day.year().getAsInt() + "" : "-";
        return String.format(Locale.ROOT, "%s-%02d-%02d", year, day.month(), day.day());
    }

    @ParameterizedTest(name = "a sheet named {0} is {1}")
    @CsvSource({
        "October 2025, 2025-10",
        "Oct 25, 2025-10",
        "Oct '25, 2025-10",
        "2025-10, 2025-10",
        "10-2025, 2025-10",
        "2025_10, 2025-10",
        "10.2025, 2025-10",
        "Okt 2025, 2025-10",
        "Oktober, 10",
        "OCT, 10",
        "10 October, 10",
        "12 Oct, ''",
        "Oct 25, 2025-10",
        "Sheet1, ''",
        "Tests, ''",
        "13-2025, ''",
        "2025, ''",
        "Display, ''"
    })
    void a_sheet_name_may_be_a_month(String name, String expected) {
        String shown = Dates.month(name)
                .map(m -> (m.year().isPresent() ? m.year().getAsInt() + "-" : "") + m.month())
                .orElse("");

        assertThat(shown).isEqualTo(expected);
    }

    @Test
    void a_moment_is_its_day_and_a_time_cell_only_a_time() {
        LocalDateTime at = LocalDateTime.of(2026, 3, 5, 18, 30);

        WrittenDate day = Dates.read(new Value.Moment(46086.77, at, Value.Shows.DATE_AND_TIME))
                .orElseThrow();
        WrittenDate time =
                Dates.read(new Value.Moment(0.77, at, Value.Shows.TIME)).orElseThrow();

        assertThat(shown(day)).isEqualTo("=2026-03-05 18:30");
        assertThat(day.origin()).isEqualTo(WrittenDate.Origin.MOMENT);
        assertThat(shown(time)).isEqualTo("18:30");
    }

    @Test
    void a_number_cell_is_a_day_count_between_30000_and_60000() {
        assertThat(Dates.read(new Value.Numeric(46000.75)).map(DatesTest::shown))
                .contains("=2025-12-09 18:00 serial");
        assertThat(Dates.read(new Value.Numeric(420))).isEmpty();
        assertThat(Dates.read(new Value.Numeric(Double.NaN))).isEmpty();
        assertThat(PartialDate.of(LocalDate.of(2026, 1, 2)).year()).isEqualTo(OptionalInt.of(2026));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "31.09.26   | DAY_FIRST   | 31 September does not exist",
                "31.09.2026 | DAY_FIRST   | 31 September does not exist",
                "09/31/26   | MONTH_FIRST | 31 September does not exist",
                "2026-09-31 | DAY_FIRST   | 31 September does not exist",
                "30 Feb     | DAY_FIRST   | 30 February does not exist",
                "31 June 26 | DAY_FIRST   | 31 June does not exist",
                "29.2.2027  | DAY_FIRST   | 29 February 2027 does not exist",
                "29.2.2028  | DAY_FIRST   | -",
                "30.09.26   | DAY_FIRST   | -",
                "soon       | DAY_FIRST   | -"
            })
    void a_day_its_month_does_not_have_is_said_to_be_missing(String text, DateOrder order, String why) {
        assertThat(Dates.missing(text, order)).isEqualTo(Optional.ofNullable(why));
        assertThat(Dates.read(text).flatMap(d -> d.in(order)).isPresent())
                .isEqualTo(why == null && !text.equals("soon"));
    }
}
