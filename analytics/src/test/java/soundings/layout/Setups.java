package soundings.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.setup.Setup;

/** Setups for tests. */
final class Setups {
    private Setups() {}

    static Setup tanks(String... names) {
        List<Setup.Tank> tanks = Stream.of(names)
                .map(n -> new Setup.Tank(n, OptionalDouble.of(200), List.of(), Optional.empty(), ""))
                .toList();
        return with(tanks, List.of(), Map.of());
    }

    /** These tanks, and an additive that raises alkalinity. */
    static Setup dosing(String additive, String... names) {
        Setup tanks = tanks(names);
        Setup.Additive booster = new Setup.Additive(
                additive,
                List.of(),
                Sheets.REFERENCE.parameter("alkalinity"),
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                "");
        Setup e = Setup.EMPTY;
        return new Setup(
                tanks.tanks(),
                e.freshMix(),
                e.targets(),
                List.of(booster),
                e.kits(),
                e.pumps(),
                e.columns(),
                e.preferences(),
                List.of());
    }

    /** A kit whose first step is known, canonical unit. */
    static Setup kit(String parameter, double step) {
        Setup.Kit kit = new Setup.Kit(
                Sheets.REFERENCE.parameter(parameter),
                "",
                OptionalDouble.of(step),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Setup e = Setup.EMPTY;
        return new Setup(
                e.tanks(),
                e.freshMix(),
                e.targets(),
                e.additives(),
                List.of(kit),
                e.pumps(),
                e.columns(),
                e.preferences(),
                List.of());
    }

    static Setup preferring(String name, String value) {
        return with(List.of(), List.of(), Map.of(name, value));
    }

    static Setup correcting(Setup.Column column) {
        return with(List.of(), List.of(column), Map.of());
    }

    private static Setup with(List<Setup.Tank> tanks, List<Setup.Column> columns, Map<String, String> preferences) {
        Setup e = Setup.EMPTY;
        return new Setup(
                tanks, e.freshMix(), e.targets(), e.additives(), e.kits(), e.pumps(), columns, preferences, List.of());
    }
}
