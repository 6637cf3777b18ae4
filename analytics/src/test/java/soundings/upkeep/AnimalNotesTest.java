package soundings.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soundings.advice.Advice;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.history.Note;
import soundings.history.WrittenLog;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;

class AnimalNotesTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final Parameter SALINITY = REFERENCE.parameter("salinity");
    private static final Parameter CALCIUM = REFERENCE.parameter("calcium");

    private static WrittenLog log() {
        return new WrittenLog(REFERENCE).reading(SALINITY, 0, 35).reading(SALINITY, 60, 35);
    }

    /** A level on each of days 0 to 60, plus or minus {@code half}. */
    private static Estimate track(Parameter parameter, double from, double perDay, double half) {
        List<Estimate.Day> days = new ArrayList<>();
        for (int d = 0; d <= 60; d++) {
            double mid = from + d * perDay;
            days.add(new Estimate.Day(WrittenLog.FIRST.plusDays(d), new Interval(mid, mid - half, mid + half)));
        }
        Interval last = days.get(60).level();
        return new Estimate(
                new Estimate.Basis("Cube", parameter, WrittenLog.FIRST.plusDays(60), 20, 60),
                new Estimate.Figures(last, Optional.empty(), new Interval(perDay, perDay, perDay), 0, Optional.empty()),
                new Estimate.Course(days, List.of(), Optional.empty()),
                new Estimate.Fit(0.1, 0.1, 0, 0, 0.1, 0.01, 0, 3, true));
    }

    private static List<Animals> animals(WrittenLog log, Estimate... estimates) {
        return AnimalNotes.of(
                log.history(Setup.EMPTY),
                new Estimates(List.of(estimates)),
                new Advice(List.of(), List.of()),
                REFERENCE);
    }

    /** From day 26 to day 40 the salinity rises by 14 * 0.1 = 1.4 with ends 0.4 wide; calcium stays at 420 within its range. */
    @Test
    void a_loss_is_told_with_what_the_water_did_in_the_fortnight_before() {
        WrittenLog log = log().note("light", 20, "new lamp")
                .note("light", 30, "lamp raised")
                .note("loss", 40, "one snail died");

        Animals.Loss loss = animals(log, track(CALCIUM, 420, 0, 5), track(SALINITY, 33, 0.1, 0.2))
                .get(0)
                .losses()
                .get(0);

        assertThat(loss.before()).extracting(Note::text).containsExactly("lamp raised");
        assertThat(loss.standingOut()).singleElement().satisfies(shift -> {
            assertThat(shift.parameter()).isEqualTo(SALINITY);
            assertThat(shift.from()).isEqualTo(LocalDate.of(2026, 3, 27));
            assertThat(shift.until()).isEqualTo(LocalDate.of(2026, 4, 10));
            assertThat(shift.change()).isCloseTo(1.4, within(1e-9));
            assertThat(shift.moved()).isTrue();
        });
        assertThat(loss.water()).hasSize(2);
    }

    @Test
    void where_the_water_was_not_followed_before_a_loss_nothing_is_said_of_it() {
        Animals.Loss loss = animals(log().note("loss", 2, "goby found dead"), track(SALINITY, 35, 0, 0.2))
                .get(0)
                .losses()
                .get(0);

        assertThat(loss.water()).isEmpty();
    }

    @Test
    void a_dead_pump_a_lost_sheet_and_no_loss_are_no_losses() {
        List<Animals> animals = animals(log().note("loss", 5, "return pump dead")
                .note("loss", 6, "test sheet lost")
                .note("loss", 7, "no losses this week")
                .note("loss", 8, "empty shell, not a dead shrimp"));

        assertThat(animals).isEmpty();
    }

    @Test
    void an_animal_missing_still_missing_and_found_dead_is_one_loss_and_two_snails_are_two() {
        List<Animals.Loss> losses = animals(log().note("loss", 10, "goby missing since yesterday")
                        .note("loss", 12, "goby still missing")
                        .note("loss", 16, "goby found dead behind the pump")
                        .note("loss", 20, "lost a snail")
                        .note("loss", 25, "lost a snail"))
                .get(0)
                .losses();

        assertThat(losses)
                .extracting(l -> l.noted().text())
                .containsExactly("goby missing since yesterday", "lost a snail", "lost a snail");
        assertThat(losses.get(0).again())
                .extracting(Note::text)
                .containsExactly("goby still missing", "goby found dead behind the pump");
    }

    @Test
    void moves_conditions_and_feeding_stand_apart() {
        Animals animals = animals(log().note("added", 5, "new snails")
                        .note("symptom", 6, "goby hiding")
                        .note("moved", 7, "moved the goby to the tub")
                        .note("feeding", 8, "fed twice")
                        .note("note", 9, "a quiet day"))
                .get(0);

        assertThat(animals.moves()).hasSize(2);
        assertThat(animals.conditions()).hasSize(1);
        assertThat(animals.feeding()).hasSize(1);
        assertThat(animals.losses()).isEmpty();
    }
}
