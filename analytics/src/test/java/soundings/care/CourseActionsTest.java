package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.care.Clinic.FIRST;
import static soundings.care.Clinic.test;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;
import soundings.advice.Advice;
import soundings.history.WrittenLog;
import soundings.setup.Setup;

/** What new tanks and courses ask for on the first page. */
class CourseActionsTest {
    private static final Setup TANKS = Clinic.tanks(Clinic.tank("Sick bay", 200), Clinic.tank("Lagoon", 90, 0));

    private static List<Action> actions(WrittenLog log, Plans plans, Action... others) {
        Care care = Caring.of(log.history(TANKS), plans, Clinic.REFERENCE);
        Advice advice = new Advice(List.of(), List.of(), List.of(others), List.of(), List.of(), List.of());
        return CareActions.amend(advice, care).actions();
    }

    private static Plans plan() {
        return Clinic.course("Sick bay", 2000, "mg", 10, 5);
    }

    private static Action high(String parameter) {
        return new Action(
                Urgency.MONTH, "Lagoon", Optional.of(test(parameter)), "Bring it down", List.of(), 1, "", List.of());
    }

    /** 2000 mg in 200 L are 10 mg/L; a quarter changed leaves 7.5, so 2.5 x 200 = 500 mg short: check-values section 8 (O). */
    @Test
    void what_a_course_is_short_of_is_on_the_first_page_with_who_is_to_be_asked() {
        List<Action> actions =
                actions(Clinic.log().tank("Sick bay").change(2, 0.25).note("note", 2, "quiet"), plan());

        assertThat(actions).anySatisfy(a -> {
            assertThat(a.urgency()).isEqualTo(Urgency.SOON);
            assertThat(a.what())
                    .isEqualTo("Check the level of bittersalt for the angelfish: 500 mg short of what you set");
            assertThat(a.why()).anyMatch(w -> w.contains("7.5 mg/L are left of the 10 mg/L"));
            assertThat(a.why()).anyMatch(w -> w.contains("took out 500 mg"));
            assertThat(a.caution()).contains("vet").contains("local law");
            assertThat(a.restsOn()).contains("Treatments!C2");
        });
    }

    /** The water's own test counts for more than dilution: 0.5 mg/L by reckoning, 2 mg/L by the test, as set. */
    @Test
    void what_a_test_finds_in_the_water_is_not_asked_for_again() {
        WrittenLog log = Clinic.log().tank("Sick bay").change(1, 0.75);

        assertThat(actions(log.readings(test("copper"), 2, 1, 2000, 2010, 1990), copper()))
                .noneMatch(a -> a.what().contains("short"));
        assertThat(actions(log.readings(test("copper"), 5, 1, 1200), copper())).anySatisfy(a -> {
            assertThat(a.what()).contains("the last test reads less than you set");
            assertThat(a.why()).anyMatch(w -> w.startsWith("1.2 mg/L"));
        });
    }

    private static Plans copper() {
        return Clinic.plans(new Plans.Treatment(
                "Sick bay",
                "tang",
                "Copper solution",
                Optional.of(FIRST),
                Optional.empty(),
                OptionalDouble.of(400),
                "mg",
                OptionalDouble.empty(),
                OptionalDouble.of(2),
                OptionalDouble.empty(),
                "",
                "Treatments!C2"));
    }

    /** 400 mg four times in 200 L with nothing changed: 8 mg/L where 2 are wanted. */
    @Test
    void more_in_the_water_than_was_set_comes_first_and_no_dose_is_asked_for() {
        WrittenLog log = Clinic.log()
                .tank("Sick bay")
                .note("note", 1, "gave 400 mg copper solution")
                .note("note", 2, "gave 400 mg copper solution")
                .note("note", 3, "gave 400 mg copper solution");

        assertThat(actions(log, copper()))
                .anySatisfy(a -> {
                    assertThat(a.urgency()).isEqualTo(Action.Urgency.NOW);
                    assertThat(a.what()).startsWith("Give no more Copper solution");
                    assertThat(a.caution()).contains("vet");
                })
                .noneMatch(a -> a.what().contains("was due"));
    }

    @Test
    void a_level_that_holds_asks_for_nothing() {
        assertThat(actions(Clinic.log().tank("Sick bay").note("note", 1, "2 spots"), plan()))
                .noneMatch(a -> a.what().contains("short"));
    }

    @Test
    void the_earliest_end_is_named_while_signs_are_noted_and_when_it_is_reached() {
        WrittenLog log =
                Clinic.log().tank("Sick bay").note("note", 1, "2 spots").note("note", 2, "no spots");
        assertThat(actions(log, plan()))
                .anyMatch(a -> a.what().endsWith("may end on " + FIRST.plusDays(6) + " at the earliest"));

        assertThat(actions(log.note("note", 8, "no spots"), plan()))
                .noneMatch(a -> a.what().contains("may end"))
                .anyMatch(a -> a.what().contains("too few days are noted"));
        assertThat(actions(
                        log.note("note", 4, "no spots").note("note", 6, "clear").note("note", 8, "no spots"), plan()))
                .anyMatch(a -> a.what().contains("may end: it asked for no longer than " + FIRST.plusDays(6)));
        WrittenLog unnoted = Clinic.log()
                .tank("Sick bay")
                .note("note", 1, "2 spots")
                .note("note", 2, "no spots")
                .note("note", 8, "fed");
        assertThat(actions(unnoted, plan())).anyMatch(a -> a.what().endsWith("when the days since are noted too"));
    }

    @Test
    void signs_that_rise_ask_for_a_vet_now() {
        WrittenLog log = Clinic.log().tank("Sick bay");
        for (int day = 0; day < 8; day++) {
            log = log.note("note", day, (1 + 2 * day) + " spots");
        }

        assertThat(actions(log, plan()).get(0)).satisfies(a -> {
            assertThat(a.urgency()).isEqualTo(Urgency.NOW);
            assertThat(a.what()).startsWith("Ask a vet");
        });
    }

    @Test
    void an_empty_new_tank_is_to_stay_empty_and_its_nitrate_is_no_fault() {
        WrittenLog log = Clinic.log().tank("Lagoon").readings(test("ammonia"), 0, 3, 2, 1.5, 1, 0.5);

        List<Action> actions = actions(log, Plans.NONE, high("nitrate"), high("ammonia"), high("calcium"));

        assertThat(actions).extracting(Action::what).anyMatch(w -> w.startsWith("Put no animal in yet"));
        assertThat(actions)
                .extracting(a -> a.parameter().map(p -> p.id()).orElse(""))
                .containsOnlyOnce("calcium");
        assertThat(actions)
                .extracting(a -> a.parameter().map(p -> p.id()).orElse(""))
                .doesNotContain("nitrate", "ammonia");
    }

    @Test
    void a_new_tank_with_animals_keeps_every_action() {
        WrittenLog log = Clinic.log()
                .tank("Lagoon")
                .readings(test("ammonia"), 0, 3, 2, 1.5, 1, 0.5)
                .note("added", 4, "two gobies");

        assertThat(actions(log, Plans.NONE, high("calcium")))
                .noneMatch(a -> a.what().startsWith("Put no animal"))
                .anyMatch(a -> a.what().equals("Bring it down"));
    }
}
