package soundings.layout;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import soundings.wording.PartialDate;

/** Completes dates written without a year from the dates around them, the table's title, or at last from today. */
final class Years {
    private Years() {}

    static List<Optional<LocalDate>> complete(List<Optional<PartialDate>> days, OptionalInt titled, LocalDate today) {
        int first = firstYear(days, titled, today);
        List<Optional<LocalDate>> full = new ArrayList<>();
        int year = first;
        int month = 0;
        for (Optional<PartialDate> day : days) {
            int ofRow = year;
            if (day.isPresent()) {
                boolean turned = month - day.get().month() >= 6;
                int next = turned ? year + 1 : month > 0 && day.get().month() - month >= 6 ? year - 1 : year;
                ofRow = day.get().year().orElse(next);
                year = Math.abs(ofRow - next) <= 1 || written(days, ofRow) > 1 ? ofRow : next;
                month = day.get().month();
            }
            int inYear = ofRow;
            full.add(day.map(d -> at(d, inYear)));
        }
        return full;
    }

    /** In how many rows a year is written: one that stands alone and far off may be mistyped, and others do not follow it. */
    private static long written(List<Optional<PartialDate>> days, int year) {
        return days.stream()
                .flatMap(Optional::stream)
                .filter(d -> d.year().isPresent() && d.year().getAsInt() == year)
                .count();
    }

    private static boolean trusted(List<Optional<PartialDate>> days, int year, OptionalInt titled) {
        return titled.isEmpty() || Math.abs(titled.getAsInt() - year) <= 1 || written(days, year) > 1;
    }

    private static LocalDate at(PartialDate day, int year) {
        return MonthDay.of(day.month(), day.day()).atYear(year);
    }

    /** The year of the first row: the title's, that of the first dated row counted back, or the last that keeps all days past. */
    private static int firstYear(List<Optional<PartialDate>> days, OptionalInt titled, LocalDate today) {
        int turns = 0;
        int month = 0;
        LocalDate last = today;
        for (Optional<PartialDate> day : days) {
            if (day.isPresent()) {
                turns += month - day.get().month() >= 6 ? 1 : 0;
                month = day.get().month();
                if (day.get().year().isPresent()
                        && trusted(days, day.get().year().getAsInt(), titled)) {
                    return day.get().year().getAsInt() - turns;
                }
                last = at(day.get(), today.getYear());
            }
        }
        int latest = last.isAfter(today) ? today.getYear() - 1 : today.getYear();
        return titled.orElse(latest - turns);
    }
}
