package soundings.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.log.Reading;
import soundings.quantity.Amount;

/** What was tested when, in one tank; readings that were set aside are left out. */
final class Tests {
    private Tests() {}

    /** Oldest first, up to and with a day. */
    static List<Reading> of(TankHistory tank, Parameter parameter, LocalDate until) {
        return tank.findSeries(parameter).stream()
                .flatMap(s -> s.used().stream())
                .map(Point::reading)
                .filter(r -> !r.date().isAfter(until))
                .sorted(Comparator.comparing(Reading::date))
                .toList();
    }

    static Optional<Reading> last(TankHistory tank, Parameter parameter, LocalDate until) {
        List<Reading> all = of(tank, parameter, until);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The test nearest to a day, at most {@code days} away; of two the earlier one. */
    static Optional<Reading> near(TankHistory tank, Parameter parameter, LocalDate day, int days) {
        return tank.findSeries(parameter).flatMap(s -> s.near(day, days));
    }

    static long apart(LocalDate one, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(one, other));
    }

    /**
     * Whether the test shows no more than {@code none}. Under a kit's first step counts too, where that step is no coarser than those
     * in use (five times {@code none}); under a higher limit it may be anything.
     */
    static boolean showsNone(Amount amount, double none) {
        return amount.match(e -> e.value() <= none, b -> b.limit() <= 5 * none, a -> false, b -> b.high() <= none);
    }
}
