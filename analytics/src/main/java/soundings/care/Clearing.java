package soundings.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.log.AsWritten;
import soundings.log.Reading;

/**
 * One substance of a tank that is run in: where it stands and when it is gone by its trend.
 *
 * @param tests all of its readings, oldest first
 * @param noneSince the first of the last readings in a row that show none
 * @param peak the highest reading since there was none before
 * @param gone days since {@code peak} at which its trend comes down to none; empty with {@code standing} saying why
 */
public record Clearing(
        Parameter parameter,
        List<Reading> tests,
        Optional<LocalDate> noneSince,
        Optional<Reading> peak,
        Optional<Falling> gone,
        Standing standing) {
    public Clearing {
        tests = List.copyOf(tests);
    }

    /** Where it stands. */
    public enum Standing {
        UNTESTED,
        NONE,
        FALLING,
        /** The highest reading is the last one or the one before. */
        RISING,
        /** Past its peak, with too few readings since. */
        TOO_FEW,
        /** The fall is no clearer than the scatter of the readings. */
        UNCLEAR
    }

    public Optional<Reading> last() {
        return tests.isEmpty() ? Optional.empty() : Optional.of(tests.get(tests.size() - 1));
    }

    /** A day of {@code gone}'s interval as a date, a part of a day counting as the whole. */
    public Optional<LocalDate> on(java.util.function.ToDoubleFunction<soundings.quantity.Interval> end) {
        return gone.flatMap(f -> peak.map(p -> p.date().plusDays((long) Math.ceil(end.applyAsDouble(f.day()) - 1e-9))));
    }

    public List<AsWritten> cells() {
        return tests.stream().map(Reading::at).toList();
    }

    /** @param none at or below it a reading shows none */
    static Clearing of(Parameter parameter, List<Reading> tests, double none) {
        if (tests.isEmpty()) {
            return new Clearing(
                    parameter, tests, Optional.empty(), Optional.empty(), Optional.empty(), Standing.UNTESTED);
        }
        int firstNone = tests.size() - noneInARow(tests, none);
        if (firstNone < tests.size()) {
            Optional<LocalDate> since = Optional.of(tests.get(firstNone).date());
            return new Clearing(parameter, tests, since, Optional.empty(), Optional.empty(), Standing.NONE);
        }
        List<Reading> since = tests.subList(lastNone(tests, none) + 1, tests.size());
        Reading peak = since.stream()
                .max(Comparator.comparingDouble((Reading r) -> r.amount().about())
                        .thenComparing(Reading::date))
                .orElseThrow();
        return fall(parameter, tests, since.subList(since.lastIndexOf(peak), since.size()), none);
    }

    private static Clearing fall(Parameter parameter, List<Reading> tests, List<Reading> limb, double none) {
        Reading peak = limb.get(0);
        Optional<Falling> gone = Falling.to(none, days(limb, peak.date()));
        Standing standing = gone.isPresent()
                ? Standing.FALLING
                : limb.size() < 2
                        ? Standing.RISING
                        : limb.size() < Falling.FEWEST ? Standing.TOO_FEW : Standing.UNCLEAR;
        return new Clearing(parameter, tests, Optional.empty(), Optional.of(peak), gone, standing);
    }

    /** Only numbers carry a trend; a reading known as a limit stays out of it. */
    private static List<Falling.At> days(List<Reading> limb, LocalDate from) {
        return limb.stream()
                .flatMap(r -> r
                        .amount()
                        .match(Optional::of, b -> Optional.empty(), a -> Optional.empty(), b -> Optional.empty())
                        .stream()
                        .map(e -> new Falling.At(
                                ChronoUnit.DAYS.between(from, r.date()),
                                r.amount().about())))
                .toList();
    }

    static int noneInARow(List<Reading> tests, double none) {
        int count = 0;
        while (count < tests.size()
                && Tests.showsNone(tests.get(tests.size() - 1 - count).amount(), none)) {
            count++;
        }
        return count;
    }

    private static int lastNone(List<Reading> tests, double none) {
        int i = tests.size() - 1;
        while (i >= 0 && !Tests.showsNone(tests.get(i).amount(), none)) {
            i--;
        }
        return i;
    }
}
