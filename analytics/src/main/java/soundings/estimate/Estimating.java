package soundings.estimate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.log.Reading;
import soundings.quantity.Amount;

/** Level, use and drift of every test of every tank; start here. */
public final class Estimating {
    private static final int FEWEST = 4;
    private static final int SHORTEST_DAYS = 7;
    private static final int FEWEST_NUMBERS = 3;

    private Estimating() {}

    public static Estimates of(History history, Reference reference) {
        return of(history, reference, (tank, parameter) -> true);
    }

    /** Only what a dose can be advised by: what an additive raises, and the salinity without which no ion is dosed. */
    public static Estimates ofDosed(History history, Reference reference) {
        return of(
                history,
                reference,
                (tank, p) -> p.id().equals("salinity")
                        || history.setup().additives().stream()
                                .anyMatch(a -> a.parameter().equals(p))
                        || tank.doses().stream()
                                .flatMap(c -> c.additive().stream())
                                .anyMatch(a -> a.parameter().equals(p)));
    }

    private static Estimates of(History history, Reference reference, BiPredicate<TankHistory, Parameter> asked) {
        record Test(TankHistory tank, Series series) {}
        List<Outcome> outcomes = history.tanks().stream()
                .flatMap(t -> t.series().stream().map(s -> new Test(t, s)))
                .filter(t -> t.series().parameter().isOfTheWater()
                        && asked.test(t.tank(), t.series().parameter()))
                .parallel()
                .flatMap(t -> Stream.of(one(t.tank(), t.series(), history, reference)))
                .toList();
        return new Estimates(outcomes);
    }

    static Outcome one(TankHistory tank, Series series, History history, Reference reference) {
        List<Reading> readings = Question.used(series, history.asOf());
        Optional<NotEnough> refusal = refuse(tank.tank(), series.parameter(), readings);
        if (refusal.isPresent()) {
            return refusal.get();
        }
        return Answer.of(Fitted.of(Question.of(tank, readings, history, reference)));
    }

    static Optional<NotEnough> refuse(String tank, Parameter parameter, List<Reading> readings) {
        int span = spanDays(readings);
        int n = readings.size();
        long numbers = readings.stream()
                .filter(r -> r.amount() instanceof Amount.Exact || r.amount() instanceof Amount.Between)
                .count();
        if (n < FEWEST) {
            String why = n == 0 ? "no usable reading" : "only " + n + (n == 1 ? " usable reading" : " usable readings");
            return Optional.of(
                    new NotEnough(tank, parameter, n, span, why, FEWEST - n + " more, over a week or longer"));
        }
        if (span < SHORTEST_DAYS) {
            String why = "the readings span only " + span + (span == 1 ? " day" : " days");
            return Optional.of(new NotEnough(
                    tank, parameter, n, span, why, "a test " + (SHORTEST_DAYS - span) + " days on or later"));
        }
        if (numbers < FEWEST_NUMBERS) {
            String why = "nearly all results lie beyond the end of the kit's scale";
            return Optional.of(new NotEnough(tank, parameter, n, span, why, "results that are numbers"));
        }
        return Optional.empty();
    }

    static int spanDays(List<Reading> readings) {
        Optional<LocalDate> first = readings.stream().map(Reading::date).min(LocalDate::compareTo);
        Optional<LocalDate> last = readings.stream().map(Reading::date).max(LocalDate::compareTo);
        return first.map(f -> (int) ChronoUnit.DAYS.between(f, last.orElse(f))).orElse(0);
    }
}
