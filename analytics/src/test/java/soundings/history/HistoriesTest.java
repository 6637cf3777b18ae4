package soundings.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.history.WrittenLog.FIRST;
import static soundings.setup.SmallReference.ALKALINITY;
import static soundings.setup.SmallReference.CALCIUM;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.log.Issue;
import soundings.quantity.Amount;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.setup.SmallReference;

class HistoriesTest {
    private static final Reference REFERENCE = SmallReference.load();

    @Test
    void a_row_copied_whole_is_used_once() {
        History history = log().reading(ALKALINITY, 0, 8.2)
                .beside()
                .reading(CALCIUM, 0, 420)
                .reading(ALKALINITY, 0, 8.2)
                .beside()
                .reading(CALCIUM, 0, 420)
                .history(Setup.EMPTY);

        assertThat(uses(history, ALKALINITY)).containsExactly(Use.USED, Use.DUPLICATE);
        assertThat(uses(history, CALCIUM)).containsExactly(Use.USED, Use.DUPLICATE);
        assertThat(points(history, CALCIUM).get(1).because()).contains("Log!C2");
    }

    @Test
    void two_tests_of_a_day_that_agree_are_two_tests_when_their_rows_differ() {
        History history = log().reading(ALKALINITY, 0, 8.2)
                .beside()
                .reading(CALCIUM, 0, 420)
                .reading(ALKALINITY, 0, 8.2)
                .history(Setup.EMPTY);

        assertThat(uses(history, ALKALINITY)).containsExactly(Use.USED, Use.USED);
    }

    @Test
    void a_result_copied_to_another_sheet_is_used_once() {
        History history = log().reading(ALKALINITY, 0, 8.2)
                .reading(CALCIUM, 0, 400)
                .sheet("Summary")
                .reading(ALKALINITY, 0, 8.2)
                .history(Setup.EMPTY);

        assertThat(uses(history, ALKALINITY)).containsExactly(Use.USED, Use.DUPLICATE);
    }

    @Test
    void what_the_reader_refused_stays_with_its_reason() {
        History history = log().reading(ALKALINITY, 0, new Amount.Exact(8), "struck out")
                .reading(ALKALINITY, 1, 8.1)
                .history(Setup.EMPTY);

        assertThat(points(history, ALKALINITY).get(0).use()).isEqualTo(Use.EXCLUDED);
        assertThat(points(history, ALKALINITY).get(0).because()).isEqualTo("struck out");
    }

    @Test
    void the_report_speaks_of_the_last_month_with_a_reading_up_to_its_last_entry() {
        History history = log().reading(ALKALINITY, 0, 8)
                .rate("A", 3, 10)
                .rate("A", 40, 12)
                .history(Setup.EMPTY);

        assertThat(history.asOf()).isEqualTo(FIRST.plusDays(3).withDayOfMonth(31));
    }

    @Test
    void an_earlier_month_is_reported_without_what_came_later() {
        WrittenLog log = log().readings(ALKALINITY, 0, 10, 8, 8.1, 8.2, 8.3, 8.4);

        History march = Histories.of(
                log.log(),
                Setup.EMPTY,
                REFERENCE,
                new Settings(LocalDate.of(2026, 12, 1), Optional.of(YearMonth.of(2026, 3))));

        assertThat(march.asOf()).isEqualTo(LocalDate.of(2026, 3, 31));
        assertThat(uses(march, ALKALINITY)).containsExactly(Use.USED, Use.USED, Use.USED, Use.USED, Use.EXCLUDED);
    }

    @Test
    void the_last_month_ends_with_its_last_entry() {
        History history =
                log().readings(ALKALINITY, 0, 10, 8, 8.1).rate("A", 12, 3).history(Setup.EMPTY);

        assertThat(history.asOf()).isEqualTo(FIRST.plusDays(12));
    }

    @Test
    void a_rate_repeated_row_by_row_is_one_step_and_a_change_ends_it() {
        History history = log().rate("A", 0, 10)
                .rate("A", 5, 10)
                .rate("a ", 12, 10)
                .rate("A", 20, 12)
                .rate("A", 30, 0)
                .history(Setup.EMPTY);

        DoseCourse course = history.tanks().get(0).doses().get(0);
        assertThat(course.steps())
                .extracting(
                        DoseCourse.Step::from, DoseCourse.Step::until, DoseCourse.Step::mlPerDay, s -> s.at().place())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(FIRST, Optional.of(FIRST.plusDays(20)), 10.0, "Log!CC2"),
                        org.assertj.core.groups.Tuple.tuple(
                                FIRST.plusDays(20), Optional.of(FIRST.plusDays(30)), 12.0, "Log!CC5"),
                        org.assertj.core.groups.Tuple.tuple(FIRST.plusDays(30), Optional.empty(), 0.0, "Log!CC6"));
        assertThat(course.mlPerDayOn(FIRST.plusDays(19))).isEqualTo(10);
        assertThat(course.mlPerDayOn(FIRST.plusDays(20))).isEqualTo(12);
        assertThat(course.mlPerDayOn(FIRST.minusDays(1))).isZero();
    }

    @Test
    void a_rate_written_anew_weeks_later_is_a_step_of_its_own() {
        History history = log().rate("A", 0, 10).rate("A", 30, 10).history(Setup.EMPTY);

        assertThat(history.tanks().get(0).doses().get(0).steps()).hasSize(2);
    }

    @Test
    void two_rates_of_one_day_are_told_and_the_second_counts() {
        History history = log().rate("A", 0, 10).rate("A", 0, 12).history(Setup.EMPTY);

        assertThat(history.tanks().get(0).doses().get(0).mlPerDayOn(FIRST)).isEqualTo(12);
        assertThat(history.issues()).extracting(Issue::kind).contains("twoRatesOneDay");
    }

    @Test
    void an_additive_is_found_by_its_other_names_whatever_the_case() {
        Setup setup =
                setup(additive("Part one", ALKALINITY, 5, "Alk ; kh plus"), additive("Part two", CALCIUM, 37, ""));

        DoseCourse course = log().rate("KH  PLUS", 0, 10)
                .history(setup)
                .tanks()
                .get(0)
                .doses()
                .get(0);

        assertThat(course.name()).isEqualTo("Part one");
        assertThat(course.additive())
                .singleElement()
                .satisfies(a -> assertThat(a.risePerMlInOneLitre()).hasValue(5));
    }

    @Test
    void a_dose_named_after_a_test_is_the_one_additive_that_raises_it_and_that_is_said() {
        Setup setup = setup(additive("Part one", ALKALINITY, 5, ""), additive("Part two", CALCIUM, 37, ""));

        History history = log().rate("alk", 0, 10).history(setup);

        assertThat(history.tanks().get(0).doses().get(0).name()).isEqualTo("Part one");
        assertThat(history.issues()).extracting(Issue::kind).containsExactly("additiveTakenFor");
    }

    @Test
    void a_dose_named_after_a_test_that_two_additives_raise_has_no_strength() {
        Setup setup = setup(additive("Part one", ALKALINITY, 5, ""), additive("Soda", ALKALINITY, 2, ""));

        History history = log().rate("alk", 0, 10).history(setup);

        DoseCourse course = history.tanks().get(0).doses().get(0);
        assertThat(course.additive()).singleElement().satisfies(a -> {
            assertThat(a.parameter()).isEqualTo(ALKALINITY);
            assertThat(a.risePerMlInOneLitre()).isEmpty();
        });
        assertThat(history.issues()).extracting(Issue::kind).containsExactly("additiveUnknown");
    }

    @Test
    void an_additive_nobody_knows_has_no_rows() {
        History history = log().rate("magic", 0, 10).history(Setup.EMPTY);

        assertThat(history.tanks().get(0).doses().get(0).additive()).isEmpty();
        assertThat(history.issues()).extracting(Issue::kind).containsExactly("additiveUnknown");
    }

    @Test
    void a_water_change_has_its_share_and_litres_where_the_volume_is_known() {
        List<Change> changes = log().change(0, 0.1)
                .changeLitres(7, 18)
                .changeLitres(9, 200)
                .history(setup())
                .tanks()
                .get(0)
                .changes();

        assertThat(changes.get(0).litres()).hasValue(9);
        assertThat(changes.get(1).fraction().orElseThrow()).isCloseTo(0.2, within(1e-12));
        assertThat(changes.get(2).fraction()).isEmpty();
    }

    @Test
    void a_water_change_written_twice_counts_once() {
        History history = log().change(0, 0.1).sheet("Changes").change(0, 0.1).history(setup());

        assertThat(history.tanks().get(0).changes()).hasSize(1);
        assertThat(history.issues()).extracting(Issue::kind).containsExactly("writtenTwice");
    }

    @Test
    void equal_doses_by_hand_are_two_on_one_sheet_and_one_copied_on_two() {
        History one = log().oneOff("A", 0, 20).oneOff("A", 0, 20).history(setup());
        History two = log().oneOff("A", 0, 20).sheet("Doses").oneOff("A", 0, 20).history(setup());

        assertThat(one.tanks().get(0).doses().get(0).oneOffs()).hasSize(2);
        assertThat(two.tanks().get(0).doses().get(0).oneOffs()).hasSize(1);
    }

    @Test
    void a_tank_bears_the_name_of_the_setup_however_the_log_spells_it() {
        History history = log().tank(" cube ")
                .reading(ALKALINITY, 0, 8)
                .tank("C1")
                .reading(ALKALINITY, 1, 8)
                .history(setup());

        assertThat(history.tanks()).singleElement().satisfies(t -> {
            assertThat(t.tank()).isEqualTo("Cube");
            assertThat(t.litres()).hasValue(90);
            assertThat(t.series().get(0).points()).hasSize(2);
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void the_order_of_entries_changes_nothing(long seed) {
        WrittenLog log = log().readings(ALKALINITY, 0, 3, 8, 8.1, 82, 8.2, 8.1, 8, 8.1, 8.3, 8.2)
                .readings(CALCIUM, 0, 5, 420, 425, 410, 240, 415, 420, 425)
                .rate("A", 0, 10)
                .rate("A", 9, 12)
                .change(3, 0.1)
                .oneOff("A", 4, 5);
        Settings settings = new Settings(FIRST.plusDays(300), Optional.empty());

        History sorted = Histories.of(log.log(), setup(), REFERENCE, settings);
        History shuffled = Histories.of(log.shuffled(seed), setup(), REFERENCE, settings);

        assertThat(shuffled).isEqualTo(sorted);
        assertThat(uses(sorted, ALKALINITY)).contains(Use.OUTLIER);
    }

    private static WrittenLog log() {
        return new WrittenLog(REFERENCE);
    }

    private static List<Point> points(History history, Parameter parameter) {
        return history.tanks().get(0).findSeries(parameter).orElseThrow().points();
    }

    private static List<Use> uses(History history, Parameter parameter) {
        return points(history, parameter).stream().map(Point::use).toList();
    }

    private static Setup.Additive additive(String name, Parameter parameter, double rise, String writtenAs) {
        List<String> names = writtenAs.isEmpty() ? List.of() : List.of(writtenAs.split("\\s*;\\s*"));
        return new Setup.Additive(
                name, names, parameter, OptionalDouble.of(rise), "", OptionalDouble.empty(), "Additives!D2");
    }

    private static Setup setup(Setup.Additive... additives) {
        return new Setup(
                List.of(new Setup.Tank("Cube", OptionalDouble.of(90), List.of("C1"), Optional.empty(), "Tanks!B2")),
                List.of(),
                List.of(),
                List.of(additives),
                List.of(),
                List.of(),
                List.of(),
                java.util.Map.of(),
                List.of());
    }
}
