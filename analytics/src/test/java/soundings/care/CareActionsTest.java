package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.care.Clinic.test;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soundings.advice.Action;
import soundings.advice.Action.Urgency;
import soundings.advice.Advice;
import soundings.chemistry.Parameter;
import soundings.setup.Setup;

class CareActionsTest {
    private static final String TANK = "Lagoon";
    private static final Setup SETUP = Clinic.tanks(Clinic.tank(TANK, 100, 0));

    @Test
    void a_tank_that_is_not_ready_is_not_told_to_bring_nitrate_down() {
        var cycling = Clinic.log()
                .tank(TANK)
                .readings(test("ammonia"), 0, 2, 0.5, 1, 1.5, 1)
                .readings(test("nitrite"), 0, 2, 0, 0.5, 1, 1.5);
        Care care = Caring.of(cycling.history(SETUP), Plans.NONE, Clinic.REFERENCE);

        List<Action> left = CareActions.amend(advice(order(test("nitrate")), order(test("calcium"))), care)
                .actions();

        assertThat(left).extracting(Action::parameter).contains(Optional.of(test("calcium")));
        assertThat(left).extracting(Action::parameter).doesNotContain(Optional.of(test("nitrate")));
    }

    @Test
    void salinity_out_of_its_range_is_no_alarm_while_a_course_runs_and_is_asked_about() {
        var history = Clinic.log()
                .tank(TANK)
                .readings(test("salinity"), 0, 1, 31, 31, 31)
                .history(SETUP);
        Care treated = Caring.of(history, Clinic.course(TANK, 10, "mg/L", -1, -1), Clinic.REFERENCE);
        Care untreated = Caring.of(history, Plans.NONE, Clinic.REFERENCE);
        Advice alarm = advice(order(test("salinity")));

        assertThat(CareActions.amend(alarm, treated).actions())
                .filteredOn(a -> a.parameter().isPresent())
                .singleElement()
                .satisfies(a -> {
                    assertThat(a.urgency()).isEqualTo(Urgency.HANDY);
                    assertThat(a.what()).contains("meant");
                    assertThat(a.why()).anyMatch(w -> w.contains("second instrument"));
                });
        assertThat(CareActions.amend(alarm, untreated).actions())
                .singleElement()
                .satisfies(a -> assertThat(a.urgency()).isEqualTo(Urgency.NOW));
    }

    private static Advice advice(Action... actions) {
        return new Advice(List.of(), List.of(), List.of(actions), List.of(), List.of(), List.of());
    }

    private static Action order(Parameter parameter) {
        return new Action(Urgency.NOW, TANK, Optional.of(parameter), "Do", List.of("because"), 1, "", List.of());
    }
}
