package soundings.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.upkeep.Sheets.book;
import static soundings.upkeep.Sheets.sheet;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.advice.Advice;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.setup.OtherSheet;
import soundings.setup.Setup;

class TestsTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final Parameter ALKALINITY = REFERENCE.parameter("alkalinity");
    private static final Parameter MAGNESIUM = REFERENCE.parameter("magnesium");

    private static Testing testing(WrittenLog log, String... rows) {
        History history = log.history(Setup.EMPTY);
        Estimates estimates = Estimating.of(history, REFERENCE);
        List<Tests.Row> stated = OtherSheet.read(
                        book(sheet("Tests", rows)), "Tests", "Parameter", REFERENCE, Tests.Row::of)
                .rows();
        return Tests.of(history, estimates, new Advice(List.of(), List.of()), REFERENCE, stated);
    }

    private static double[] same(double value, int times) {
        return IntStream.range(0, times).mapToDouble(i -> value).toArray();
    }

    /** The median of the last ten gaps: an old habit does not count. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"'0,3,6,9', 3", "'0,3,6,10,13', 3", "'0,2,4,7,11', 2.5", "'0,30,60,63,66,69,72,75,78,81,84,87,90', 3"})
    void the_usual_spacing_is_the_median_of_the_last_ten_gaps(String days, double expected) {
        List<LocalDate> dates = Arrays.stream(days.split(","))
                .map(d -> WrittenLog.FIRST.plusDays(Integer.parseInt(d)))
                .toList();

        assertThat(Tests.spacing(dates)).hasValue(expected);
    }

    @Test
    void a_test_is_overdue_by_the_keepers_own_spacing_or_by_the_setup_workbook() {
        WrittenLog log = new WrittenLog(REFERENCE)
                .readings(ALKALINITY, 0, 3, same(8, 8)) // the last on day 21, every 3 days
                .readings(MAGNESIUM, 0, 10, same(1300, 4)); // the last on day 30, the report's day

        Testing own = testing(log);
        Testing asked = testing(log, "Parameter|Every days|Wait minutes", "Alkalinity|14|", "Magnesium||5");

        assertThat(own.overdue()).singleElement().satisfies(t -> {
            assertThat(t.parameter()).isEqualTo(ALKALINITY);
            assertThat(t.overdueDays()).isEqualTo(6); // 9 days ago, due after 3
        });
        assertThat(asked.overdue()).isEmpty();
        assertThat(asked.tests())
                .filteredOn(t -> t.parameter().equals(MAGNESIUM))
                .singleElement()
                .satisfies(t -> assertThat(t.waitMinutes()).hasValue(5));
    }

    @Test
    void three_tests_tell_no_habit() {
        Testing testing = testing(new WrittenLog(REFERENCE)
                .readings(ALKALINITY, 0, 3, same(8, 3))
                .readings(MAGNESIUM, 0, 30, same(1300, 4)));

        assertThat(testing.overdue()).isEmpty();
    }

    private static Estimate estimate(Interval level, Interval drift, boolean sound) {
        return new Estimate(
                new Estimate.Basis("Cube", ALKALINITY, WrittenLog.FIRST, 20, 60),
                new Estimate.Figures(level, Optional.empty(), drift, 0, Optional.empty()),
                Estimate.Course.NONE,
                new Estimate.Fit(0.1, 0.1, 0, 0, 0.1, 0.01, 0, 3, sound));
    }

    /**
     * Level 8.0 (7.9 to 8.1) in 7.5 to 9.0: room is 7.9 - 7.5 = 0.4. At most 0.01 a day either way: a quarter of 0.4 takes
     * 0.1 / 0.01 = 10 days. At 0.002 it takes 50, and 30 is the most.
     */
    @Test
    void enough_is_the_time_for_a_quarter_of_the_way_to_the_nearer_end() {
        Interval level = new Interval(8.0, 7.9, 8.1);
        TargetRange range = new TargetRange(ALKALINITY, 7.5, 9.0, "setup");

        assertThat(Tests.enough(estimate(level, new Interval(0, -0.0100001, 0.005), true), range))
                .contains(9);
        assertThat(Tests.enough(estimate(level, new Interval(0, -0.0099999, 0.005), true), range))
                .contains(10);
        assertThat(Tests.enough(estimate(level, new Interval(0, -0.002, 0.001), true), range))
                .contains(30);
        assertThat(Tests.enough(estimate(level, new Interval(-0.5, -0.6, -0.4), true), range))
                .isEmpty();
        assertThat(Tests.enough(estimate(new Interval(8, 7.4, 8.6), new Interval(0, -0.01, 0.01), true), range))
                .isEmpty();
        assertThat(Tests.enough(estimate(level, new Interval(0, -0.002, 0.001), false), range))
                .isEmpty();
    }

    /** March 2026 has the readings of days 0 to 30: days 0, 3, ... 27 are ten tests; 10 at 0.5 and 4 at 1.25 make 10.0. */
    @Test
    void the_months_tests_cost_their_number_times_their_price() {
        Testing testing = testing(
                new WrittenLog(REFERENCE)
                        .readings(ALKALINITY, 0, 3, same(8, 10))
                        .readings(MAGNESIUM, 0, 10, same(1300, 4)),
                "Parameter|Price a test",
                "alkalinity|0.5",
                "magnesium|1.25",
                "iodine|2");

        assertThat(testing.costOfMonth()).isCloseTo(10.0, within(1e-9));
        assertThat(testing.costs()).extracting(Testing.Cost::tests).containsExactly(10, 4, 0);
    }

    @Test
    void a_kit_is_told_of_before_and_after_its_last_day() {
        Testing testing = testing(
                new WrittenLog(REFERENCE).readings(ALKALINITY, 0, 30, same(8, 2)), // up to 31 March
                "Parameter|Kit expires",
                "alkalinity|2026-03-30",
                "magnesium|2026-05-30",
                "calcium|2026-05-31");

        assertThat(testing.kits()).extracting(Testing.Kit::daysLeft).containsExactly(-1L, 60L, 61L);
        assertThat(UpkeepActions.of(List.of(), List.of(), testing, LocalDate.of(2026, 3, 31)))
                .extracting(a -> a.what() + ", " + a.urgency().words())
                .containsExactly(
                        "Get a new kit for alkalinity, this week", "Get a new kit for magnesium, when it suits");
    }
}
