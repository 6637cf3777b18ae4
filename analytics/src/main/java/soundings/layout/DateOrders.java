package soundings.layout;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.wording.DateOrder;

/**
 * In which order the figures of a workbook's dates count, decided once from all its dates together.
 *
 * @param order empty when two orders fit about as well
 * @param because the evidence as a sentence
 */
record DateOrders(Optional<DateOrder> order, boolean written, String because) {
    /** Costs closer than this, the second over the best, are no evidence. */
    private static final double CLEAR = 1.12;

    static DateOrders decide(List<DateColumn> columns, Optional<String> preference, LocalDate today) {
        Optional<DateOrder> told = preference.flatMap(DateOrders::named);
        if (told.isPresent()) {
            return new DateOrders(told, true, "the preferences say so");
        }
        List<DateColumn> open = columns.stream().filter(DateColumn::ambiguous).toList();
        return open.isEmpty()
                ? new DateOrders(Optional.of(DateOrder.DAY_FIRST), true, "every date can be read in one way only")
                : best(open, today);
    }

    /** The order of one table: the workbook's, unless its own days plainly run in another; where only that speaks for it, none. */
    DateOrders in(DateColumn column, LocalDate today) {
        if (written || !column.ambiguous()) {
            return this;
        }
        DateOrders own = best(List.of(column), today);
        if (own.order().isEmpty() || own.order().equals(order)) {
            return this;
        }
        boolean sure = order.isEmpty() || own.order().equals(column.proven());
        return sure
                ? own
                : new DateOrders(
                        Optional.empty(),
                        false,
                        "here " + own.because() + ", while in the rest of the log it is " + words(order.get()));
    }

    /** {@code day first}, {@code dmy}, {@code m/d/y}, {@code year first} ... */
    private static Optional<DateOrder> named(String preference) {
        String first = preference.toLowerCase(Locale.ROOT).strip();
        return Stream.of(DateOrder.values())
                .filter(o ->
                        !first.isEmpty() && o.name().toLowerCase(Locale.ROOT).startsWith(first.substring(0, 1)))
                .findFirst();
    }

    private record Scored(DateOrder order, double cost) {}

    private static DateOrders best(List<DateColumn> columns, LocalDate today) {
        List<Scored> scored = Stream.of(DateOrder.values())
                .map(o -> new Scored(
                        o, columns.stream().mapToDouble(c -> c.cost(o, today)).sum()))
                .sorted(Comparator.comparingDouble(Scored::cost))
                .toList();
        Scored first = scored.get(0);
        Scored second = scored.get(1);
        boolean clear = second.cost() > first.cost() * CLEAR + 0.5;
        String how =
                words(first.order()) + " makes the days run evenly, " + words(second.order()) + " does so less well";
        return clear
                ? new DateOrders(Optional.of(first.order()), false, how)
                : new DateOrders(
                        Optional.empty(),
                        false,
                        words(first.order()) + " and " + words(second.order()) + " fit about as well");
    }

    static String words(DateOrder order) {
        return order.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
