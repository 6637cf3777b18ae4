package soundings.layout;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Gives months named without a year theirs: counted back from the last sheet, which is not in the future, or on from one that has a year. */
final class MonthYears {
    private MonthYears() {}

    /** @param months as the sheets of a workbook name them, in the order of the sheets; empty for other sheets */
    static Map<Integer, YearMonth> of(List<Optional<Named>> months, LocalDate today) {
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < months.size(); i++) {
            if (months.get(i).isPresent()) {
                at.add(i);
            }
        }
        Map<Integer, YearMonth> full = new LinkedHashMap<>();
        int year = lastYear(months, at, today);
        int later = 0;
        for (int k = at.size() - 1; k >= 0; k--) {
            Named named = months.get(at.get(k)).orElseThrow();
            year = named.year().orElse(later > 0 && named.month() > later ? year - 1 : year);
            later = named.month();
            full.put(at.get(k), YearMonth.of(year, named.month()));
        }
        return full;
    }

    /** A month as a sheet's name says it. */
    record Named(OptionalInt year, int month) {}

    private static int lastYear(List<Optional<Named>> months, List<Integer> at, LocalDate today) {
        if (at.isEmpty()) {
            return today.getYear();
        }
        int turns = 0;
        for (int k = 0; k < at.size(); k++) {
            Named named = months.get(at.get(k)).orElseThrow();
            boolean turned = k > 0
                    && named.month() < months.get(at.get(k - 1)).orElseThrow().month();
            turns = named.year().isPresent() ? 0 : turns + (turned ? 1 : 0);
        }
        int counted = turns;
        Named last = months.get(at.get(at.size() - 1)).orElseThrow();
        return at.stream()
                .map(i -> months.get(i).orElseThrow())
                .filter(n -> n.year().isPresent())
                .reduce((a, b) -> b)
                .map(n -> n.year().getAsInt() + counted)
                .orElse(
                        YearMonth.of(today.getYear(), last.month()).isAfter(YearMonth.from(today))
                                ? today.getYear() - 1
                                : today.getYear());
    }
}
