package soundings.layout;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.LogEntry;
import soundings.log.NameMerged;
import soundings.log.OneOffDose;
import soundings.setup.Setup;
import soundings.wording.DoseSubject;
import soundings.wording.Vocabulary;

/**
 * Names that say nothing but which test a dose raises, {@code KH}, {@code KH solution}, {@code alk pump}: where a log has several for one
 * test they are one additive, else they would count as doses side by side. A name of the setup stays.
 */
final class AdditiveNames {
    private final Map<String, String> taken = new HashMap<>();
    private final Map<String, Issue> issues = new LinkedHashMap<>();

    private AdditiveNames() {}

    record Named(List<LogEntry> entries, List<Issue> issues) {}

    static Named of(List<LogEntry> entries, Setup setup, Vocabulary vocabulary) {
        Map<String, Map<String, Integer>> byTest = new LinkedHashMap<>();
        for (LogEntry entry : entries) {
            additive(entry)
                    .filter(a -> setup.additivesCalled(a).isEmpty())
                    .filter(a -> DoseSubject.of(a, vocabulary).general())
                    .ifPresent(a -> byTest.computeIfAbsent(
                                    DoseSubject.of(a, vocabulary).parameter(), k -> new LinkedHashMap<>())
                            .merge(a, 1, Integer::sum));
        }
        AdditiveNames names = new AdditiveNames();
        byTest.values().forEach(group -> names.take(group, vocabulary));
        List<LogEntry> named = entries.stream().map(names::named).toList();
        return new Named(named, List.copyOf(names.issues.values()));
    }

    private static Optional<String> additive(LogEntry entry) {
        return entry.match(
                reading -> Optional.empty(),
                rate -> Optional.of(rate.additive()),
                once -> Optional.of(once.additive()),
                change -> Optional.empty(),
                remark -> Optional.empty());
    }

    /** The test's own name, or the one written most. */
    private void take(Map<String, Integer> group, Vocabulary vocabulary) {
        if (group.keySet().stream().map(Names::fold).distinct().count() < 2) {
            return;
        }
        String most = group.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        String name = group.keySet().stream()
                .filter(n -> DoseSubject.test(n, vocabulary).filter(n::equals).isPresent())
                .findFirst()
                .orElse(most);
        group.keySet().stream().filter(n -> !n.equals(name)).forEach(n -> taken.put(n, name));
    }

    private LogEntry named(LogEntry entry) {
        return entry.match(
                reading -> reading,
                d -> name(d.additive(), d.at())
                        .<LogEntry>map(n -> new DoseRate(d.tank(), d.date(), n, d.mlPerDay(), d.at()))
                        .orElse(d),
                o -> name(o.additive(), o.at())
                        .<LogEntry>map(n -> new OneOffDose(o.tank(), o.date(), n, o.ml(), o.at()))
                        .orElse(o),
                change -> change,
                remark -> remark);
    }

    private Optional<String> name(String additive, AsWritten at) {
        Optional<String> name = Optional.ofNullable(taken.get(additive));
        name.filter(n -> !Names.fold(n).equals(Names.fold(additive)))
                .ifPresent(n -> issues.putIfAbsent(additive, new NameMerged(at, additive, n)));
        return name;
    }
}
