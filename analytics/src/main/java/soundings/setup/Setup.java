package soundings.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.log.Issue;

/** What the log does not say. Every list may be empty: nothing here is required. Amounts are in canonical units. */
public record Setup(
        List<Tank> tanks,
        List<FreshMix> freshMix,
        List<Target> targets,
        List<Additive> additives,
        List<Kit> kits,
        List<Pump> pumps,
        List<Column> columns,
        Map<String, String> preferences,
        List<Issue> issues) {
    public static final Setup EMPTY =
            new Setup(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of());

    public Setup {
        tanks = List.copyOf(tanks);
        freshMix = List.copyOf(freshMix);
        targets = List.copyOf(targets);
        additives = List.copyOf(additives);
        kits = List.copyOf(kits);
        pumps = List.copyOf(pumps);
        columns = List.copyOf(columns);
        preferences = Map.copyOf(preferences);
        issues = List.copyOf(issues);
    }

    public record Tank(String name, OptionalDouble litres, List<String> writtenAs, Optional<LocalDate> since) {
        public Tank {
            writtenAs = List.copyOf(writtenAs);
        }
    }

    /** What a water change brings in; {@code tank} empty: all tanks. */
    public record FreshMix(String tank, Parameter parameter, double value) {}

    /** The keeper's own range; {@code tank} empty: all tanks. */
    public record Target(String tank, Parameter parameter, double low, double high, String cell) {}

    /**
     * An additive's effect on one parameter; an additive that raises several has several rows.
     *
     * @param risePerMlInOneLitre canonical units by which 1 mL raises 1 L of water; empty while unknown
     * @param maxRisePerDay canonical units; empty: the default of the parameter
     */
    public record Additive(
            String name,
            List<String> writtenAs,
            Parameter parameter,
            OptionalDouble risePerMlInOneLitre,
            String recipe,
            OptionalDouble maxRisePerDay,
            String cell) {
        public Additive {
            writtenAs = List.copyOf(writtenAs);
        }
    }

    /** A kit's step and error (one standard deviation), canonical units; the reference pair gives its bias. */
    public record Kit(
            Parameter parameter,
            String name,
            OptionalDouble step,
            OptionalDouble error,
            Optional<LocalDate> from,
            OptionalDouble referenceTrue,
            OptionalDouble referenceRead) {}

    public record Pump(
            String tank,
            String additive,
            OptionalDouble dosesPerDay,
            OptionalDouble containerMl,
            Optional<LocalDate> filledOn,
            OptionalDouble commandedMl,
            OptionalDouble measuredMl) {}

    /** A correction of how a column was read; empty texts leave that part to the reader. */
    public record Column(
            String sheet,
            String block,
            String header,
            String meaning,
            String unit,
            String tank,
            Optional<Boolean> use) {}
}
