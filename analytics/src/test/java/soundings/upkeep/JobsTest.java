package soundings.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.upkeep.Sheets.book;
import static soundings.upkeep.Sheets.sheet;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import soundings.advice.Action.Urgency;
import soundings.advice.Advice;
import soundings.chemistry.Part.Harm;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.Histories;
import soundings.history.WrittenLog;
import soundings.log.Log;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.Book;

/** Jobs noted from 1 March 2026 on; the report's day is 30 June 2026, day 121. */
class JobsTest {
    private static final Reference REFERENCE = ReferenceTables.load();
    private static final LocalDate FIRST = WrittenLog.FIRST;
    private static final LocalDate AS_OF = LocalDate.of(2026, 6, 30);

    private static WrittenLog log() {
        return new WrittenLog(REFERENCE);
    }

    private static Upkeep upkeep(WrittenLog written, Optional<Book> setup) {
        Log log = written.reading(REFERENCE.parameter("alkalinity"), 121, 8).log();
        return Upkeep.of(
                log,
                Histories.of(
                        log,
                        Setup.EMPTY,
                        REFERENCE,
                        new Settings(AS_OF.plusDays(2), Optional.of(YearMonth.of(2026, 6)))),
                new Estimates(List.of()),
                new Advice(List.of(), List.of()),
                setup,
                REFERENCE);
    }

    private static Upkeep upkeep(WrittenLog written) {
        return upkeep(written, Optional.empty());
    }

    @Test
    void a_damaged_cable_is_a_danger_to_people_whatever_it_feeds() {
        Upkeep upkeep = upkeep(log().note("note", 0, "circulation pump power cable is broken, taped for now"));

        assertThat(upkeep.jobs()).singleElement().satisfies(job -> {
            assertThat(job.harm()).isEqualTo(Harm.LIFE);
            assertThat(job.risk()).contains("oxygen").contains("electric shock");
        });
    }

    @Test
    void what_one_note_says_of_one_piece_is_one_job() {
        Upkeep upkeep = upkeep(log().note("note", 0, "overflow box cracked, leaks a drop, will glue one day"));

        assertThat(upkeep.jobs())
                .singleElement()
                .satisfies(job -> assertThat(job.harm()).isEqualTo(Harm.FLOOD));
    }

    @Test
    void a_job_noted_again_is_one_job_and_its_age_counts_from_the_first_note() {
        Upkeep upkeep = upkeep(log().note("note", 0, "return pump rattles, have a look soon")
                .note("note", 37, "pump still rattling - order the part!!"));

        assertThat(upkeep.jobs()).singleElement().satisfies(job -> {
            assertThat(job.noticed()).contains(FIRST);
            assertThat(job.ageDays(AS_OF)).hasValue(121); // 31 + 30 + 31 days of March, April, May, and 29 of June
            assertThat(job.notes()).hasSize(2);
            assertThat(job.open()).isTrue();
            assertThat(job.harm()).isEqualTo(Harm.LIFE);
        });
    }

    @Test
    void a_job_that_may_kill_stands_first_on_the_list_of_what_to_do_until_it_is_done() {
        WrittenLog log = log().note("note", 0, "skimmer is noisy")
                .note("note", 9, "small leak under the sump")
                .note("note", 30, "heater cracked, to do");

        Upkeep before = upkeep(log);
        Upkeep after = upkeep(log.note("note", 33, "new heater fitted"));

        assertThat(before.openJobs()).extracting(Job::harm).containsExactly(Harm.LIFE, Harm.FLOOD, Harm.SLOW);
        assertThat(before.actions().get(0).urgency()).isEqualTo(Urgency.NOW);
        assertThat(before.actions().get(0).what()).contains("heater cracked");
        assertThat(before.actions().get(0).restsOn()).isNotEmpty();
        assertThat(after.actions()).noneMatch(a -> a.urgency() == Urgency.NOW);
        assertThat(after.jobs()).filteredOn(j -> !j.open()).singleElement().satisfies(job -> {
            assertThat(job.done()).contains(FIRST.plusDays(33));
            assertThat(job.daysToDo()).hasValue(3);
        });
    }

    @Test
    void what_is_wished_for_or_doubtful_closes_no_job() {
        Upkeep upkeep = upkeep(log().note("note", 0, "return pump rattles")
                .note("note", 1, "dosing pump leaks")
                .note("note", 5, "return pump will be replaced next week")
                .note("note", 6, "pump fixed")
                .note("note", 7, "return pump not fixed yet")
                .note("note", 8, "new heater fitted"));

        assertThat(upkeep.openJobs()).hasSize(2);
    }

    @Test
    void a_fault_that_comes_back_after_its_repair_is_a_new_job() {
        Upkeep upkeep = upkeep(log().note("note", 0, "heater failed")
                .note("note", 2, "heater replaced")
                .note("note", 100, "heater failed again"));

        assertThat(upkeep.openJobs())
                .singleElement()
                .satisfies(j -> assertThat(j.ageDays(AS_OF)).hasValue(21));
        assertThat(upkeep.jobs()).hasSize(2);
    }

    @Test
    void jobs_of_one_tank_are_not_closed_by_another_tanks_repair() {
        Upkeep upkeep = upkeep(log().tank("Cube")
                .note("note", 0, "heater broken")
                .tank("Lagoon")
                .note("note", 3, "heater replaced"));

        assertThat(upkeep.openJobs())
                .singleElement()
                .satisfies(j -> assertThat(j.tank()).isEqualTo("Cube"));
    }

    /** Waits of 2, 10 and 30 days: two done in March (median (2 + 10) / 2 = 6, longest 10), one in April. */
    @Test
    void time_from_noticing_to_doing_is_told_by_the_month_of_doing() {
        Upkeep upkeep = upkeep(log().note("note", 0, "heater broken")
                .note("note", 2, "heater replaced")
                .note("note", 5, "hose leaks")
                .note("note", 15, "hose replaced")
                .note("note", 10, "lid cracked")
                .note("note", 40, "lid repaired"));

        assertThat(upkeep.paces())
                .containsExactly(new Pace(YearMonth.of(2026, 3), 2, 6, 10), new Pace(YearMonth.of(2026, 4), 1, 30, 30));
    }

    @Test
    void the_setup_workbook_adds_jobs_states_what_is_at_risk_and_closes_them() {
        Upkeep upkeep = upkeep(
                log().note("note", 20, "return pump rattles"),
                Optional.of(book(sheet(
                        "Jobs",
                        "Tank|Job|Noticed|At risk|Done",
                        "Cube|Return pump rattling|2026-03-05||",
                        "cube|feet of the cupboard swell|2026-04-01|flood|",
                        "Cube|Tidy the cables||fire|",
                        "Cube|UV lamp dark|2026-03-01||2026-04-10",
                        "Cube|Renew labels|2026-03-01||yes",
                        "Cube|Old fan|2026-03-01||perhaps"))));

        assertThat(upkeep.openJobs())
                .extracting(j -> j.what().toLowerCase(java.util.Locale.ROOT))
                .containsExactlyInAnyOrder(
                        "return pump rattles", "tidy the cables", "feet of the cupboard swell", "old fan");
        assertThat(upkeep.openJobs().get(0).noticed()).contains(LocalDate.of(2026, 3, 1));
        assertThat(upkeep.jobs())
                .filteredOn(j -> j.what().startsWith("return"))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.noticed()).contains(LocalDate.of(2026, 3, 5));
                    assertThat(j.notes()).hasSize(2);
                });
        assertThat(upkeep.jobs())
                .filteredOn(j -> j.what().startsWith("Tidy"))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.harm()).isEqualTo(Harm.FIRE);
                    assertThat(j.ageDays(AS_OF)).isEmpty();
                });
        assertThat(upkeep.jobs())
                .filteredOn(j -> j.what().startsWith("UV"))
                .singleElement()
                .satisfies(j -> assertThat(j.daysToDo()).hasValue(40));
        assertThat(upkeep.issues())
                .singleElement()
                .satisfies(i -> assertThat(i.where().orElseThrow().place()).isEqualTo("Jobs!E7"));
    }

    @Test
    void a_job_done_after_the_month_reported_is_still_open_in_it() {
        Upkeep upkeep = upkeep(log().note("note", 0, "heater broken").note("note", 130, "heater replaced"));

        assertThat(upkeep.openJobs()).hasSize(1);
    }
}
