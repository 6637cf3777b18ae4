package soundings.layout;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import soundings.wording.DateOrder;
import soundings.wording.PartialDate;
import soundings.wording.WrittenDate;

/**
 * Dates a spreadsheet took for the other order while they were typed: where day and month could be exchanged it stored
 * the wrong day, where they could not it left the text. Real dates up to the 12th among texts from the 13th on show it.
 */
final class Flipped {
    private Flipped() {}

    static boolean moment(Optional<WrittenDate> written) {
        return written.filter(d -> d.origin() == WrittenDate.Origin.MOMENT).isPresent();
    }

    static PartialDate flip(PartialDate date) {
        return date.day() <= 12 ? new PartialDate(date.year(), date.day(), date.month()) : date;
    }

    /** Whether the real dates of a column were stored with day and month exchanged. */
    static boolean moments(List<Optional<WrittenDate>> column, DateOrder order) {
        boolean texts = column.stream().flatMap(Optional::stream).anyMatch(d -> late(d, order));
        boolean moments = column.stream().anyMatch(Flipped::moment);
        boolean early = column.stream()
                .filter(Flipped::moment)
                .allMatch(d ->
                        d.flatMap(w -> w.in(order)).filter(p -> p.day() <= 12).isPresent());
        if (!texts || !moments || !early) {
            return false;
        }
        return roughness(column, order, Flipped::flip) < 0.7 * roughness(column, order, d -> d);
    }

    private static boolean late(WrittenDate date, DateOrder order) {
        return date.origin() == WrittenDate.Origin.TEXT
                && date.in(order).filter(p -> p.day() > 12).isPresent();
    }

    private static double roughness(
            List<Optional<WrittenDate>> column, DateOrder order, UnaryOperator<PartialDate> change) {
        List<LocalDate> days = column.stream()
                .flatMap(one -> one
                        .flatMap(d -> d.in(order))
                        .map(d -> moment(one) ? change.apply(d) : d)
                        .flatMap(PartialDate::date)
                        .stream())
                .toList();
        double rough = 0;
        for (int i = 1; i < days.size(); i++) {
            rough += Math.log1p(
                    (double) Math.abs(days.get(i).toEpochDay() - days.get(i - 1).toEpochDay()));
        }
        return rough;
    }
}
