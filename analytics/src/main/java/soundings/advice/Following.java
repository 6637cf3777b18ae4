package soundings.advice;

import java.util.List;
import java.util.Optional;
import soundings.advice.Followed.Kept;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.quantity.Interval;

/** Last month's proposals against this month's doses. */
public final class Following {
    /** A change of less than this part of the proposed one is none, one that misses it by less is it. Common practice, no source. */
    private static final double STIR = 0.2;

    private Following() {}

    /** One month end: what was known and advised. */
    public record End(History history, Estimates estimates, Advice advice) {}

    public static List<Followed> of(End then, End now) {
        return then.advice().recommendations().stream()
                .flatMap(r -> r.proposedMlPerDay().flatMap(p -> one(r, p, then, now)).stream())
                .toList();
    }

    private static Optional<Followed> one(Recommendation r, Interval proposed, End then, End now) {
        Optional<DoseCourse> course = now.history().tanks().stream()
                .filter(t -> t.tank().equals(r.tank()))
                .flatMap(t -> t.doses().stream())
                .filter(c -> c.name().equals(r.additive()))
                .findFirst();
        return estimate(then, r).map(before -> {
            double since = course.map(c -> c.mlPerDayOn(now.history().asOf())).orElse(0.0);
            double present = r.presentMlPerDay().orElse(0);
            return new Followed(
                    r.tank(),
                    r.parameter(),
                    r.additive(),
                    then.history().asOf(),
                    present,
                    proposed,
                    since,
                    course.flatMap(c -> firstChange(c, then, now)),
                    kept(present, proposed, since),
                    before.level(),
                    estimate(now, r).map(Estimate::level),
                    before.drift(),
                    estimate(now, r).map(Estimate::drift));
        });
    }

    private static Optional<Estimate> estimate(End end, Recommendation r) {
        return end.estimates()
                .find(r.tank(), r.parameter())
                .flatMap(o -> o.match(Optional::of, none -> Optional.empty()));
    }

    private static Optional<java.time.LocalDate> firstChange(DoseCourse course, End then, End now) {
        return then.history()
                .asOf()
                .plusDays(1)
                .datesUntil(now.history().asOf().plusDays(1))
                .filter(day -> course.mlPerDayOn(day) != course.mlPerDayOn(day.minusDays(1)))
                .findFirst();
    }

    static Kept kept(double present, Interval proposed, double since) {
        double asked = proposed.mid() - present;
        double done = since - present;
        if (Math.abs(done) < STIR * Math.abs(asked)) {
            return Kept.NOT;
        }
        if (proposed.low() <= since && since <= proposed.high() || Math.abs(done - asked) <= STIR * Math.abs(asked)) {
            return Kept.FOLLOWED;
        }
        return done * asked > 0 ? Kept.PARTLY : Kept.OTHERWISE;
    }
}
