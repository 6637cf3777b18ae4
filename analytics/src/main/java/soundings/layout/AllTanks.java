package soundings.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.log.AsWritten;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.LogEntry;
import soundings.log.NameMerged;
import soundings.log.OneOffDose;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.log.UnreadableAmount;
import soundings.log.WaterChange;

/** Entries written for all tanks at once become one for each; what cannot be shared out is set aside. */
final class AllTanks {
    private static final Set<String> WORDS = Set.of(
            "all",
            "both",
            "every",
            "each",
            "everything",
            "all of them",
            "alle",
            "beide",
            "tous",
            "toutes",
            "les deux",
            "todos",
            "todas",
            "ambos",
            "allemaal",
            "tutti",
            "tutte");

    private static final Pattern KINDS = Pattern.compile("\\b(aquaria|aquariums|becken|bacs|bakken|systems)\\b");

    private final List<String> tanks;
    private final List<LogEntry> entries = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final Map<String, AsWritten> met = new LinkedHashMap<>();

    private AllTanks(List<String> tanks) {
        this.tanks = tanks;
    }

    record Shared(List<LogEntry> entries, List<Issue> issues) {}

    /** Whether a text in a tank's place means every tank. */
    static boolean means(String text) {
        return WORDS.contains(KINDS.matcher(Tanks.key(text)).replaceAll(" ").strip());
    }

    /** @param setUp the tanks the keeper has set up; where there are none those that are named in the log */
    static Shared share(List<LogEntry> entries, List<String> setUp) {
        List<String> tested = named(entries.stream().filter(Reading.class::isInstance));
        List<String> met = tested.isEmpty() ? named(entries.stream()) : tested;
        List<String> named = setUp.isEmpty() ? met : setUp;
        AllTanks all = new AllTanks(named);
        Map<String, Boolean> shared = new HashMap<>();
        entries.forEach(e -> all.entry(
                e, shared.computeIfAbsent(e.tank(), t -> !named.isEmpty() && !named.contains(t) && means(t))));
        all.met.forEach((name, at) -> all.issues.add(
                new NameMerged(at, name, named.size() == 1 ? named.get(0) : "each of " + String.join(", ", named))));
        return new Shared(all.entries, all.issues);
    }

    private static List<String> named(Stream<LogEntry> entries) {
        return entries.map(LogEntry::tank).distinct().filter(t -> !means(t)).toList();
    }

    private void entry(LogEntry entry, boolean shared) {
        if (shared) {
            entries.addAll(each(entry));
        } else {
            entries.add(entry);
        }
    }

    private List<LogEntry> each(LogEntry entry) {
        return entry.match(
                r -> aside(r.at(), "a result for all tanks; whose water was tested is not said"),
                d -> each(d.tank(), d.at(), t -> new DoseRate(t, d.date(), d.additive(), d.mlPerDay(), d.at())),
                o -> each(o.tank(), o.at(), t -> new OneOffDose(t, o.date(), o.additive(), o.ml(), o.at())),
                w -> w.litres().isPresent() && tanks.size() > 1
                        ? aside(w.at(), "a volume for all tanks; how much each got is not said")
                        : each(w.tank(), w.at(), t -> new WaterChange(t, w.date(), w.fraction(), w.litres(), w.at())),
                m -> each(m.tank(), m.at(), t -> new Remark(t, m.date(), m.kind(), m.text(), m.at())));
    }

    private List<LogEntry> each(String name, AsWritten at, java.util.function.Function<String, LogEntry> of) {
        met.putIfAbsent(name, at);
        return tanks.stream().map(of).toList();
    }

    private List<LogEntry> aside(AsWritten at, String why) {
        issues.add(new UnreadableAmount(at, why));
        return List.of();
    }
}
