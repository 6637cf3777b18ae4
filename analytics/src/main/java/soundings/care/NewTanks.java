package soundings.care;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.PhScale;
import soundings.chemistry.TankWater;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.log.Reading;
import soundings.setup.Setup;

/** Finds the tanks that are run in and follows them from their first day. */
final class NewTanks {
    private static final String PREFERENCE = "zero tests";

    private NewTanks() {}

    static List<NewTank> of(History history, Plans plans, Rules rules) {
        return history.tanks().stream()
                .filter(t -> isNew(history, t, rules))
                .filter(t -> !isTreated(t, plans, history) && !isEstablished(history, t, plans, rules))
                .map(t -> of(history, t, plans, rules))
                .toList();
    }

    /** Young, and tested for what a new tank is tested for: ammonia or nitrite more than once. */
    private static boolean isNew(History history, TankHistory tank, Rules rules) {
        LocalDate since = since(history, tank);
        return !since.isBefore(history.asOf().minusDays(rules.days("new_tank_days")))
                && !since.isAfter(history.asOf())
                && Stream.of("ammonia", "nitrite")
                        .anyMatch(id -> Tests.of(tank, rules.parameter(id), history.asOf())
                                        .size()
                                > 1);
    }

    /** A tank set up to treat an animal is no tank that is run in, unless the keeper wrote since when it stands. */
    private static boolean isTreated(TankHistory tank, Plans plans, History history) {
        return stated(history, tank).isEmpty()
                && plans.treatments().stream().anyMatch(t -> Where.same(history.setup(), t.tank(), tank.tank()));
    }

    /** Only its log is young: animals are in, and no test since has shown ammonia or nitrite. */
    private static boolean isEstablished(History history, TankHistory tank, Plans plans, Rules rules) {
        return stated(history, tank).isEmpty()
                && Dangers.noted(history, tank, plans)
                && Stream.of("ammonia", "nitrite")
                        .allMatch(id -> Tests.of(tank, rules.parameter(id), history.asOf()).stream()
                                .allMatch(r -> Tests.showsNone(r.amount(), rules.none(id))));
    }

    static Optional<LocalDate> stated(History history, TankHistory tank) {
        return history.setup().findTank(tank.tank()).flatMap(Setup.Tank::since);
    }

    static LocalDate since(History history, TankHistory tank) {
        return stated(history, tank).orElseGet(() -> firstEntry(tank).orElse(history.asOf()));
    }

    private static Optional<LocalDate> firstEntry(TankHistory tank) {
        return Stream.of(
                        tank.series().stream()
                                .flatMap(s -> s.points().stream())
                                .map(Point::reading)
                                .map(Reading::date),
                        tank.remarks().stream().map(r -> r.date()),
                        tank.changes().stream().map(c -> c.on()))
                .flatMap(s -> s)
                .min(Comparator.naturalOrder());
    }

    private static NewTank of(History history, TankHistory tank, Plans plans, Rules rules) {
        LocalDate asOf = history.asOf();
        LocalDate since = since(history, tank);
        int needed = zerosNeeded(history, rules);
        Readiness now = Readiness.on(asOf, tank, needed, rules);
        List<Clearing> clearings = Stream.of("ammonia", "nitrite", "nitrate")
                .map(id -> clearing(tank, rules.parameter(id), asOf, rules))
                .toList();
        return new NewTank(
                tank.tank(),
                since,
                stated(history, tank).isPresent(),
                asOf,
                Dangers.noted(history, tank, plans),
                clearings,
                free(tank, asOf, rules),
                needed,
                now.zerosInARow(),
                Readiness.zerosOn(asOf, tank, needed, rules),
                now.challenge(),
                now.lacks() == NewTank.Lacks.NOTHING ? Readiness.readyOn(asOf, tank, needed, rules) : Optional.empty(),
                now.lacks(),
                earlier(history, tank, needed, rules));
    }

    private static int zerosNeeded(History history, Rules rules) {
        return history.setup()
                .findPreference(PREFERENCE)
                .filter(v -> v.strip().matches("[1-9]\\d?"))
                .map(v -> Integer.parseInt(v.strip()))
                .orElse(rules.days("zero_tests"));
    }

    private static Clearing clearing(TankHistory tank, Parameter parameter, LocalDate asOf, Rules rules) {
        double none = parameter.id().equals("nitrate") ? 0 : rules.none(parameter.id());
        return Clearing.of(parameter, Tests.of(tank, parameter, asOf), none);
    }

    private static List<NewTank.Free> free(TankHistory tank, LocalDate asOf, Rules rules) {
        List<NewTank.Free> all = new ArrayList<>();
        for (Reading ammonia : Tests.of(tank, rules.parameter("ammonia"), asOf)) {
            free(tank, ammonia, rules).ifPresent(all::add);
        }
        return all;
    }

    /** Where the ammonia is an exact figure and the water was tested within three days of it. */
    static Optional<NewTank.Free> free(TankHistory tank, Reading ammonia, Rules rules) {
        Optional<Double> total = ammonia.amount()
                .match(
                        e -> Optional.of(e.value()),
                        b -> Optional.empty(),
                        a -> Optional.empty(),
                        b -> Optional.empty());
        List<Optional<Reading>> water = Stream.of("salinity", "temperature", "ph")
                .map(id -> Tests.near(tank, rules.parameter(id), ammonia.date(), 3))
                .toList();
        if (total.isEmpty() || water.stream().anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        List<Reading> found = water.stream().map(Optional::orElseThrow).toList();
        double salinity = found.get(0).amount().about();
        if (!(salinity > 0)) {
            return Optional.empty();
        }
        TankWater tankWater = new TankWater(
                salinity, found.get(1).amount().about(), found.get(2).amount().about(), PhScale.TOTAL);
        return Optional.of(new NewTank.Free(
                ammonia.date(),
                tankWater.freeAmmonia(total.get()),
                Stream.concat(Stream.of(ammonia), found.stream()).toList()));
    }

    private static List<NewTank.Earlier> earlier(History history, TankHistory tank, int needed, Rules rules) {
        LocalDate since = since(history, tank);
        return history.tanks().stream()
                .filter(t -> !t.tank().equals(tank.tank()))
                .flatMap(t -> stated(history, t).stream()
                        .filter(s -> s.isBefore(since))
                        .map(s -> new NewTank.Earlier(t.tank(), s, daysToZeros(t, s, history.asOf(), needed, rules))))
                .sorted(Comparator.comparing(NewTank.Earlier::since).reversed())
                .toList();
    }

    private static OptionalLong daysToZeros(
            TankHistory tank, LocalDate since, LocalDate asOf, int needed, Rules rules) {
        LocalDate last = asOf.isBefore(since.plusDays(400)) ? asOf : since.plusDays(400);
        return Readiness.zerosOn(last, tank, needed, rules)
                .filter(on -> wasWatched(tank, since, rules))
                .map(on -> OptionalLong.of(ChronoUnit.DAYS.between(since, on)))
                .orElse(OptionalLong.empty());
    }

    /** A log that begins long after the tank was filled does not show how long it took. */
    private static boolean wasWatched(TankHistory tank, LocalDate since, Rules rules) {
        return Stream.of("ammonia", "nitrite")
                .anyMatch(id -> Tests.of(tank, rules.parameter(id), since.plusDays(30)).stream()
                        .anyMatch(r -> !r.date().isBefore(since)));
    }
}
