package soundings.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.advice.Given.additive;
import static soundings.advice.Given.estimate;
import static soundings.advice.Given.log;
import static soundings.advice.Given.only;
import static soundings.setup.SmallReference.ALKALINITY;
import static soundings.setup.SmallReference.CALCIUM;
import static soundings.setup.SmallReference.IODINE;
import static soundings.setup.SmallReference.SALINITY;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import soundings.advice.Recommendation.Reason;
import soundings.advice.Recommendation.WorkingLine;
import soundings.estimate.Estimate;
import soundings.estimate.NotEnough;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.quantity.Amount;
import soundings.quantity.Interval;
import soundings.setup.Setup;

/** Worked by hand from the sum dose = use * litres / strength; a sum of units, no outside figure needed. */
class DosingTest {
    private static final Setup.Additive SODA = additive("Soda", ALKALINITY, 5);
    private static final Setup NINETY_LITRES = Given.setup(OptionalDouble.of(90), List.of(SODA));

    @Test
    void the_dose_that_keeps_the_level_is_use_times_litres_over_strength() {
        History history = dosedLog().history(NINETY_LITRES);

        Recommendation r = only(Given.advice(history, use(history, 1.2, 0.05, 8.0, 0.5)), ALKALINITY);

        // 1.2 dKH a day * 90 L / 5 dKH L/mL = 21.6 mL a day; 90 % ends 1.2 +- 1.6449 * 0.05
        assertThat(r.proposedMlPerDay()).hasValueSatisfying(i -> {
            assertThat(i.mid()).isCloseTo(21.6, within(1e-9));
            assertThat(i.low()).isCloseTo(20.1196, within(1e-3));
            assertThat(i.high()).isCloseTo(23.0804, within(1e-3));
        });
        assertThat(r.presentMlPerDay()).hasValue(9);
        assertThat(r.restsOn()).contains("Log!CC2");
        assertThat(r.withheld()).isEmpty();
    }

    @Test
    void a_volume_and_a_strength_not_quite_known_widen_what_is_changed_and_not_what_is_kept() {
        Setup setup = new Setup(
                NINETY_LITRES.tanks(),
                List.of(),
                List.of(),
                NINETY_LITRES.additives(),
                List.of(),
                List.of(),
                List.of(),
                Map.of("volume unsure", "6 %", "strength unsure", "8"),
                List.of());
        History history = dosedLog().history(setup);

        Recommendation changed = only(Given.advice(history, use(history, 1.2, 0.05, 8.0, 0.5)), ALKALINITY);

        // 21.6 mL, 12.6 more than the present 9: 20.1196 - 10 % of 12.6, 23.0804 + 10 % of 12.6
        assertThat(changed.proposedMlPerDay()).hasValueSatisfying(i -> {
            assertThat(i.mid()).isCloseTo(21.6, within(1e-9));
            assertThat(i.low()).isCloseTo(18.8596, within(1e-3));
            assertThat(i.high()).isCloseTo(24.3404, within(1e-3));
        });
    }

    @Test
    void a_present_dose_that_does_well_is_left_alone() {
        History history = dosedLog().history(NINETY_LITRES);

        Recommendation r = only(Given.advice(history, use(history, 0.5, 0.02, 8.0, 0.5)), ALKALINITY);

        assertThat(r.proposedMlPerDay()).isEmpty();
        assertThat(r.withheld()).isEmpty();
        assertThat(r.why()).anyMatch(w -> w.contains("no other dose"));
    }

    @Test
    void a_dose_certainly_wrong_by_a_hair_is_left_alone() {
        History history = dosedLog().history(NINETY_LITRES);

        Recommendation r = only(Given.advice(history, use(history, 0.51, 0.001, 8.0, 0.5)), ALKALINITY);

        assertThat(r.proposedMlPerDay()).isEmpty();
    }

    @Test
    void a_dose_called_wrong_is_left_alone_where_the_difference_does_not_matter() {
        History history = dosedLog().history(NINETY_LITRES);

        Advice advice = Given.advice(history, use(history, 0.505, 0.001, 9.4, 0.5));

        // 0.005 dKH a day are 0.15 in 30 days, of a range 2 wide; with either dose the level stays above it
        assertThat(Given.judged(advice, ALKALINITY).verdict()).isEqualTo(Verdict.OVER_DOSED);
        assertThat(only(advice, ALKALINITY).proposedMlPerDay()).isEmpty();
    }

    @Test
    void a_level_out_of_its_range_is_not_said_to_leave_it() {
        History history = dosedLog().history(NINETY_LITRES);

        Recommendation in = only(Given.advice(history, use(history, 0.55, 0.02, 8.0, 0.5)), ALKALINITY);
        Recommendation out = only(Given.advice(history, use(history, 0.55, 0.02, 6.0, 0.5)), ALKALINITY);

        assertThat(in.why()).anyMatch(w -> w.startsWith("if nothing changes, it is out of its range within 30 days"));
        assertThat(out.why())
                .noneMatch(w -> w.contains("within 30 days"))
                .anyMatch(w -> w.startsWith("it is out of its range now, and if nothing changes still is in 30 days"));
    }

    @Test
    void a_pump_that_gives_less_than_it_is_set_to_must_be_set_higher() {
        Setup.Pump pump = new Setup.Pump(
                "",
                "Soda",
                OptionalDouble.of(6),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.of(100),
                OptionalDouble.of(80),
                "Pumps!D2");
        History history = dosedLog().history(Given.setup(OptionalDouble.of(90), List.of(SODA), List.of(pump)));

        Recommendation r = only(Given.advice(history, use(history, 1.2, 0.05, 8.0, 0.4)), ALKALINITY);

        // 21.6 mL to be given / 0.8 given of each mL set = 27 mL
        assertThat(r.proposedMlPerDay().orElseThrow().mid()).isCloseTo(27, within(1e-9));
    }

    @Test
    void what_another_additive_brings_need_not_be_dosed() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(SODA, additive("Limewater", ALKALINITY, 0.1)));
        History history = dosedLog().rate("Limewater", 0, 270).history(setup);

        Recommendation r = only(Given.advice(history, use(history, 1.2, 0.05, 8.0, 0.8)), ALKALINITY);

        // Limewater brings 270 * 0.1 / 90 = 0.3 dKH a day; (1.2 - 0.3) * 90 / 5 = 16.2 mL
        assertThat(r.additive()).isEqualTo("Soda");
        assertThat(r.proposedMlPerDay().orElseThrow().mid()).isCloseTo(16.2, within(1e-9));
    }

    @Test
    void a_level_below_its_range_is_raised_to_the_middle_within_the_limit_of_a_day() {
        Setup.Additive careful = new Setup.Additive(
                "Soda", List.of(), ALKALINITY, OptionalDouble.of(5), "", OptionalDouble.of(0.5), "Additives!D2");
        History history = dosedLog().history(Given.setup(OptionalDouble.of(90), List.of(careful)));

        Recommendation r = only(Given.advice(history, use(history, 0.5, 0.02, 5.8, 0.5)), ALKALINITY);

        // range 7 to 9, middle 8: 2.2 dKH * 90 / 5 = 39.6 mL; 2.2 / 0.5 = 4.4, so 5 days
        assertThat(r.correction()).hasValueSatisfying(c -> {
            assertThat(c.ml()).isCloseTo(39.6, within(1e-9));
            assertThat(c.days()).isEqualTo(5);
        });
        assertThat(r.outlook()).hasValueSatisfying(o -> {
            assertThat(o.leavesUnchanged()).isGreaterThan(0.99);
            assertThat(o.leavesFollowed()).isLessThan(0.2);
            assertThat(o.followed().get(29).level().mid()).isCloseTo(8, within(1e-6));
        });
    }

    @Test
    void an_overdose_of_a_trace_is_named_with_the_days_of_waiting() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(additive("Iodide", IODINE, 0.1)));
        History history = log().readings(IODINE, 0, 3, .07, .075, .08, .09, .095, .1, .105, .11, .115, .12)
                .rate("Iodide", 0, 3)
                .history(setup);
        Estimate estimate = estimate(history.asOf(), IODINE, 0.12, 0.003, 0.001, 0.0002, 3 * 0.1 / 90);

        Advice advice = Given.advice(history, estimate);

        Recommendation r = only(advice, IODINE);
        assertThat(Given.judged(advice, IODINE).verdict()).isEqualTo(Verdict.OVER_DOSED);
        // 0.001 mg/L a day * 90 L / 0.1 = 0.9 mL; (0.12 - 0.06) / 0.001 = 60 days
        assertThat(r.proposedMlPerDay().orElseThrow().mid()).isCloseTo(0.9, within(1e-9));
        assertThat(r.correction()).isEmpty();
        assertThat(value(r, "pause")).isCloseTo(60, within(1e-6));
        assertThat(r.pause()).hasValueSatisfying(p -> {
            assertThat(p.mlPerDay()).isZero();
            assertThat(p.wholeDays()).isEqualTo(60);
            assertThat(p.testIn()).isEqualTo(14);
        });
        assertThat(advice.actions())
                .anyMatch(a -> a.what().equals("Give no Iodide until iodine tests at 0.06 mg/L")
                        && a.steps().get(0).startsWith("It falls by about 0.0010 mg/L a day and is there about ")
                        && a.steps().get(0).contains(", in 60 days (")
                        && a.caution().contains("It should not fall by more than 0.0060 mg/L a day")
                        && a.steps().get(1).equals("From then on 0.900 mL a day in place of 3.00"));
        // 30 days at 0.001 mg/L a day from 0.12
        assertThat(r.outlook().orElseThrow().followed().get(29).level().mid()).isCloseTo(0.09, within(1e-9));
    }

    @Test
    void a_level_that_would_fall_too_fast_without_a_dose_is_let_down_by_a_part_of_it() {
        History history = dosedLog().history(NINETY_LITRES);

        Advice advice = Given.advice(history, use(history, 1.2, 0.02, 10, 0.5));
        Recommendation r = only(advice, ALKALINITY);

        // at most 1 dKH a day: (1.2 - 1) * 90 / 5 = 3.6 mL meanwhile, (10 - 8) / 1 = 2 days; then 1.2 * 90 / 5 = 21.6
        assertThat(r.pause()).hasValueSatisfying(p -> {
            assertThat(p.mlPerDay()).isCloseTo(3.6, within(1e-9));
            assertThat(p.days().mid()).isCloseTo(2, within(1e-9));
            assertThat(p.fallPerDay()).isEqualTo(1);
        });
        assertThat(advice.actions()).anySatisfy(a -> {
            assertThat(a.steps().get(0)).startsWith("It falls by about 1.0 dKH a day");
            assertThat(a.caution())
                    .startsWith("It should not fall by more than 1.0 dKH a day")
                    .contains("animals");
        });
        assertThat(r.outlook().orElseThrow().followed().get(29).level().mid()).isCloseTo(8, within(1e-6));
    }

    @Test
    void a_level_that_the_tank_may_not_use_up_is_not_waited_for() {
        History history = dosedLog().history(NINETY_LITRES);

        Recommendation r = only(Given.advice(history, use(history, 0.02, 0.05, 10, 0.5)), ALKALINITY);

        assertThat(r.pause()).isEmpty();
        assertThat(r.why()).anyMatch(w -> w.contains("water changes bring it down"));
    }

    @Test
    void a_dose_that_may_do_waits_for_the_tests_that_tell_and_the_verdict_says_the_same() {
        History history = dosedLog().history(NINETY_LITRES);

        Advice advice = Given.advice(history, use(history, 0.52, 0.02, 7.5, 0.5));
        Recommendation r = only(advice, ALKALINITY);

        assertThat(Given.judged(advice, ALKALINITY).verdict()).isEqualTo(Verdict.CANNOT_TELL);
        assertThat(r.isChange()).isFalse();
        assertThat(r.why()).anyMatch(w -> w.matches("no other dose is proposed yet: .*; test it on 2026-.*"));
        assertThat(advice.actions())
                .singleElement()
                .satisfies(a -> assertThat(a.what()).startsWith("Test alkalinity "));
    }

    @Test
    void a_dose_short_of_the_use_is_left_alone_where_water_changes_make_up_for_it() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(additive("Lime", CALCIUM, 37)));
        History history = log().readings(CALCIUM, 0, 3, 425, 424, 425, 424, 425, 424, 425, 424, 425)
                .rate("Lime", 0, 2)
                .history(setup);
        Estimate falling = estimate(history.asOf(), CALCIUM, 425, 2, 1.0, 0.05, 2 * 37.0 / 90);
        List<Estimate.Day> held = falling.ahead().stream()
                .map(d -> new Estimate.Day(d.date(), Interval.normal(425, 3)))
                .toList();
        Estimate holding = new Estimate(
                falling.basis(),
                falling.figures(),
                new Estimate.Course(List.of(), held, Optional.empty()),
                falling.fit());

        Advice advice = Given.advice(history, holding);

        assertThat(Given.judged(advice, CALCIUM).verdict()).isEqualTo(Verdict.STEADY);
        assertThat(only(advice, CALCIUM).proposedMlPerDay()).isEmpty();
        assertThat(only(advice, CALCIUM).why()).anyMatch(w -> w.contains("made up for by the usual water changes"));
    }

    @Test
    void a_dose_a_tenth_off_for_certain_is_mended_even_where_the_level_would_hold_out_the_month() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(additive("Lime", CALCIUM, 37)));
        History history = log().readings(CALCIUM, 0, 3, 425, 424, 425, 424, 423, 424, 423, 422, 423)
                .rate("Lime", 0, 2)
                .history(setup);
        double dosed = 2 * 37.0 / 90;

        Advice farAdvice = Given.advice(history, estimate(history.asOf(), CALCIUM, 425, 2, 1.0, 0.05, dosed));
        Recommendation far = only(farAdvice, CALCIUM);
        Recommendation near =
                only(Given.advice(history, estimate(history.asOf(), CALCIUM, 425, 2, 0.87, 0.01, dosed)), CALCIUM);

        // 1.0 * 90 / 37 = 2.43 mL in place of 2: 18 % more; 0.87 * 90 / 37 = 2.116 mL: 5 %
        assertThat(Given.judged(farAdvice, CALCIUM).verdict()).isEqualTo(Verdict.UNDER_DOSED);
        assertThat(far.proposedMlPerDay().orElseThrow().mid()).isCloseTo(2.4324, within(1e-4));
        assertThat(near.proposedMlPerDay()).isEmpty();
        assertThat(near.why()).anyMatch(w -> w.contains("5 % is too little to matter"));
    }

    @Test
    void every_formula_recomputes_to_its_value_and_names_only_lines_above_it() {
        History history = dosedLog().history(NINETY_LITRES);
        Recommendation r = only(Given.advice(history, use(history, 1.2, 0.05, 5.8, 0.5)), ALKALINITY);

        Map<String, Double> above = new HashMap<>();
        for (WorkingLine line : r.working()) {
            assertThat(line.id()).matches("[a-z][a-z0-9_]*");
            if (line.formula().isEmpty()) {
                assertThat(line.from() + line.label()).isNotBlank();
            } else {
                assertThat(line.formula()).matches("[a-z0-9_+\\-*/(). ]+");
                assertThat(Arithmetic.value(line.formula(), above)).isCloseTo(line.value(), within(1e-12));
            }
            assertThat(above.put(line.id(), line.value())).isNull();
        }
        assertThat(above).containsKeys("dose", "correction", "correction_a_day");
        assertThat(value(r, "dose"))
                .isEqualTo(r.proposedMlPerDay().orElseThrow().mid());
    }

    @Test
    void each_refusal_says_what_would_lift_it() {
        History noVolume = dosedLog().history(Given.setup(OptionalDouble.empty(), List.of(SODA)));
        History noStrength =
                dosedLog().history(Given.setup(OptionalDouble.of(90), List.of(additive("Soda", ALKALINITY, 0))));
        History noTest =
                log().readings(CALCIUM, 0, 3, 420, 421).rate("Soda", 0, 9).history(NINETY_LITRES);
        History old = dosedLog().readings(CALCIUM, 60, 1, 420).history(NINETY_LITRES);
        History good = dosedLog().history(NINETY_LITRES);

        assertThat(refused(noVolume, use(noVolume, 1.2, .05, 8, .5))).isEqualTo(Reason.VOLUME_UNKNOWN);
        assertThat(refused(noStrength, use(noStrength, 1.2, .05, 8, .5))).isEqualTo(Reason.STRENGTH_UNKNOWN);
        assertThat(refused(noTest)).isEqualTo(Reason.NOT_TESTED);
        assertThat(refused(old, use(old, 1.2, .05, 8, .5))).isEqualTo(Reason.READINGS_TOO_OLD);
        assertThat(refused(good, new NotEnough("Cube", ALKALINITY, 2, 3, "only 2", "3 more")))
                .isEqualTo(Reason.TOO_FEW_READINGS);
    }

    @Test
    void a_recipe_that_was_written_and_cannot_be_read_is_not_called_missing() {
        Setup.Additive soda = new Setup.Additive(
                "Soda",
                List.of(),
                ALKALINITY,
                OptionalDouble.empty(),
                "washing powder 5 spoons",
                OptionalDouble.empty(),
                "Additives!H2");
        History history = dosedLog().history(Given.setup(OptionalDouble.of(90), List.of(soda)));
        Recommendation recommendation = only(Given.advice(history, use(history, 1.2, .05, 8, .5)), ALKALINITY);
        Recommendation.Withheld withheld = recommendation.withheld().orElseThrow();

        assertThat(withheld.reason()).isEqualTo(Reason.RECIPE_UNREAD);
        assertThat(withheld.message())
                .contains("the recipe \"washing powder 5 spoons\" of Soda could not be read: ")
                .contains("weight and volume are missing");
        assertThat(withheld.wouldLift()).contains("Additives!H2");
    }

    @Test
    void an_additive_that_may_have_taken_anothers_place_is_asked_about_until_either_is_written() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(SODA, additive("Limewater", ALKALINITY, 0.1)));
        WrittenLog log = dosedLog().rate("Limewater", 25, 270, "soda is empty, now limewater 270 ml/d");
        History history = log.history(setup);

        Recommendation.Withheld withheld = only(Given.advice(history, use(history, 1.2, 0.05, 8.0, 0.8)), ALKALINITY)
                .withheld()
                .orElseThrow();
        assertThat(withheld.reason()).isEqualTo(Reason.TWO_ADDITIVES);
        assertThat(withheld.wouldLift()).contains("If Soda was stopped on " + WrittenLog.FIRST.plusDays(25));

        History both = log.rate("Soda", 25, 9).history(setup);
        assertThat(only(Given.advice(both, use(both, 1.2, 0.05, 8.0, 0.8)), ALKALINITY)
                        .withheld())
                .isEmpty();
    }

    @Test
    void no_ion_is_dosed_while_the_salinity_is_off() {
        WrittenLog log = dosedLog().readings(SALINITY, 0, 5, 30, 30, 30, 30, 30, 30);
        History history = log.history(NINETY_LITRES);

        Advice advice = Given.advice(
                history, use(history, 1.2, 0.05, 8, 0.5), estimate(history.asOf(), SALINITY, 30, 0.3, 0, 0.001, 0));

        assertThat(only(advice, ALKALINITY).withheld().orElseThrow().reason()).isEqualTo(Reason.SALINITY_OFF);
    }

    @Test
    void readings_of_which_half_were_set_aside_are_not_dosed_by() {
        History history = dosedLog().readings(ALKALINITY, 31, 1, 80, 81, 82).history(NINETY_LITRES);

        assertThat(refused(history, use(history, 1.2, 0.05, 8, 0.5))).isEqualTo(Reason.CONFLICTING_READINGS);
    }

    @Test
    void a_model_that_failed_its_check_and_is_contradicted_is_not_dosed_by() {
        History history = dosedLog().history(NINETY_LITRES);
        Estimate e = use(history, 1.2, 0.05, 8, 0.5);
        Estimate doubted = new Estimate(
                e.basis(),
                new Estimate.Figures(
                        e.level(), e.use(), e.drift(), e.dosedPerDay(), Optional.of(Interval.normal(0.3, 0.05))),
                e.course(),
                new Estimate.Fit(0.1, 0.1, 0.01, 0.001, 0.1, 0.05, 0, 3, false));

        assertThat(refused(history, doubted)).isEqualTo(Reason.MODEL_DOUBTED);
    }

    @ParameterizedTest
    @CsvSource({"1, true", "2, true", "3, false"})
    void a_use_that_changed_lately_is_not_dosed_by_before_three_tests_tell_the_new_one(int tests, boolean waits) {
        History history = dosedLog().history(NINETY_LITRES);
        Estimate e = use(history, 1.2, 0.05, 8, 0.5);
        Estimate.Changed changed = new Estimate.Changed(e.asOf().minusDays(9), tests, 0.8);
        Estimate lately = new Estimate(e.basis(), e.figures(), e.course(), e.fit(), List.of(), Optional.of(changed));

        Optional<Recommendation.Withheld> withheld =
                only(Given.advice(history, lately), ALKALINITY).withheld();

        assertThat(withheld.map(w -> w.reason() == Reason.CHANGED_LATELY).orElse(false))
                .isEqualTo(waits);
        assertThat(withheld.map(w -> w.wouldLift()).orElse(""))
                .contains(waits ? e.asOf().plusDays(3) + "" : "");
    }

    @Test
    void an_undosed_element_that_is_low_is_offered_the_additive_the_keeper_has() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(additive("Lime", CALCIUM, 37)));
        History history = log().readings(CALCIUM, 0, 3, 360, 355, 350, 352, 348, 346, 345, 341, 340)
                .history(setup);

        Recommendation r = only(Given.advice(history, estimate(history.asOf(), CALCIUM, 340, 3, 1, 0.2, 0)), CALCIUM);

        assertThat(r.additive()).isEqualTo("Lime");
        assertThat(r.presentMlPerDay()).isEmpty();
        // 1 mg/L a day * 90 / 37
        assertThat(r.proposedMlPerDay().orElseThrow().mid()).isCloseTo(2.4324, within(1e-4));
    }

    @Test
    void a_reading_below_a_kit_s_first_step_counts_as_a_test() {
        Setup setup = Given.setup(OptionalDouble.of(90), List.of(additive("Iodide", IODINE, 0.1)));
        WrittenLog log = log().rate("Iodide", 0, 1);
        for (int d = 0; d < 12; d++) {
            log.reading(IODINE, d, new Amount.Below(0.03), "");
        }
        History history = log.history(setup);

        assertThat(only(Given.advice(history), IODINE).withheld().orElseThrow().reason())
                .isEqualTo(Reason.TOO_FEW_READINGS);
    }

    private static WrittenLog dosedLog() {
        return log().rate("Soda", 0, 9).readings(ALKALINITY, 0, 3, 8, 8.1, 8, 7.9, 8, 8.1, 8, 8, 8.1, 8, 8.1);
    }

    private static Estimate use(History history, double use, double sd, double level, double dosed) {
        return estimate(history.asOf(), ALKALINITY, level, 0.1, use, sd, dosed);
    }

    private static Reason refused(History history, soundings.estimate.Outcome... outcomes) {
        return only(Given.advice(history, outcomes), ALKALINITY)
                .withheld()
                .map(w -> {
                    assertThat(w.wouldLift()).isNotBlank();
                    return w.reason();
                })
                .orElseThrow();
    }

    private static double value(Recommendation r, String id) {
        return r.working().stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
