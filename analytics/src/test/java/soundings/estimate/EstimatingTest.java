package soundings.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.chemistry.Reference;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.history.Use;
import soundings.log.AsWritten;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;
import soundings.sheet.CellRef;

/** Made-up tanks whose truth is known. */
class EstimatingTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final AsWritten AT = new AsWritten("Log", new CellRef(0, 0), "");
    private static final Reference REFERENCE = ReferenceTables.load();

    private static Reading reading(int day, Amount amount) {
        return Samples.reading(Samples.ALKALINITY, FIRST.plusDays(day), amount);
    }

    /** A test every three days of a level that falls by {@code fall} a day, scatter 0.1, written to 0.1. */
    private static List<Reading> falling(double from, double fall, int days, long seed) {
        Random random = new Random(seed);
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d <= days; d += 3) {
            double seen = from - fall * d + 0.1 * random.nextGaussian();
            readings.add(reading(d, new Amount.Exact(Math.rint(seen * 10) / 10)));
        }
        return readings;
    }

    private static History history(List<Reading> readings, List<DoseCourse> doses, List<Change> changes) {
        List<Point> points =
                readings.stream().map(r -> new Point(r, Use.USED, "")).toList();
        List<Series> series = List.of(Series.asWritten(Samples.plain(Samples.ALKALINITY), points));
        TankHistory tank = new TankHistory("Reef A", OptionalDouble.of(100), series, doses, changes, List.of());
        LocalDate last =
                readings.stream().map(Reading::date).max(LocalDate::compareTo).orElse(FIRST);
        return new History(last, List.of(tank), Setup.EMPTY, List.of());
    }

    /** Raises 100 L by 0.05 dKH a mL where the strength is known. */
    private static DoseCourse dosed(double mlPerDay, OptionalDouble strength) {
        Setup.Additive additive =
                new Setup.Additive("Part A", List.of(), Samples.ALKALINITY, strength, "", OptionalDouble.empty(), "");
        DoseCourse.Step step = new DoseCourse.Step(FIRST, Optional.empty(), mlPerDay, AT);
        return new DoseCourse("Part A", List.of(additive), List.of(step), List.of());
    }

    private static Outcome outcome(History history) {
        return Estimating.of(history, REFERENCE).outcomes().get(0);
    }

    private static Estimate estimate(History history) {
        return outcome(history).match(e -> e, n -> {
            throw new AssertionError(n.why());
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void the_use_is_what_the_dose_brings_in_and_the_level_loses(long seed) {
        Estimate e = estimate(history(falling(9, 0.03, 60, seed), List.of(dosed(20, OptionalDouble.of(5))), List.of()));

        Interval use = e.use().orElseThrow();
        assertThat(e.dosedPerDay()).isCloseTo(1.0, within(1e-12));
        assertThat(use.mid()).isCloseTo(1.03, within(0.02));
        assertThat(use.low()).isLessThan(1.03);
        assertThat(use.high()).isGreaterThan(1.03);
        assertThat(e.drift().mid()).isCloseTo(1.0 - use.mid(), within(1e-9));
    }

    @Test
    void a_mistyped_reading_is_set_aside_and_named_and_moves_nothing() {
        List<Reading> readings = falling(9, 0.03, 60, 1);
        Estimate clean = estimate(history(readings, List.of(), List.of()));
        Reading mistyped = reading(31, new Amount.Exact(80));
        readings.add(mistyped);
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(e.setAside()).extracting(Estimate.Doubt::reading).containsExactly(mistyped);
        assertThat(e.use().orElseThrow().mid())
                .isCloseTo(clean.use().orElseThrow().mid(), within(0.003));
    }

    @Test
    void a_use_that_took_a_step_before_the_last_two_tests_is_said_and_the_new_one_lies_in_the_interval() {
        List<Reading> readings = new ArrayList<>(falling(12, 0.05, 60, 3));
        Estimate before = estimate(history(readings, List.of(), List.of()));
        double last = readings.get(readings.size() - 1).amount().about();
        readings.add(reading(64, new Amount.Exact(last - 1.2)));
        readings.add(reading(67, new Amount.Exact(last - 2.1)));
        Estimate after = estimate(history(readings, List.of(), List.of()));

        assertThat(before.changed()).isEmpty();
        assertThat(after.changed()).hasValueSatisfying(c -> {
            assertThat(c.after()).isBetween(FIRST.plusDays(55), FIRST.plusDays(64));
            assertThat(c.probability()).isGreaterThan(0.5);
        });
        assertThat(after.use()).hasValueSatisfying(u -> assertThat(u.high()).isGreaterThan(0.28));
        assertThat(after.caveats()).anyMatch(c -> c.contains("not agree with the use before"));
    }

    @Test
    void a_lasting_jump_is_a_change_nobody_wrote_down_and_not_a_row_of_mistypings() {
        List<Reading> readings = falling(7, 0.0, 30, 1);
        falling(9, 0.0, 30, 2)
                .forEach(r -> readings.add(
                        reading((int) FIRST.until(r.date(), java.time.temporal.ChronoUnit.DAYS) + 33, r.amount())));
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(e.setAside()).isEmpty();
        assertThat(e.level().mid()).isCloseTo(9, within(0.1));
        assertThat(e.caveats()).anyMatch(c -> c.contains("no dose or change on record"));
    }

    @Test
    void with_a_dose_of_unknown_strength_only_the_drift_is_told() {
        Estimate e = estimate(history(falling(9, 0.03, 60, 1), List.of(dosed(20, OptionalDouble.empty())), List.of()));

        assertThat(e.use()).isEmpty();
        assertThat(e.drift().mid()).isCloseTo(-0.03, within(0.01));
        assertThat(e.caveats()).anyMatch(c -> c.contains("strength"));
    }

    @Test
    void the_order_of_the_readings_does_not_matter() {
        List<Reading> readings = falling(9, 0.03, 60, 3);
        Estimate forward = estimate(history(readings, List.of(), List.of()));
        Collections.reverse(readings);

        assertThat(estimate(history(readings, List.of(), List.of()))).isEqualTo(forward);
    }

    @Test
    void a_water_change_toward_the_fresh_mix_is_not_taken_for_use() {
        List<Reading> readings = new ArrayList<>();
        double level = 7;
        List<Change> changes = new ArrayList<>();
        for (int d = 0; d <= 60; d += 3) {
            readings.add(reading(d, new Amount.Exact(Math.rint(level * 100) / 100)));
            if (d % 12 == 6) {
                changes.add(new Change(FIRST.plusDays(d), OptionalDouble.of(0.2), OptionalDouble.empty(), AT));
                level += 0.2 * (8 - level);
            }
        }
        Setup.FreshMix mix = new Setup.FreshMix("", Samples.ALKALINITY, 8, "");
        History bare = history(readings, List.of(), changes);
        Setup setup = new Setup(
                List.of(),
                List.of(mix),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                java.util.Map.of(),
                List.of());
        Estimate e = estimate(new History(bare.asOf(), bare.tanks(), setup, List.of()));

        assertThat(e.use().orElseThrow().low()).isLessThan(0);
        assertThat(e.use().orElseThrow().high()).isPositive();
        assertThat(e.use().orElseThrow().mid()).isCloseTo(0, within(0.01));
    }

    @Test
    void a_level_at_zero_stops_telling_about_the_use() {
        List<Reading> readings = falling(3, 0.1, 27, 1);
        Estimate before = estimate(history(readings, List.of(), List.of()));
        for (int d = 33; d <= 90; d += 3) {
            readings.add(reading(d, new Amount.Exact(0)));
        }
        Estimate after = estimate(history(readings, List.of(), List.of()));

        assertThat(after.use()).isEmpty();
        assertThat(width(after.drift())).isGreaterThan(width(before.drift()));
        assertThat(after.drift().low()).isLessThan(-0.1);
        assertThat(after.level().low()).isNotNegative();
    }

    /** A tank run in: nitrite climbs and falls as steeply as no use of a stocked tank changes; each test is borne out by its neighbours. */
    @Test
    void the_course_of_a_tank_that_is_run_in_is_no_row_of_mistypings() {
        double[] course = {0, 0, 0, 0.5, 2, 4.5, 7, 8.5, 9, 9, 8.8, 8.5, 7, 4.5, 2, 0.5, 0, 0};
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d < course.length; d++) {
            readings.add(reading(d, new Amount.Exact(course[d])));
        }

        assertThat(estimate(history(readings, List.of(), List.of())).setAside()).isEmpty();
    }

    private static double width(Interval interval) {
        return interval.high() - interval.low();
    }

    @Test
    void results_below_the_first_mark_hold_the_level_down_without_being_numbers() {
        List<Reading> readings = falling(4, 0.1, 30, 1);
        readings.add(reading(33, new Amount.Below(1)));
        readings.add(reading(36, new Amount.Below(1)));
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(e.level().high()).isLessThan(1.1);
        assertThat(e.level().low()).isLessThan(0.8);
    }

    @Test
    void three_readings_are_not_enough_and_the_refusal_says_so() {
        Outcome outcome = outcome(history(falling(8, 0, 6, 1), List.of(), List.of()));

        String why = outcome.match(e -> "estimated", NotEnough::why);
        assertThat(why).isEqualTo("only 3 usable readings");
    }

    @Test
    void readings_of_one_busy_day_are_not_enough() {
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d < 5; d++) {
            readings.add(reading(d, new Amount.Exact(8)));
        }

        assertThat(outcome(history(readings, List.of(), List.of())).match(e -> "", NotEnough::why))
                .contains("span only 4 days");
    }

    @Test
    void the_fan_ahead_widens_and_follows_the_drift() {
        Estimate e = estimate(history(falling(9, 0.03, 60, 1), List.of(), List.of()));

        assertThat(e.ahead()).hasSize(30);
        Interval first = e.ahead().get(0).level();
        Interval last = e.ahead().get(29).level();
        assertThat(width(last)).isGreaterThan(width(first));
        assertThat(last.mid()).isCloseTo(e.level().mid() + 30 * e.drift().mid(), within(0.05));
        assertThat(e.aheadWith(0.03).get(29).level().mid()).isCloseTo(last.mid() + 0.9, within(1e-9));
    }

    /** Natural seawater as salty as S = 35 holds 2.3 mmol/kg of alkalinity, some 6.6 dKH: below this tank's 8. */
    @Test
    void usual_water_changes_go_on_in_the_days_ahead() {
        List<Change> changes = new ArrayList<>();
        for (int d = 10; d <= 80; d += 14) {
            changes.add(new Change(FIRST.plusDays(d), OptionalDouble.of(0.2), OptionalDouble.empty(), AT));
        }
        List<Reading> readings = falling(8, 0, 85, 1);
        Estimate with = estimate(history(readings, List.of(), changes));
        Estimate without = estimate(history(readings, List.of(), changes.subList(0, 2)));

        assertThat(with.course().usualChange()).hasValueSatisfying(c -> {
            assertThat(c.everyDays()).isEqualTo(14);
            assertThat(c.share()).isCloseTo(0.2, within(1e-9));
            assertThat(c.next()).isEqualTo(FIRST.plusDays(94));
        });
        assertThat(without.course().usualChange()).isEmpty();
        assertThat(with.caveats()).anyMatch(c -> c.contains("like natural seawater as salty as the tank, 6.6"));
        // due on days 94 and 108: of 0.03 a day more, what the first 10 and the next 14 brought is thinned by a fifth
        // each time
        double more = ((0.03 * 10 * 0.8) + 0.03 * 14) * 0.8 + 0.03 * 6;
        double last = with.ahead().get(29).level().mid();
        assertThat(with.aheadWith(0.03).get(29).level().mid()).isCloseTo(last + more, within(1e-9));
    }

    @Test
    void what_is_used_up_stays_at_zero_and_is_known_no_better_than_the_test_tells() {
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d <= 40; d += 2) {
            readings.add(reading(d, new Amount.Exact(Math.max(0, 2 - 0.1 * d))));
        }
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(e.level().mid()).isCloseTo(0, within(0.05));
        assertThat(e.level().high()).isGreaterThanOrEqualTo(e.fit().kitStep() / 2);
        assertThat(e.driftOver(30).low()).isGreaterThanOrEqualTo(-e.level().high());
        assertThat(e.ahead()).allSatisfy(d -> assertThat(d.level().low()).isNotNegative());
    }

    /** Nothing is a multiple of any step: what no test ever found is known as well as the kit tells, no worse. */
    @Test
    void what_was_never_found_is_not_taken_for_a_result_in_huge_steps() {
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d <= 24; d++) {
            readings.add(reading(d, new Amount.Exact(0)));
        }
        assertThat(Steps.of(readings)).isZero();
        assertThat(estimate(history(readings, List.of(), List.of())).level().high())
                .isLessThan(1);

        readings.add(reading(25, new Amount.Exact(0.25)));
        assertThat(Steps.of(readings)).isLessThanOrEqualTo(0.25);
    }

    @Test
    void a_series_without_any_scatter_is_known_no_finer_than_it_is_written() {
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d <= 60; d += 3) {
            readings.add(reading(d, new Amount.Exact(8)));
        }
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(width(e.level()) / 2).isGreaterThan(0.5 * Math.pow(10, -Samples.ALKALINITY.decimals()));
        assertThat(width(e.drift())).isGreaterThan(1e-5);
    }

    @Test
    void a_laboratory_and_a_home_kit_are_set_against_each_other() {
        List<Reading> readings = falling(8.5, 0.0, 90, 1);
        for (int d = 1; d <= 90; d += 20) {
            readings.add(Samples.reading(
                    Samples.ALKALINITY, FIRST.plusDays(d), new Amount.Exact(8 + 0.02 * (d % 3)), "laboratory"));
        }
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(e.sources()).extracting(Estimate.SourceBias::name).containsExactly("laboratory", "");
        assertThat(e.sources().get(1).bias().mid()).isCloseTo(0.5, within(0.1));
        assertThat(e.caveats())
                .anyMatch(c ->
                        c.matches("tests by no named kit read 0\\.[45]\\d dKH higher than those by laboratory .*"));
        assertThat(e.level().mid()).isCloseTo(8.0, within(0.15));
    }

    @Test
    void more_tests_narrow_the_drift_until_it_is_told() {
        Estimate e = estimate(history(falling(8, 0.01, 21, 2), List.of(), List.of()));
        double half = width(e.drift()) / 2;
        TestsNeeded needed = TestsNeeded.until(e, later -> width(later.drift()) / 2 <= half * 0.85)
                .orElseThrow();

        assertThat(needed.tests()).isPositive();
        assertThat(needed.on())
                .hasSize(needed.tests())
                .first()
                .isEqualTo(e.asOf().plusDays(3));
        assertThat(TestsNeeded.until(e, later -> width(later.drift()) < 1e-9)).isEmpty();
    }

    @Test
    void a_kit_in_steps_of_a_half_cannot_judge_a_range_of_one() {
        List<Reading> readings = new ArrayList<>();
        for (int d = 0; d < 60; d += 3) {
            readings.add(reading(d, new Amount.Exact(8 + 0.5 * (d % 2))));
        }
        Estimate e = estimate(history(readings, List.of(), List.of()));

        assertThat(KitStep.tooCoarse(e, 8, 9)).isPresent();
        assertThat(KitStep.tooCoarse(e, 4, 12)).isEmpty();
    }

    @Test
    void a_change_of_use_at_an_event_is_seen_and_none_is_not_invented() {
        List<Reading> readings = falling(9, 0.02, 45, 1);
        falling(9 - 0.02 * 45, 0.08, 42, 2)
                .forEach(r -> readings.add(
                        reading((int) FIRST.until(r.date(), java.time.temporal.ChronoUnit.DAYS) + 45, r.amount())));
        TankHistory changed = history(readings.subList(0, readings.size()), List.of(), List.of())
                .tanks()
                .get(0);
        History both = history(readings, List.of(), List.of());
        EventEffects.EventEffect seen =
                EventEffects.of(both, REFERENCE, changed, Samples.ALKALINITY, FIRST.plusDays(45));
        History same = history(falling(9, 0.03, 87, 3), List.of(), List.of());
        EventEffects.EventEffect none =
                EventEffects.of(same, REFERENCE, same.tanks().get(0), Samples.ALKALINITY, FIRST.plusDays(45));

        assertThat(seen.step().orElseThrow().mid()).isCloseTo(0.06, within(0.03));
        assertThat(none.clear()).isFalse();
        assertThat(none.step().orElseThrow().low()).isNegative();
    }
}
