package soundings.layout;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.wording.DateOrder;
import soundings.wording.Dates;
import soundings.wording.PartialDate;
import soundings.wording.WrittenDate;

/** Gives each line of a table its day: its own, the one above it, or none. */
final class Axis {
    private final DateColumn column;
    private final Words words;
    private final DateOrders orders;
    private final LocalDate today;
    private final List<Row> rows = new ArrayList<>();

    private Axis(DateColumn column, Words words, DateOrders orders, LocalDate today) {
        this.column = column;
        this.words = words;
        this.orders = orders;
        this.today = today;
    }

    static List<Row> rows(DateColumn column, Words words, DateOrders orders, LocalDate today) {
        Axis axis = new Axis(column, words, orders, today);
        axis.read();
        return axis.rows;
    }

    private void read() {
        DateOrder order = orders.order().orElse(DateOrder.DAY_FIRST);
        boolean flipped = Flipped.moments(column.written(), order);
        List<Optional<LocalDate>> days =
                Years.complete(days(order, flipped), column.shape().topic().year(), today);
        for (int i = 0; i < days.size(); i++) {
            Optional<WrittenDate> written = column.written().get(i);
            rows.add(row(
                    i, days.get(i).map(d -> written.map(w -> onItsWeekday(d, w)).orElse(d)), flipped));
        }
    }

    /** {@code Thu 2 Jan} under a title of the old year: the year beside it whose second of January is a Thursday. */
    private static LocalDate onItsWeekday(LocalDate day, WrittenDate written) {
        boolean open = written.weekday().isPresent() && written.yearless();
        boolean other = open && !written.weekday().get().equals(day.getDayOfWeek());
        return !other
                ? day
                : Stream.of(day.plusYears(1), day.minusYears(1))
                        .filter(d -> d.getDayOfWeek().equals(written.weekday().get())
                                && d.getDayOfMonth() == day.getDayOfMonth())
                        .findFirst()
                        .orElse(day);
    }

    private List<Optional<PartialDate>> days(DateOrder order, boolean flipped) {
        return column.written().stream()
                .map(one ->
                        one.flatMap(d -> day(d, order)).map(d -> flipped && Flipped.moment(one) ? Flipped.flip(d) : d))
                .toList();
    }

    private static Optional<PartialDate> day(WrittenDate written, DateOrder order) {
        return written.in(order);
    }

    private Row row(int index, Optional<LocalDate> day, boolean flipped) {
        Line line = column.shape().table().body().get(index);
        Optional<WrittenDate> written = column.written().get(index);
        Optional<LocalTime> time = time(line, written);
        if (written.isEmpty()) {
            return below(index, line, time);
        }
        if (day.isEmpty()) {
            return new Row(
                    line,
                    Optional.empty(),
                    time,
                    true,
                    Set.of(),
                    false,
                    missing(line, "it is no day in the order of the others"));
        }
        boolean open = !written.get().settled() && orders.order().isEmpty();
        String refused = open ? "day and month cannot be told apart" : "";
        return new Row(
                line,
                day,
                time,
                true,
                inferred(written.get(), flipped),
                written.get().spans(),
                refused);
    }

    private String missing(Line line, String otherwise) {
        return column.shape()
                .findDate()
                .flatMap(f -> line.at(f.column()))
                .flatMap(c -> Dates.missing(c.shown(), orders.order().orElse(DateOrder.DAY_FIRST)))
                .orElse(otherwise);
    }

    private Set<Inferred> inferred(WrittenDate written, boolean flipped) {
        Set<Inferred> how = new HashSet<>();
        if ((!written.settled() && !orders.written()) || (flipped && written.origin() == WrittenDate.Origin.MOMENT)) {
            how.add(Inferred.DATE_ORDER);
        }
        if (written.days().get(0).year().isEmpty()) {
            how.add(Inferred.YEAR);
        }
        if (column.shape().titledDay().isPresent() && !column.shape().card()) {
            how.add(Inferred.DATE);
        }
        return how;
    }

    /** A line without a date of its own belongs to the day above when it follows directly. */
    private Row below(int index, Line line, Optional<LocalTime> time) {
        Optional<Row> above = index == 0 ? Optional.empty() : Optional.of(rows.get(index - 1));
        Optional<Cell> other = column.shape().findDate().flatMap(f -> line.at(f.column()));
        boolean ditto = other.isEmpty() || words.ditto(other.get());
        boolean follows = above.isPresent() && line.row() - above.get().line().row() == 1;
        if (!ditto || !follows || above.get().date().isEmpty()) {
            return new Row(line, Optional.empty(), time, false, Set.of(), false, missing(line, "none can be made out"));
        }
        return new Row(
                line,
                above.get().date(),
                time,
                false,
                carried(above.get()),
                above.get().several(),
                above.get().refused());
    }

    private static Set<Inferred> carried(Row above) {
        Set<Inferred> how = new HashSet<>(above.inferred());
        how.add(Inferred.DATE);
        return how;
    }

    private Optional<LocalTime> time(Line line, Optional<WrittenDate> written) {
        Optional<LocalTime> own =
                column.shape().find(Role.TIME).flatMap(f -> line.at(f.column())).flatMap(words::time);
        return own.or(() -> written.flatMap(WrittenDate::time));
    }
}
