package soundings.care;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.history.Use;
import soundings.log.Reading;

/** Ammonia and nitrite that harm, in tanks with animals, tested lately. */
final class Dangers {
    private static final Set<String> ANIMALS =
            Set.of("added", "feeding", "loss", "spawn", "treatment", "symptom", "condition");

    private Dangers() {}

    static List<Danger> of(History history, Plans plans, Rules rules) {
        return history.tanks().stream()
                .filter(t -> hasAnimals(history, t, plans, rules))
                .flatMap(t -> Stream.of("ammonia", "nitrite").flatMap(id -> last(history, t, id, rules).stream()))
                .toList();
    }

    /** A tank that is no longer new has animals; a new one has them where a note or the setup says so. */
    private static boolean hasAnimals(History history, TankHistory tank, Plans plans, Rules rules) {
        LocalDate since = NewTanks.since(history, tank);
        boolean old = since.isBefore(history.asOf().minusDays(rules.days("new_tank_days")));
        return old || noted(history, tank, plans);
    }

    static boolean noted(History history, TankHistory tank, Plans plans) {
        return tank.remarks().stream().anyMatch(r -> ANIMALS.contains(r.kind()))
                || plans.treatments().stream().anyMatch(t -> Where.same(history.setup(), t.tank(), tank.tank()));
    }

    /** The last test; one that was set aside as unlikely counts here, for a mistake costs only a test. */
    private static Optional<Danger> last(History history, TankHistory tank, String id, Rules rules) {
        return tank.findSeries(rules.parameter(id)).stream()
                .flatMap(s -> s.points().stream())
                .filter(p -> p.use() == Use.USED || p.use() == Use.OUTLIER)
                .filter(p -> !p.reading().date().isAfter(history.asOf()))
                .max(Comparator.comparing(p -> p.reading().date()))
                .filter(p -> Tests.apart(p.reading().date(), history.asOf()) <= rules.days("danger_days"))
                .flatMap(p -> danger(tank, p, id, rules));
    }

    private static Optional<Danger> danger(TankHistory tank, Point point, String id, Rules rules) {
        Reading reading = point.reading();
        double least = reading.amount().match(e -> e.value(), b -> 0.0, a -> a.limit(), b -> b.low());
        if (least >= rules.danger(id)) {
            return Optional.of(new Danger(tank.tank(), reading, false, least, rules.danger(id), point.because()));
        }
        return id.equals("ammonia")
                ? NewTanks.free(tank, reading, rules)
                        .filter(f -> f.mgPerLitre() >= rules.danger("free_ammonia"))
                        .map(f -> new Danger(
                                tank.tank(),
                                reading,
                                true,
                                f.mgPerLitre(),
                                rules.danger("free_ammonia"),
                                point.because()))
                : Optional.empty();
    }
}
