package soundings.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.chemistry.TargetRange;
import soundings.log.Issue;

/**
 * What the log does not say. Every list may be empty: nothing here is required. Amounts are in canonical units.
 *
 * @param preferences by folded name ({@code date order}, {@code decimal mark} ...), the value as written
 */
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

    /** The same with other ranges. */
    public Setup withTargets(List<Target> ranges) {
        return new Setup(tanks, freshMix, ranges, additives, kits, pumps, columns, preferences, issues);
    }

    /** The tank of that name or of one of its other names, however it is spelt. */
    public Optional<Tank> findTank(String written) {
        return tanks.stream().filter(t -> t.isCalled(written)).findFirst();
    }

    /** What a water change brings into this tank: the tank's own mix before the mix of all tanks. */
    public Optional<FreshMix> findFreshMix(String tank, Parameter parameter) {
        return ownFirst(freshMix, FreshMix::tank, tank)
                .filter(m -> m.parameter().equals(parameter))
                .findFirst();
    }

    /** The keeper's own range for this tank, or the one of all tanks. */
    public Optional<Target> findTarget(String tank, Parameter parameter) {
        return ownFirst(targets, Target::tank, tank)
                .filter(t -> t.parameter().equals(parameter))
                .findFirst();
    }

    private <T> Stream<T> ownFirst(List<T> rows, Function<T, String> tankOf, String tank) {
        return Stream.concat(
                rows.stream().filter(r -> isTank(tankOf.apply(r), tank)),
                rows.stream().filter(r -> tankOf.apply(r).isBlank()));
    }

    private boolean isTank(String written, String tank) {
        return !written.isBlank()
                && (Names.fold(written).equals(Names.fold(tank))
                        || findTank(written).map(t -> t.isCalled(tank)).orElse(false));
    }

    /** The rows of additives that bear a name, however it is spelt; one a parameter. */
    public List<Additive> additivesCalled(String written) {
        return additives.stream().filter(a -> a.isCalled(written)).toList();
    }

    /** A preference by its name, however it is spelt. */
    public Optional<String> findPreference(String name) {
        return Optional.ofNullable(preferences.get(Names.fold(name)));
    }

    private static boolean called(String name, List<String> others, String written) {
        String folded = Names.fold(written);
        return Names.fold(name).equals(folded)
                || others.stream().anyMatch(o -> Names.fold(o).equals(folded));
    }

    /** @param cell where the litres stand */
    public record Tank(
            String name, OptionalDouble litres, List<String> writtenAs, Optional<LocalDate> since, String cell) {
        public Tank {
            writtenAs = List.copyOf(writtenAs);
        }

        public boolean isCalled(String written) {
            return called(name, writtenAs, written);
        }
    }

    /** What a water change brings in; {@code tank} empty: all tanks. */
    public record FreshMix(String tank, Parameter parameter, double value, String cell) {}

    /**
     * The keeper's own range, or one that a mentor set.
     *
     * @param tank empty: all tanks
     * @param setBy whose it is and where it stands, for a mentor's; empty: the keeper's own
     */
    public record Target(String tank, Parameter parameter, double low, double high, String cell, String setBy) {
        public Target(String tank, Parameter parameter, double low, double high, String cell) {
            this(tank, parameter, low, high, cell, "");
        }

        /** As a range with its source. */
        public TargetRange range() {
            return new TargetRange(parameter, low, high, setBy.isEmpty() ? "setup" : setBy);
        }
    }

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

        public boolean isCalled(String written) {
            return called(name, writtenAs, written);
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
            OptionalDouble measuredMl,
            String cell) {}

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
