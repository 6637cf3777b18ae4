package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.doses;
import static soundings.layout.Sheets.issues;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.log.Log;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Look;
import soundings.sheet.Value;

/** Doses in a note of which something is not written. */
class DosesInWordsTest {
    private static Log noted(String second) {
        return read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Notes"),
                row(day(5, 1), 410, "blue mix 30 ml/day"),
                row(day(5, 8), 415, second)));
    }

    @ParameterizedTest
    @CsvSource({
        "blue mix now 36 ml, 36",
        "blue mix raised to 40 ml, 40",
        "blue mix 15 ml AM 20 ml PM, 35",
        "blue mix 10 ml morning + 12 ml evening, 22"
    })
    void a_new_setting_goes_on_as_the_one_before(String note, double mlPerDay) {
        assertThat(doses(noted(note))).contains("Lagoon 2026-05-08 blue mix " + (int) mlPerDay);
    }

    @ParameterizedTest
    @CsvSource({
        "blue mix raised by 5 ml a day, 35",
        "blue mix up 5 ml, 35",
        "blue mix 10 ml a day less, 20",
        "blue mix dose halved, 15"
    })
    void a_dose_may_be_told_by_the_one_before(String note, int mlPerDay) {
        assertThat(doses(noted(note))).contains("Lagoon 2026-05-08 blue mix " + mlPerDay);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"blue mix up 25 ml", "green mix raised by 5 ml a day", "blue mix 3 drops a day. blue mix halved"
            })
    void a_step_from_a_dose_that_is_not_sure_is_not_taken(String note) {
        assertThat(doses(noted(note))).containsExactly("Lagoon 2026-05-01 blue mix 30");
        assertThat(issues(noted(note))).contains("unreadText");
    }

    @Test
    void that_a_setting_is_taken_for_a_days_is_said() {
        assertThat(issues(noted("blue mix now 36 ml"))).contains("rateAssumed");
        assertThat(issues(noted("blue mix 36 ml/day"))).doesNotContain("rateAssumed");
    }

    @ParameterizedTest
    @ValueSource(strings = {"blue mix now 9 ml", "blue mix now 15 ml", "blue mix set to 120 ml", "green mix now 30 ml"})
    void a_setting_that_may_be_one_dose_of_several_is_not_used(String note) {
        assertThat(doses(noted(note))).containsExactly("Lagoon 2026-05-01 blue mix 30");
        assertThat(issues(noted(note))).contains("unreadText");
    }

    @Test
    void since_a_weekday_is_no_part_of_a_name() {
        assertThat(doses(noted("since Friday blue mix 24 ml/d"))).noneMatch(d -> d.contains("since"));
    }

    @Test
    void tanks_that_are_sheets_are_known_in_the_notes_of_another() {
        Log log = read(
                sheet("Lagoon", row("Date", "Ca mg/L"), row(day(5, 1), 410), row(day(5, 8), 415)),
                sheet("Nursery", row("Date", "Ca mg/L"), row(day(5, 1), 400), row(day(5, 8), 405)),
                sheet(
                        "Diary",
                        row("Date", "What happened"),
                        row(day(5, 9), "Nursery: KH 7.5 dKH; Lagoon: KH 8.2 dKH")));

        assertThat(Sheets.readings(log))
                .contains("Nursery 2026-05-09 alkalinity 7.5", "Lagoon 2026-05-09 alkalinity 8.2");
    }

    /** 8 May 2026 is a Friday. */
    @ParameterizedTest
    @CsvSource({
        "doubled blue mix, 2026-05-08, 60",
        "blue mix dose halved, 2026-05-08, 15",
        "blue mix back to 30 ml, 2026-05-08, 30",
        "since Tuesday blue mix 24 ml/d, 2026-05-05, 24",
        "blue mix 24 ml/d since Friday, 2026-05-01, 24"
    })
    void a_dose_told_by_the_one_before_or_by_a_weekday_is_known(String note, String from, int mlPerDay) {
        assertThat(doses(noted(note))).contains("Lagoon " + from + " blue mix " + mlPerDay);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "doubled green mix",
                "halved the feeding",
                "doubled blue mix and green mix",
                "doubled blue mix for 2 days"
            })
    void times_of_a_dose_that_is_not_known_are_not_used(String note) {
        assertThat(doses(noted(note))).containsExactly("Lagoon 2026-05-01 blue mix 30");
    }

    @Test
    void a_setting_that_stood_before_is_one_again() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Notes"),
                row(day(5, 1), 410, "blue mix 30 ml/day"),
                row(day(5, 8), 415, "doubled blue mix"),
                row(day(5, 15), 415, "blue mix back to 30 ml")));

        assertThat(doses(log))
                .containsExactly(
                        "Lagoon 2026-05-01 blue mix 30",
                        "Lagoon 2026-05-08 blue mix 60",
                        "Lagoon 2026-05-15 blue mix 30");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24 litres out, 24 in|24 L",
                "siphoned 20 litres out, 20 litres in|20 L",
                "10 gal out and 10 gal in|37.854 L"
            })
    void as_much_water_in_as_out_is_a_change(String note, String change) {
        assertThat(Sheets.changes(noted(note))).containsExactly("Lagoon 2026-05-08 " + change);
    }

    @ParameterizedTest
    @ValueSource(strings = {"24 litres out, 20 in", "24 litres out", "24 litres out, 24 in the bin"})
    void water_that_only_goes_out_is_no_change(String note) {
        assertThat(Sheets.changes(noted(note))).isEmpty();
    }

    @Test
    void a_change_of_both_tanks_is_one_of_each() {
        Log log = read(
                sheet("Lagoon", row("Date", "Ca mg/L"), row(day(5, 1), 410), row(day(5, 8), 415)),
                sheet("Nursery", row("Date", "Ca mg/L"), row(day(5, 1), 400), row(day(5, 8), 405)),
                sheet(
                        "Diary",
                        row("Date", "What happened"),
                        row(day(5, 9), "Nursery: KH 7.5 dKH. Lagoon: Ca 430. Both tanks 10 % wc. All well.")));

        assertThat(Sheets.readings(log)).contains("Nursery 2026-05-09 alkalinity 7.5", "Lagoon 2026-05-09 calcium 430");
        assertThat(Sheets.changes(log)).containsExactly("Lagoon 2026-05-09 0.1", "Nursery 2026-05-09 0.1");
    }

    @ParameterizedTest
    @CsvSource({
        "alk solution 30 ml/day, KH mix +5 ml/day, alk solution 35",
        "soda ash solution 30 ml/day, alk dose halved, soda ash solution 15",
        "calcium chloride mix 30 ml/day, calcium dose up 10 %, calcium chloride mix 33"
    })
    void a_dose_told_by_the_one_before_finds_it_under_another_name(String first, String second, String dose) {
        assertThat(doses(twice(first, second))).contains("Lagoon 2026-05-08 " + dose);
    }

    @ParameterizedTest
    @CsvSource({
        "alk solution 30 ml/day, calcium solution +5 ml/day",
        "soda ash solution 30 ml/day. baking soda solution 10 ml/day, alk dose halved",
        "alk solution 30 ml/day. upped the alk dose a bit, alk +5 ml/day",
        "alk solution 30 ml/day. alk dosing stopped, alk +5 ml/day",
        "alk solution 30 ml/day, alk back to the old rate"
    })
    void a_dose_told_by_one_that_is_not_known_for_sure_is_not_taken(String first, String second) {
        Log log = twice(first, second);

        assertThat(doses(log)).noneMatch(d -> d.contains("2026-05-08"));
        assertThat(issues(log)).contains("unreadText");
    }

    private static Log twice(String first, String second) {
        return read(sheet(
                "Lagoon", row("Date", "Ca mg/L", "Notes"), row(day(5, 1), 410, first), row(day(5, 8), 415, second)));
    }

    @Test
    void a_dose_that_stays_is_no_new_one() {
        assertThat(doses(noted("blue mix still at 30 ml/day"))).containsExactly("Lagoon 2026-05-01 blue mix 30");
        assertThat(doses(noted("blue mix still at 35 ml/day"))).contains("Lagoon 2026-05-08 blue mix 35");
    }

    @ParameterizedTest
    @CsvSource({
        "blue mix 24 ml/day from tomorrow, 2026-05-09, 24",
        "blue mix at 24 ml/day since yesterday, 2026-05-07, 24",
        "raised blue mix 36 ml/day, 2026-05-08, 36"
    })
    void a_dose_may_begin_the_day_after_or_before(String note, String from, int mlPerDay) {
        assertThat(doses(noted(note))).contains("Lagoon " + from + " blue mix " + mlPerDay);
    }

    @Test
    void a_dose_that_may_be_a_step_is_not_used() {
        assertThat(doses(noted("raised blue mix 8 ml/day"))).noneMatch(d -> d.contains("2026-05-08"));
    }

    @Test
    void a_step_beside_the_column_of_the_new_dose_is_not_added_again() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "blue mix ml/day", "Notes"),
                row(day(5, 1), 410, 30, ""),
                row(day(5, 8), 415, 35, "blue mix +5 ml/day"),
                row(day(5, 15), 415, 40, "")));

        assertThat(doses(log))
                .containsExactly(
                        "Lagoon 2026-05-01 blue mix 30",
                        "Lagoon 2026-05-08 blue mix 35",
                        "Lagoon 2026-05-15 blue mix 40");
    }

    @Test
    void a_note_pinned_to_a_cell_tells_doses_and_changes_but_no_results() {
        Cell pinned = new Cell(
                new CellRef(0, 0),
                new Value.Numeric(415),
                Look.PLAIN,
                "blue mix 36 ml/day. 10 % wc. second test: Ca 480");
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca mg/L", "Notes"),
                row(day(5, 1), 410, "blue mix 30 ml/day"),
                row(day(5, 8), pinned, "")));

        assertThat(doses(log)).contains("Lagoon 2026-05-08 blue mix 36");
        assertThat(Sheets.changes(log)).containsExactly("Lagoon 2026-05-08 0.1");
        assertThat(Sheets.readings(log)).hasSize(2);
    }

    @Test
    void a_bucket_holds_what_the_log_tells() {
        Log log = read(sheet(
                "Lagoon",
                row("1 bucket = 12 L"),
                row("Date", "Ca mg/L", "Notes"),
                row(day(5, 1), 410, "two buckets of water changed"),
                row(day(5, 8), 415, "")));

        assertThat(Sheets.changes(log)).containsExactly("Lagoon 2026-05-01 24 L");
    }

    @Test
    void a_row_that_says_water_change_tells_what_its_amount_is() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Kind", "Details"),
                row(day(5, 1), "test", "Ca 410"),
                row(day(5, 2), "water change", "10 %"),
                row(day(5, 8), "test", "Ca 415"),
                row(day(5, 9), "note", "10 % light")));

        assertThat(Sheets.changes(log)).containsExactly("Lagoon 2026-05-02 0.1");
    }

    @Test
    void names_that_tell_only_the_test_are_one_additive() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Notes"),
                row(day(5, 1), "dosing KH 30 ml/day"),
                row(day(5, 8), "KH-Lösung jetzt 35 ml/Tag"),
                row(day(5, 15), "alk solution now 40 ml/day")));

        assertThat(doses(log))
                .extracting(d -> d.substring(d.indexOf("2026")))
                .containsExactly("2026-05-01 KH 30", "2026-05-08 KH 35", "2026-05-15 KH 40");
        assertThat(Sheets.issues(log)).contains("nameMerged");
    }
}
