package soundings.history;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import soundings.chemistry.Names;
import soundings.chemistry.Parameter;
import soundings.log.AsWritten;
import soundings.setup.Setup;
import soundings.setup.SetupReading;

/** Which additive of the setup a name in the log stands for. A strength is never taken from a name. */
final class Additives {
    private Additives() {}

    /** @param rows one a parameter; a row without strength where only the parameter is known; none where nothing is */
    record Match(String name, List<Setup.Additive> rows) {}

    static Match match(AsWritten at, String written, Histories.Ground ground) {
        List<Setup.Additive> called = ground.setup().additivesCalled(written);
        if (!called.isEmpty()) {
            return new Match(called.get(0).name(), called);
        }
        return byPart(at, written, ground)
                .or(() -> byTest(at, written, ground))
                .orElseGet(() -> unknown(at, written, "it is not in the setup", List.of(), ground));
    }

    /** The one additive whose name holds all the words written, whole. */
    private static Optional<Match> byPart(AsWritten at, String written, Histories.Ground ground) {
        List<String> names = ground.setup().additives().stream()
                .filter(a -> words(a.name()).containsAll(words(written)))
                .map(Setup.Additive::name)
                .distinct()
                .toList();
        return names.size() == 1
                ? Optional.of(taken(at, written, names.get(0), "the only one whose name holds it", ground))
                : Optional.empty();
    }

    private static Set<String> words(String name) {
        return Arrays.stream(Names.fold(name).split("[^\\p{L}\\p{N}]+"))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** A dose named after a test stands for the one additive that raises it. */
    private static Optional<Match> byTest(AsWritten at, String written, Histories.Ground ground) {
        return SetupReading.findRaised(ground.reference(), written).map(parameter -> {
            List<String> names = ground.setup().additives().stream()
                    .filter(a -> a.parameter().equals(parameter))
                    .map(Setup.Additive::name)
                    .distinct()
                    .toList();
            if (names.size() == 1) {
                String because = "the only one that raises " + parameter.name().toLowerCase(Locale.ROOT);
                return taken(at, written, names.get(0), because, ground);
            }
            String because = names.isEmpty() ? "it is not in the setup" : "several additives raise it";
            return unknown(at, written, because, List.of(withoutStrength(written, parameter)), ground);
        });
    }

    private static Match taken(AsWritten at, String written, String name, String because, Histories.Ground ground) {
        ground.issues().add(new HistoryIssues.AdditiveTakenFor(at, written, name, because));
        return new Match(name, ground.setup().additivesCalled(name));
    }

    private static Match unknown(
            AsWritten at, String written, String because, List<Setup.Additive> rows, Histories.Ground ground) {
        ground.issues().add(new HistoryIssues.AdditiveUnknown(at, written, because));
        return new Match(written, rows);
    }

    private static Setup.Additive withoutStrength(String name, Parameter parameter) {
        return new Setup.Additive(name, List.of(), parameter, OptionalDouble.empty(), "", OptionalDouble.empty(), "");
    }
}
