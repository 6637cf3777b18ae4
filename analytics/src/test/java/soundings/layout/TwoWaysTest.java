package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static soundings.layout.Sheets.day;
import static soundings.layout.Sheets.read;
import static soundings.layout.Sheets.readings;
import static soundings.layout.Sheets.row;
import static soundings.layout.Sheets.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.sheet.Grid;

/** What can be read in two ways about as well is read in neither, and asked about; what is clear raises no question. */
class TwoWaysTest {
    @Test
    void dates_that_run_down_and_dates_that_run_across_may_both_be_the_days() {
        Log log = read(sheet(
                "Alkalinity dKH",
                row("", day(4, 3), day(4, 10), day(4, 17)),
                row(day(5, 1), 8.1, 8.2, 8.3),
                row(day(5, 8), 8.0, 8.2, 8.4),
                row(day(5, 15), 8.1, 8.3, 8.0)));

        assertThat(readings(log)).isNotEmpty().allMatch(r -> r.endsWith("refused"));
        assertThat(asked(log)).containsExactly("doubleFit");
    }

    @Test
    void two_columns_called_the_date_with_other_days_in_them_are_asked_about() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Date", "Ca ppm"),
                row(day(4, 3), day(4, 9), 420),
                row(day(4, 10), day(4, 16), 425),
                row(day(4, 17), day(4, 23), 425)));

        assertThat(readings(log)).hasSize(3).allMatch(r -> r.endsWith("refused"));
        assertThat(asked(log)).containsExactly("doubleFit");
        assertThat(log.issues())
                .anySatisfy(i -> assertThat(i.message()).contains("those from A2 on, or those from B2 on"));
    }

    @Test
    void two_columns_with_the_same_days_raise_no_question() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Date", "Ca ppm"),
                row(day(4, 3), day(4, 3), 420),
                row(day(4, 10), day(4, 10), 425),
                row(day(4, 17), day(4, 17), 425)));

        assertThat(asked(log)).isEmpty();
        assertThat(readings(log)).noneMatch(r -> r.endsWith("refused"));
    }

    @Test
    void two_lines_of_headings_that_name_different_tests_over_a_column_are_asked_about() {
        Log log = read(sheet(
                "Lagoon",
                row("Date", "Ca", "Mg", "pH"),
                row("Day", "Mg", "Ca", "pH"),
                row(day(4, 3), 420, 1300, 8.1),
                row(day(4, 10), 425, 1310, 8.2),
                row(day(4, 17), 425, 1310, 8.1)));

        assertThat(readings(log)).hasSize(3).allMatch(r -> r.contains(" ph "));
        assertThat(asked(log)).containsExactly("doubleFit", "doubleFit");
    }

    /** No day passes the twelfth, so that only their order among themselves tells. */
    @Test
    void days_that_never_pass_the_twelfth_are_told_by_their_neighbours_or_not_at_all() {
        Log even = read(sheet(
                "Lagoon",
                row("Date", "Ca ppm"),
                row("01/03/2026", 420),
                row("04/03/2026", 425),
                row("07/03/2026", 425),
                row("10/03/2026", 421)));
        Log open = read(sheet(
                "Lagoon",
                row("Date", "Ca ppm"),
                row("01/02/2026", 420),
                row("02/03/2026", 425),
                row("03/04/2026", 425),
                row("04/05/2026", 421)));

        assertThat(readings(even)).contains("Lagoon 2026-03-04 calcium 425").noneMatch(r -> r.endsWith("refused"));
        assertThat(asked(even)).isEmpty();
        assertThat(readings(open)).hasSize(4).allMatch(r -> r.endsWith("refused"));
        assertThat(asked(open)).containsExactly("ambiguousDates");
    }

    @Test
    void each_sheet_of_a_workbook_put_together_from_two_keeps_its_own_order_of_day_and_month() {
        Log log = read(dated("Lagoon", 40, "%2$02d/%1$02d/%3$d"), dated("Ledge", 14, "%1$02d/%2$02d/%3$d"));

        assertThat(asked(log)).isEmpty();
        assertThat(Sheets.entries(log, Reading.class))
                .filteredOn(r -> r.tank().equals("Ledge"))
                .extracting(Reading::date)
                .containsExactlyElementsOf(days(14));
    }

    private static List<LocalDate> days(int count) {
        return LocalDate.of(2026, 4, 1)
                .datesUntil(LocalDate.of(2027, 1, 1), java.time.Period.ofDays(3))
                .limit(count)
                .toList();
    }

    /** @param form month, day and year in their order */
    private static Grid dated(String name, int count, String form) {
        List<Object[]> rows = new ArrayList<>();
        rows.add(row("Date", "KH dKH"));
        days(count)
                .forEach(d -> rows.add(
                        row(String.format(Locale.ROOT, form, d.getMonthValue(), d.getDayOfMonth(), d.getYear()), 8.1)));
        return sheet(name, rows.toArray(Object[][]::new));
    }

    /** The kinds of what must be answered before a part of the log can be used. */
    private static List<String> asked(Log log) {
        return log.issues().stream()
                .filter(i -> i.severity() == Issue.Severity.SERIOUS)
                .map(Issue::kind)
                .toList();
    }
}
