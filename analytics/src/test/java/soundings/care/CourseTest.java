package soundings.care;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static soundings.care.Clinic.FIRST;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.care.Course.Better.Answer;
import soundings.history.History;
import soundings.history.Note;
import soundings.history.WrittenLog;
import soundings.setup.Setup;

class CourseTest {
    private static final Vocabulary WORDS = new Vocabulary(Clinic.REFERENCE);
    private static final Setup SICK_BAY = Clinic.tanks(Clinic.tank("Sick bay", 200));

    private static WrittenLog log() {
        return Clinic.log().tank("Sick bay");
    }

    private static Course course(WrittenLog log, Plans plans) {
        return Caring.of(log.history(SICK_BAY), plans, Clinic.REFERENCE)
                .courses()
                .get(0);
    }

    private static Plans plan() {
        return Clinic.course("Sick bay", 2000, "mg", 10, 5);
    }

    /** 2000 mg in 200 L are 10 mg/L; C f V = 10 x 0.25 x 200 = 500 mg: check-values section 8, re-dose of a drug after a change (O). */
    @Test
    void a_water_change_takes_out_what_would_have_to_be_given_again() {
        Course course = course(log().change(1, 0.25).note("note", 1, "quiet"), plan());

        Course.Step change = course.water().get(1);
        assertThat(change.before()).isCloseTo(10, within(1e-9));
        assertThat(change.after()).isCloseTo(7.5, within(1e-9));
        assertThat(change.takenOut()).isCloseTo(500, within(1e-9));
        assertThat(course.toKeepAt().orElseThrow()).isCloseTo(500, within(1e-9));
    }

    /** (1 - f)^n with f = 0.25, n = 3 leaves 0.421875: check-values section 8, n equal changes (O). */
    @Test
    void changes_one_after_another_leave_a_share_of_a_share() {
        Course course = course(log().change(1, 0.25).change(2, 0.25).change(3, 0.25), plan());

        assertThat(course.left().orElseThrow()).isCloseTo(4.21875, within(1e-9));
    }

    @Test
    void a_dose_of_the_day_goes_into_the_water_that_was_changed_that_day() {
        Course course = course(log().change(2, 0.5).note("treatment", 2, "gave 1 g"), plan());

        assertThat(course.left().orElseThrow()).isCloseTo(10 * 0.5 + 1000 / 200.0, within(1e-9));
    }

    @Test
    void days_are_counted_from_the_dates_and_a_note_that_counts_otherwise_is_named() {
        Course course =
                course(log().note("note", 2, "day 3: eats a little").note("note", 4, "day 4, looks better"), plan());

        assertThat(course.day(FIRST.plusDays(4))).isEqualTo(5);
        assertThat(course.disputes()).singleElement().satisfies(d -> {
            assertThat(d.called()).isEqualTo(4);
            assertThat(d.isDay()).isEqualTo(5);
            assertThat(d.place()).isEqualTo("Log!CF3");
        });
    }

    /** No row in the setup: the note that begins a treatment with a weight, and signs on days after it. */
    @Test
    void a_treatment_known_from_notes_alone_begins_with_its_first_dose() {
        History history = log().note("note", 2, "started the medicine from the vet, 400 mg in")
                .note("note", 3, "spots 12; the vet says 250 mg per dose next time")
                .note("note", 5, "spots 9; gave 100 mg")
                .note("note", 8, "3 spots left")
                .note("note", 11, "no spots")
                .history(SICK_BAY);

        Course course =
                Caring.of(history, Plans.NONE, Clinic.REFERENCE).courses().get(0);

        assertThat(course.started()).isEqualTo(FIRST.plusDays(2));
        assertThat(course.doses()).extracting(g -> g.milligrams().orElseThrow()).containsExactly(400.0, 100.0);
        assertThat(course.signs()).hasSize(4);
        assertThat(course.signFree().days()).isEqualTo(3);
    }

    @Test
    void a_bath_without_signs_noted_is_no_course() {
        History history = log().note("treatment", 2, "dipped the new frag, 100 mg")
                .note("note", 9, "fed")
                .history(SICK_BAY);

        assertThat(Caring.of(history, Plans.NONE, Clinic.REFERENCE).courses()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "gave 500 mg | 500",
                "re-dosed 0.5 g after the change | 500",
                "0,5 g bittersalt in | 500",
                "dose given | 2000",
                "treated again, 1 g | 1000",
                "500 mg nachdosiert | 500",
                "0,5 g verabreicht | 500",
                "500 mg donné | 500",
                "añadido 500 mg | 500",
                "500 mg toegediend | 500"
            })
    void a_note_of_a_dose_is_a_dose(String text, double milligrams) {
        Course course = course(log().note("note", 2, text), plan());

        assertThat(course.doses()).hasSize(2);
        assertThat(course.doses().get(1).milligrams().orElseThrow()).isCloseTo(milligrams, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "next dose tomorrow 500 mg",
                "no dose today",
                "skipped the dose",
                "should we give 500 mg? asked the vet",
                "copper test reads 500 mg/L",
                "fed 2 cubes",
                "order more bittersalt",
                "morgen 500 mg gegeben?",
                "heute nicht dosiert",
                "pas de dose donnée",
                "hoy no administrado",
                "dosis vergeten, niet gegeven"
            })
    void a_note_that_only_speaks_of_a_dose_is_none(String text) {
        assertThat(course(log().note("note", 2, text), plan()).doses()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"gave 1,000 mg", "gave 20 drops", "gave 5 ml"})
    void a_dose_that_is_not_known_by_weight_leaves_the_level_open_and_says_so(String text) {
        Course course = course(log().note("treatment", 2, text), plan());

        assertThat(course.left()).isEmpty();
        assertThat(course.whyNoLevel()).contains("2026-03-03");
    }

    @Test
    void without_litres_there_is_no_level() {
        Course course = Caring.of(log().change(1, 0.2).history(Setup.EMPTY), plan(), Clinic.REFERENCE)
                .courses()
                .get(0);

        assertThat(course.water()).isEmpty();
        assertThat(course.whyNoLevel()).contains("litres");
    }

    @Test
    void a_dose_due_by_the_keepers_rhythm_and_not_noted_is_named() {
        Course course = course(log().note("treatment", 2, "gave 500 mg").note("note", 5, "eats"), plan());

        assertThat(course.missing()).containsExactly(FIRST.plusDays(4));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "12 spots on the left flank | true | 12",
                "spots: 3 | true | 3",
                "no spots today | false | 0",
                "no more white spots, eats | false | 0",
                "flashing against the pipe | true | -1",
                "symptom-free | false | 0",
                "spots are all gone | false | 0",
                "no spots but scratching | true | -1",
                "spots are not gone, 2 spots | true | 2",
                "keine Punkte mehr, frisst | false | 0",
                "3 weiße Punkte, scheuert sich | true | 3",
                "Flecken sind weg | false | 0",
                "punktchenfrei | false | 0",
                "aucun point blanc | false | 0",
                "4 taches sur le flanc | true | 4",
                "se gratte contre la roche | true | -1",
                "sin puntos, come bien | false | 0",
                "5 manchas blancas | true | 5",
                "geen stippen meer | false | 0",
                "2 witte stippen | true | 2",
                "nessuna macchia | false | 0",
                "fewer spots, 6 | true | 6",
                "white spots on both, 11 counted | true | 11",
                "spots, 5 ml given | true | -1",
                "both clear, eating well | false | 0",
                "nothing seen | false | 0",
                "healthy, eating | false | 0"
            })
    void a_days_note_tells_whether_there_were_signs(String text, boolean seen, int count) {
        Sign sign = Sign.read(note(text), WORDS).orElseThrow();

        assertThat(sign.seen()).isEqualTo(seen);
        assertThat(sign.count()).isEqualTo(count < 0 ? OptionalInt.empty() : OptionalInt.of(count));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "water clear",
                "the glass is clean again",
                "eats well",
                "water change done",
                "day 4",
                "glass cleaned"
            })
    void a_note_of_other_things_says_nothing_about_signs(String text) {
        assertThat(Sign.read(note(text), WORDS)).isEmpty();
    }

    private static Note note(String text) {
        return Note.of(log().note("note", 0, text).history(SICK_BAY).tanks().get(0))
                .get(0);
    }

    /** Last sign on day index 3, so days 4, 5, 6, 7, 8 are the five without one: the rule lets it end on index 8. */
    @Test
    void the_earliest_end_follows_the_keepers_rule_from_the_last_sign() {
        Course course = course(
                log().note("symptom", 2, "4 spots")
                        .note("symptom", 3, "1 spot")
                        .note("note", 4, "no spots")
                        .note("note", 6, "no spots"),
                plan());

        assertThat(course.signFree().since()).contains(FIRST.plusDays(4));
        assertThat(course.signFree().end()).contains(FIRST.plusDays(8));
        assertThat(course.signFree().days()).isEqualTo(3);
        assertThat(course.signFree().noted()).isEqualTo(2);
    }

    /** Free from index 2 ends on 6; the sign on 4 makes 5 the first free day, so 9. */
    @Test
    void a_relapse_moves_the_earliest_end() {
        Course course = course(
                log().note("symptom", 1, "2 spots")
                        .note("note", 2, "no spots")
                        .note("symptom", 4, "3 spots")
                        .note("note", 5, "no spots"),
                plan());

        assertThat(course.relapses()).singleElement().satisfies(r -> {
            assertThat(r.on()).isEqualTo(FIRST.plusDays(4));
            assertThat(r.endBefore()).isEqualTo(FIRST.plusDays(6));
            assertThat(r.endAfter()).isEqualTo(FIRST.plusDays(9));
        });
    }

    @Test
    void days_without_a_note_do_not_count_as_days_without_a_sign() {
        Course course = course(log().note("symptom", 1, "2 spots").note("note", 20, "fed"), plan());

        assertThat(course.signFree().since()).isEmpty();
        assertThat(course.signFree().days()).isZero();
    }

    @Test
    void a_plain_fall_of_counted_signs_is_better_and_a_rise_is_worse() {
        assertThat(counts(12, 11, 9, 10, 7, 6, 4, 3, 1, 1).better().answer()).isEqualTo(Answer.BETTER);
        assertThat(counts(1, 1, 3, 4, 6, 7, 10, 9, 11, 12).better().answer()).isEqualTo(Answer.WORSE);
    }

    @Test
    void few_days_tell_nothing() {
        assertThat(counts(9, 5, 1).better().answer()).isEqualTo(Answer.TOO_FEW);
    }

    /** One error in twenty either way is what the test allows; ties and rounding make it more careful, not less. */
    @Test
    void ten_noisy_days_without_a_trend_are_called_better_about_as_seldom_as_stated() {
        Random random = new Random(20260301);
        int better = 0;
        for (int i = 0; i < 400; i++) {
            int[] counts = random.ints(10, 2, 9).toArray();
            better += Recovery.better(signs(counts)).answer() == Answer.BETTER ? 1 : 0;
        }

        assertThat(better / 400.0).isBetween(0.01, 0.075);
    }

    private static Course counts(int... counts) {
        WrittenLog log = log();
        for (int i = 0; i < counts.length; i++) {
            log.note("symptom", i, counts[i] + " spots");
        }
        return course(log, plan());
    }

    private static java.util.List<Sign> signs(int... counts) {
        return java.util.stream.IntStream.range(0, counts.length)
                .mapToObj(i -> new Sign(
                        FIRST.plusDays(i),
                        counts[i] > 0,
                        OptionalInt.of(counts[i]),
                        "",
                        note("x").at()))
                .toList();
    }

    @Test
    void notes_of_two_doses_within_a_fortnight_make_a_course_without_a_plan() {
        Course course = course(
                log().note("treatment", 0, "treated, gave 400 mg").note("treatment", 3, "treated, gave 400 mg"),
                Plans.NONE);

        assertThat(course.stated()).isFalse();
        assertThat(course.started()).isEqualTo(FIRST);
        assertThat(course.left().orElseThrow()).isCloseTo(4, within(1e-9));
    }

    @Test
    void one_bath_is_no_course() {
        WrittenLog log =
                log().note("treatment", 0, "dipped the new coral, gave 400 mg").note("note", 9, "ok");

        assertThat(Caring.of(log.history(SICK_BAY), Plans.NONE, Clinic.REFERENCE)
                        .courses())
                .isEmpty();
    }

    @Test
    void a_note_that_the_course_has_ended_ends_it() {
        Course course = course(log().note("treatment", 8, "treatment finished").note("note", 20, "eats"), plan());

        assertThat(course.running()).isFalse();
        assertThat(course.until()).isEqualTo(FIRST.plusDays(8));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void the_order_of_entries_does_not_matter(long seed) {
        WrittenLog log = log().note("symptom", 1, "2 spots")
                .change(2, 0.25)
                .note("treatment", 2, "gave 500 mg")
                .note("note", 3, "no spots")
                .change(4, 0.1);

        assertThat(Caring.of(log.historyShuffled(SICK_BAY, seed), plan(), Clinic.REFERENCE))
                .isEqualTo(Caring.of(log.history(SICK_BAY), plan(), Clinic.REFERENCE));
    }

    @Test
    void a_course_that_has_not_begun_is_not_reported() {
        Plans.Treatment later = new Plans.Treatment(
                "Sick bay",
                "",
                "bittersalt",
                Optional.of(FIRST.plusDays(90)),
                Optional.empty(),
                java.util.OptionalDouble.empty(),
                "",
                java.util.OptionalDouble.empty(),
                java.util.OptionalDouble.empty(),
                java.util.OptionalDouble.empty(),
                "",
                "Treatments!C2");

        assertThat(Caring.of(log().note("note", 1, "eats").history(SICK_BAY), Clinic.plans(later), Clinic.REFERENCE)
                        .courses())
                .isEmpty();
    }
}
