package soundings.history;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;
import soundings.log.DoseRate;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.LogEntry;
import soundings.log.OneOffDose;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.log.VolumeTold;
import soundings.log.WaterChange;
import soundings.setup.Settings;
import soundings.setup.Setup;

/** Puts a log in order: by tank and test, each reading used or set aside with its reason, doses as courses, changes completed. */
public final class Histories {
    /** The order of entries of one day: by time where one is written, then by place, so that no reading order matters. */
    static final Comparator<LogEntry> IN_TIME = Comparator.comparing(LogEntry::date)
            .thenComparing(Histories::time)
            .thenComparing(e -> e.at().sheet())
            .thenComparing(e -> e.at().cell())
            .thenComparing(e -> e.at().text())
            .thenComparing(e -> e.getClass().getSimpleName());

    private Histories() {}

    public static History of(Log log, Setup setup, Reference reference, Settings settings) {
        Map<String, Entries> byTank = byTank(log, setup);
        LocalDate asOf =
                Period.asOf(byTank.values().stream().flatMap(Entries::all).toList(), settings);
        List<Issue> issues = new ArrayList<>();
        List<TankHistory> tanks = byTank.entrySet().stream()
                .map(e -> tank(
                        e.getKey(), e.getValue(), told(log, e.getKey()), new Ground(setup, reference, asOf, issues)))
                .toList();
        return new History(asOf, tanks, setup, issues);
    }

    /** What every tank is read against. */
    record Ground(Setup setup, Reference reference, LocalDate asOf, List<Issue> issues) {}

    /** The volume that the log itself tells of a tank. */
    private static OptionalDouble told(Log log, String tank) {
        return log.issues().stream()
                .filter(VolumeTold.class::isInstance)
                .map(VolumeTold.class::cast)
                .filter(v -> v.tank().equals(tank) && v.litres().isPresent())
                .mapToDouble(v -> v.litres().getAsDouble())
                .findFirst();
    }

    private static TankHistory tank(String tank, Entries entries, OptionalDouble told, Ground ground) {
        OptionalDouble litres =
                ground.setup().findTank(tank).map(Setup.Tank::litres).orElse(OptionalDouble.empty());
        List<DoseCourse> doses = Courses.of(entries.rates(), entries.oneOffs(), ground);
        List<Change> changes = Changes.of(entries.changes(), litres.isPresent() ? litres : told, ground.issues());
        SeriesMaking making = new SeriesMaking(tank, litres, doses, changes, ground);
        return new TankHistory(tank, litres, making.series(entries.readings()), doses, changes, entries.remarks());
    }

    private static Map<String, Entries> byTank(Log log, Setup setup) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, List<LogEntry>> byTank = new LinkedHashMap<>();
        log.tanks().forEach(t -> byTank.putIfAbsent(tankName(t, setup, names), new ArrayList<>()));
        log.entries().stream()
                .sorted(IN_TIME)
                .forEach(entry -> byTank.computeIfAbsent(tankName(entry.tank(), setup, names), t -> new ArrayList<>())
                        .add(entry));
        Map<String, Entries> sorted = new LinkedHashMap<>();
        byTank.forEach((tank, entries) -> sorted.put(tank, Entries.of(entries)));
        return sorted;
    }

    /** The setup's name where it knows the tank, else the first spelling met. */
    private static String tankName(String written, Setup setup, Map<String, String> names) {
        return names.computeIfAbsent(
                Names.fold(written),
                f -> setup.findTank(written).map(Setup.Tank::name).orElse(written));
    }

    private static String time(LogEntry entry) {
        return entry.match(r -> r.time().map(Object::toString).orElse(""), d -> "", o -> "", w -> "", m -> "");
    }

    /** One tank's entries by kind, each in time. */
    record Entries(
            List<Reading> readings,
            List<DoseRate> rates,
            List<OneOffDose> oneOffs,
            List<WaterChange> changes,
            List<Remark> remarks) {
        static Entries of(List<LogEntry> sorted) {
            return new Entries(
                    only(sorted, e -> e.match(Optional::of, d -> none(), o -> none(), w -> none(), m -> none())),
                    only(sorted, e -> e.match(r -> none(), Optional::of, o -> none(), w -> none(), m -> none())),
                    only(sorted, e -> e.match(r -> none(), d -> none(), Optional::of, w -> none(), m -> none())),
                    only(sorted, e -> e.match(r -> none(), d -> none(), o -> none(), Optional::of, m -> none())),
                    only(sorted, e -> e.match(r -> none(), d -> none(), o -> none(), w -> none(), Optional::of)));
        }

        private static <T> Optional<T> none() {
            return Optional.empty();
        }

        private static <T> List<T> only(List<LogEntry> entries, Function<LogEntry, Optional<T>> kind) {
            return entries.stream().flatMap(e -> kind.apply(e).stream()).toList();
        }

        Stream<LogEntry> all() {
            return Stream.of(readings, rates, oneOffs, changes, remarks).flatMap(List::stream);
        }
    }

    /** The month a report is for and its last day. */
    static final class Period {
        private Period() {}

        static LocalDate asOf(List<LogEntry> entries, Settings settings) {
            YearMonth month = settings.month().orElseGet(() -> lastMonth(entries, settings));
            LocalDate end = month.atEndOfMonth();
            if (entries.stream().anyMatch(e -> e.date().isAfter(end))) {
                return end;
            }
            return entries.stream()
                    .map(LogEntry::date)
                    .filter(d -> YearMonth.from(d).equals(month))
                    .max(Comparator.naturalOrder())
                    .orElse(end);
        }

        private static YearMonth lastMonth(List<LogEntry> entries, Settings settings) {
            return entries.stream()
                    .filter(Period::isGoodReading)
                    .map(LogEntry::date)
                    .max(Comparator.naturalOrder())
                    .or(() -> entries.stream().map(LogEntry::date).max(Comparator.naturalOrder()))
                    .map(YearMonth::from)
                    .orElse(YearMonth.from(settings.today()));
        }

        private static boolean isGoodReading(LogEntry entry) {
            return entry.match(r -> r.refused().isEmpty(), d -> false, o -> false, w -> false, m -> false);
        }
    }
}
