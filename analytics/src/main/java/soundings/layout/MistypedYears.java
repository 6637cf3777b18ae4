package soundings.layout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import soundings.log.Inferred;

/** Finds days whose year cannot be meant: far from the days of the rows around them, and close to them in another year. */
final class MistypedYears {
    private static final int CLOSE_DAYS = 45;
    private static final int FAR_DAYS = 180;

    private MistypedYears() {}

    /** One row's probable day; {@code index} is its place among the rows given. */
    record Mistyped(int index, LocalDate written, LocalDate meant) {}

    /** @param rows of one tank, in order; only those with a day of their own count */
    static List<Mistyped> in(List<Row> rows) {
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).own() && rows.get(i).date().isPresent()) {
                own.add(i);
            }
        }
        List<Mistyped> found = new ArrayList<>();
        for (int k = 0; k < own.size(); k++) {
            check(rows, own, k).ifPresent(found::add);
        }
        return found.size() * 10 > own.size() + 20 ? List.of() : found;
    }

    private static Optional<Mistyped> check(List<Row> rows, List<Integer> own, int k) {
        LocalDate day = day(rows, own, k);
        List<LocalDate> around = new ArrayList<>();
        for (int step : new int[] {-3, -2, -1, 1, 2, 3}) {
            if (k + step >= 0 && k + step < own.size()) {
                around.add(day(rows, own, k + step));
            }
        }
        long far = around.stream().filter(d -> apart(d, day) > FAR_DAYS).count();
        if (around.size() < 3 || far < Math.max(3, around.size() - 1)) {
            return Optional.empty();
        }
        return inOtherYear(day, around).map(meant -> new Mistyped(own.get(k), day, meant));
    }

    private static Optional<LocalDate> inOtherYear(LocalDate day, List<LocalDate> around) {
        return around.stream()
                .map(LocalDate::getYear)
                .distinct()
                .filter(y -> y != day.getYear())
                .map(day::withYear)
                .filter(d ->
                        around.stream().filter(a -> apart(a, d) <= CLOSE_DAYS).count()
                                >= Math.max(2, around.size() / 2))
                .findFirst();
    }

    private static LocalDate day(List<Row> rows, List<Integer> own, int k) {
        return rows.get(own.get(k)).date().orElseThrow();
    }

    private static long apart(LocalDate one, LocalDate other) {
        return Math.abs(one.toEpochDay() - other.toEpochDay());
    }

    static Row corrected(Row row, Mistyped mistyped) {
        return row.on(mistyped.meant(), Set.of(Inferred.YEAR))
                .refuse("the year " + mistyped.written().getYear() + " cannot be meant among its neighbours");
    }
}
