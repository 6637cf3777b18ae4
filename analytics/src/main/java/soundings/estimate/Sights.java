package soundings.estimate;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.history.Change;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.setup.Setup;

/** Turns readings into sights: rounding to the kit's step, limits, the kit's stated error and bias. */
final class Sights {
    /** A reading written with "about" or a question mark: common practice, no source. */
    private static final double APPROXIMATE = 2;

    private final Setup setup;
    private final Sources sources;
    private final Scales scales;
    private final double[] steps;

    private Sights(Setup setup, Sources sources, Scales scales, double[] steps) {
        this.setup = setup;
        this.sources = sources;
        this.scales = scales;
        this.steps = steps;
    }

    static List<Timeline.Timed> of(
            List<Reading> readings, List<Change> changes, Setup setup, Sources sources, Scales scales, double[] steps) {
        Sights sights = new Sights(setup, sources, scales, steps);
        Map<LocalDate, Double> changed = changes.stream()
                .collect(Collectors.toMap(Change::on, c -> c.fraction().orElse(0), Double::sum));
        return readings.stream()
                .sorted(Comparator.comparingDouble(Sights::day).thenComparing(r -> r.at().place()))
                .map(r -> new Timeline.Timed(day(r), sights.sight(r).with(sameDay(r, changed, scales))))
                .toList();
    }

    static double day(Reading reading) {
        double time = reading.time()
                .map(LocalTime::toSecondOfDay)
                .map(s -> s / 86400.0)
                .orElse(0.5);
        return reading.date().toEpochDay() + time;
    }

    /** Before or after the change of the same day? Where it is not written, half of what the change may have moved. */
    private static double sameDay(Reading reading, Map<LocalDate, Double> changed, Scales scales) {
        double moved = changed.getOrDefault(reading.date(), 0.0) * scales.spread();
        return moved * moved / 2;
    }

    /** The kit in use for this parameter on that day, by the name the reading gives where it gives one. */
    static Optional<Setup.Kit> kit(Reading reading, Setup setup) {
        return setup.kits().stream()
                .filter(k -> k.parameter().equals(reading.parameter()))
                .filter(k -> reading.method().isEmpty()
                        || k.name().isEmpty()
                        || Names.fold(k.name()).equals(Names.fold(reading.method())))
                .filter(k -> k.from().isEmpty() || !k.from().get().isAfter(reading.date()))
                .max(Comparator.comparing(k -> k.from().orElse(LocalDate.MIN)));
    }

    private Sight sight(Reading reading) {
        Optional<Setup.Kit> kit = kit(reading, setup);
        double seen = steps[sources.indexOf(reading.method())];
        double kitStep = kit.map(k -> k.step().orElse(seen)).orElse(seen);
        double looseness =
                kit.map(k -> k.error().orElse(scales.kit()) / scales.kit()).orElse(1.0)
                        * (reading.approximate() ? APPROXIMATE : 1);
        Amount amount = reading.amount().on(v -> v - kit.map(Sights::bias).orElse(0.0));
        Function<Amount.Exact, Sight> exact = e -> exact(reading, e.value(), looseness, kitStep);
        return amount.match(
                exact,
                b -> limits(reading, Double.NEGATIVE_INFINITY, b.limit(), looseness),
                a -> limits(reading, a.limit(), Double.POSITIVE_INFINITY, looseness),
                b -> limits(reading, b.low(), b.high(), looseness));
    }

    private static double bias(Setup.Kit kit) {
        return kit.referenceTrue().isPresent() && kit.referenceRead().isPresent()
                ? kit.referenceRead().getAsDouble() - kit.referenceTrue().getAsDouble()
                : 0;
    }

    /** A zero is a result under half a step, or under the kit's error where no step shows, not a number: nothing lower can be written. */
    private Sight exact(Reading reading, double value, double looseness, double kitStep) {
        if (reading.parameter().balances() && value <= 0) {
            return limits(reading, Double.NEGATIVE_INFINITY, kitStep > 0 ? kitStep / 2 : scales.kit(), looseness);
        }
        return new Sight(reading, value, value, sources.indexOf(reading.method()), looseness, kitStep * kitStep / 12);
    }

    private Sight limits(Reading reading, double low, double high, double looseness) {
        return low == high
                ? exact(reading, low, looseness, 0)
                : new Sight(reading, low, high, sources.indexOf(reading.method()), looseness, 0);
    }
}
