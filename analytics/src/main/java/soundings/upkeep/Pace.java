package soundings.upkeep;

import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How long jobs waited that were done in one month: from noticing to doing, in days. */
public record Pace(YearMonth month, int done, double medianDays, long longestDays) {

    /** Months in which something with a known day was done, oldest first. */
    static List<Pace> of(List<Job> jobs) {
        Map<YearMonth, List<Long>> waited = jobs.stream()
                .filter(j -> j.daysToDo().isPresent())
                .collect(Collectors.groupingBy(
                        j -> YearMonth.from(j.done().orElseThrow()),
                        TreeMap::new,
                        Collectors.mapping(j -> j.daysToDo().getAsLong(), Collectors.toList())));
        return waited.entrySet().stream().map(e -> of(e.getKey(), e.getValue())).toList();
    }

    private static Pace of(YearMonth month, List<Long> days) {
        List<Long> sorted = days.stream().sorted().toList();
        return new Pace(month, sorted.size(), median(sorted), sorted.get(sorted.size() - 1));
    }

    static double median(List<Long> sorted) {
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2.0;
    }
}
