package soundings.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/** What the containers hold and how long they last. */
final class Supplies {
    /** Days to get more; common practice, no source. */
    private static final int ORDER_AHEAD_DAYS = 7;

    private static final long FAR_DAYS = 3650;

    private Supplies() {}

    static List<Supply> of(History history, Reference reference) {
        return history.tanks().stream()
                .flatMap(t -> t.doses().stream().flatMap(c -> supply(history, t, c, reference)))
                .toList();
    }

    private static Stream<Supply> supply(History history, TankHistory tank, DoseCourse course, Reference reference) {
        Matter any = new Matter(history, tank, reference.parameters().get(0), new Estimates(List.of()), reference);
        return Feeds.pump(any, course.name()).map(p -> supply(history.asOf(), tank, course, p)).stream();
    }

    private static Supply supply(LocalDate asOf, TankHistory tank, DoseCourse course, Setup.Pump pump) {
        double mlPerDay = course.mlPerDayOn(asOf);
        boolean measured = pump.commandedMl().isPresent() && pump.measuredMl().isPresent();
        double delivered = Feeds.delivered(Optional.of(pump));
        OptionalDouble left = left(asOf, course, pump, delivered);
        Optional<LocalDate> empty = emptyOn(asOf, left, mlPerDay * delivered);
        double doses = pump.dosesPerDay().orElse(0);
        return new Supply(
                tank.tank(),
                course.name(),
                mlPerDay,
                pump.dosesPerDay(),
                doses > 0 ? OptionalDouble.of(mlPerDay / doses) : OptionalDouble.empty(),
                measured ? OptionalDouble.of(delivered) : OptionalDouble.empty(),
                pump.containerMl(),
                left,
                empty,
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

    private static Optional<LocalDate> emptyOn(LocalDate asOf, OptionalDouble left, double mlPerDay) {
        if (left.isEmpty() || mlPerDay <= 0) {
            return Optional.empty();
        }
        long days = (long) Math.floor(left.getAsDouble() / mlPerDay + 1e-9);
        return days > FAR_DAYS ? Optional.empty() : Optional.of(asOf.plusDays(days + 1));
    }
}
