package soundings.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.advice.Recommendation.Correction;
import soundings.advice.Recommendation.Pause;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.quantity.Interval;
import soundings.setup.Setup;

/** What the containers hold and how long they last. */
final class Supplies {
    /** Days to get more; common practice, no source. */
    private static final int ORDER_AHEAD_DAYS = 7;

    private static final long FAR_DAYS = 3650;

    private Supplies() {}

    /** @param doses what is proposed: it empties the containers from now on */
    static List<Supply> of(History history, List<Recommendation> doses, Reference reference) {
        return history.tanks().stream()
                .flatMap(t -> t.doses().stream().flatMap(c -> supply(history, t, c, doses, reference)))
                .toList();
    }

    private static Stream<Supply> supply(
            History history, TankHistory tank, DoseCourse course, List<Recommendation> doses, Reference reference) {
        List<Recommendation> own = doses.stream()
                .filter(r -> r.tank().equals(tank.tank()) && r.additive().equals(course.name()))
                .toList();
        Matter any = new Matter(history, tank, reference.parameters().get(0), new Estimates(List.of()), reference);
        return Feeds.pump(any, course.name())
                .map(p -> supply(history.asOf(), tank, course, p, Proposed.of(own)))
                .stream();
    }

    /** What is to go out of a container from now on, where that differs from what does; as the pump is set. */
    private record Proposed(OptionalDouble mlPerDay, double once, double onceByHand, int pauseDays) {
        static Proposed of(List<Recommendation> own) {
            OptionalDouble perDay = own.stream()
                    .flatMap(r -> r.proposedMlPerDay().stream())
                    .mapToDouble(Interval::mid)
                    .findFirst();
            Optional<Correction> once =
                    own.stream().flatMap(r -> r.correction().stream()).findFirst();
            return new Proposed(
                    perDay,
                    once.map(Correction::ml).orElse(0.0),
                    once.map(Correction::byHandMl).orElse(0.0),
                    own.stream()
                            .flatMap(r -> r.pause().stream())
                            .filter(p -> p.mlPerDay() == 0)
                            .mapToInt(Pause::wholeDays)
                            .findFirst()
                            .orElse(0));
        }

        boolean isNone() {
            return mlPerDay.isEmpty() && once == 0 && pauseDays == 0;
        }
    }

    private static Supply supply(
            LocalDate asOf, TankHistory tank, DoseCourse course, Setup.Pump pump, Proposed proposed) {
        double mlPerDay = course.mlPerDayOn(asOf);
        boolean measured = pump.commandedMl().isPresent() && pump.measuredMl().isPresent();
        double delivered = Feeds.delivered(Optional.of(pump));
        OptionalDouble left = left(asOf, course, pump, delivered);
        double ahead = proposed.mlPerDay().orElse(mlPerDay);
        LocalDate from = asOf.plusDays(proposed.pauseDays());
        Optional<LocalDate> empty = emptyOn(from, less(left, proposed.onceByHand()), ahead * delivered);
        double doses = pump.dosesPerDay().orElse(0);
        return new Supply(
                tank.tank(),
                course.name(),
                mlPerDay,
                proposed.mlPerDay(),
                proposed.once(),
                pump.dosesPerDay(),
                doses > 0 ? OptionalDouble.of(mlPerDay / doses) : OptionalDouble.empty(),
                measured ? OptionalDouble.of(delivered) : OptionalDouble.empty(),
                pump.containerMl(),
                left,
                empty,
                proposed.isNone() ? Optional.empty() : emptyOn(asOf, left, mlPerDay * delivered),
                empty.map(d -> d.minusDays(ORDER_AHEAD_DAYS)),
                pump.cell());
    }

    /** What was filled in less what went out from the day after filling to the report's day. */
    private static OptionalDouble left(LocalDate asOf, DoseCourse course, Setup.Pump pump, double delivered) {
        Optional<LocalDate> filled = pump.filledOn().filter(d -> !d.isAfter(asOf));
        if (filled.isEmpty() || pump.containerMl().isEmpty()) {
            return OptionalDouble.empty();
        }
        double out = 0;
        for (LocalDate day = filled.get().plusDays(1); !day.isAfter(asOf); day = day.plusDays(1)) {
            out += course.mlPerDayOn(day) * delivered;
        }
        return OptionalDouble.of(Math.max(0, pump.containerMl().getAsDouble() - out));
    }

    private static OptionalDouble less(OptionalDouble left, double once) {
        return left.isPresent() ? OptionalDouble.of(Math.max(0, left.getAsDouble() - once)) : left;
    }

    private static Optional<LocalDate> emptyOn(LocalDate asOf, OptionalDouble left, double mlPerDay) {
        if (left.isEmpty() || mlPerDay <= 0) {
            return Optional.empty();
        }
        long days = (long) Math.floor(left.getAsDouble() / mlPerDay + 1e-9);
        return days > FAR_DAYS ? Optional.empty() : Optional.of(asOf.plusDays(days + 1));
    }
}
