package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The water changes a keeper goes on with.
 *
 * @param next the day the next one is due
 * @param share of the water, 0 to 1
 */
public record UsualChange(LocalDate next, int everyDays, double share) {
    /** Two gaps make a habit; older changes tell of another one. Common practice, no source. */
    private static final int FEWEST = 3;

    private static final int LATELY_DAYS = 90;
    /** Later than its gap by this factor, the next one is not to be counted on. */
    private static final double LAPSED = 1.7;

    /** Whether one is due on a day. */
    boolean isOn(LocalDate day) {
        return !day.isBefore(next) && (day.toEpochDay() - next.toEpochDay()) % everyDays == 0;
    }

    /** A habit and what each change of it does. */
    record Kept(UsualChange usual, Inflow.Pulse each) {}

    static Optional<Kept> of(List<Inflow.Pulse> changes, LocalDate end) {
        double noon = Inflows.noon(end);
        List<Inflow.Pulse> lately = changes.stream()
                .filter(p -> p.day() <= noon && p.day() > noon - LATELY_DAYS)
                .sorted(Comparator.comparingDouble(Inflow.Pulse::day))
                .toList();
        if (lately.size() < FEWEST) {
            return Optional.empty();
        }
        List<Double> gaps = new ArrayList<>();
        for (int i = 1; i < lately.size(); i++) {
            gaps.add(lately.get(i).day() - lately.get(i - 1).day());
        }
        int every = (int) Math.max(1, Math.round(Robust.median(gaps)));
        LocalDate last =
                LocalDate.ofEpochDay((long) lately.get(lately.size() - 1).day());
        boolean lapsed = last.plusDays(Math.round(LAPSED * every)).isBefore(end);
        return lapsed ? Optional.empty() : Optional.of(kept(lately, last.plusDays(every), every, end));
    }

    private static Kept kept(List<Inflow.Pulse> lately, LocalDate due, int every, LocalDate end) {
        List<Inflow.Pulse> bySize = lately.stream()
                .sorted(Comparator.comparingDouble(Inflow.Pulse::keep))
                .toList();
        Inflow.Pulse each = bySize.get(bySize.size() / 2);
        LocalDate next = due.isAfter(end) ? due : end.plusDays(1);
        return new Kept(new UsualChange(next, every, 1 - each.keep()), each);
    }
}
