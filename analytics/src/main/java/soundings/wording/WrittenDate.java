package soundings.wording;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.TemporalAdjusters;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A date as written, with every day it can mean.
 *
 * @param readings the day in each order that explains the text; empty for a time alone
 * @param until the last day of a range, read in the same orders; empty for a single day
 * @param origin what stood in the cell
 * @param sure 0 to 1: how much it looks like a date at all; {@code 8.2} hardly does
 */
public record WrittenDate(
        Map<DateOrder, PartialDate> readings,
        Map<DateOrder, PartialDate> until,
        Optional<LocalTime> time,
        Optional<DayOfWeek> weekday,
        Origin origin,
        double sure) {

    /** What a date was read from. */
    public enum Origin {
        TEXT,
        /** A cell shown as a date. */
        MOMENT,
        /** A number taken for a day count. */
        SERIAL
    }

    public WrittenDate {
        readings = Map.copyOf(readings);
        until = Map.copyOf(until);
    }

    static WrittenDate certain(LocalDate date, Optional<LocalTime> time, Origin origin, double sure) {
        return new WrittenDate(everyOrder(PartialDate.of(date)), Map.of(), time, Optional.empty(), origin, sure);
    }

    /** A day of the week alone: the last one before the day of the text. */
    static WrittenDate onWeekday(DayOfWeek day) {
        return new WrittenDate(Map.of(), Map.of(), Optional.empty(), Optional.of(day), Origin.TEXT, 0.8);
    }

    static Map<DateOrder, PartialDate> everyOrder(PartialDate day) {
        Map<DateOrder, PartialDate> all = new EnumMap<>(DateOrder.class);
        for (DateOrder order : DateOrder.values()) {
            all.put(order, day);
        }
        return all;
    }

    /** The day in this order, or the only day it can be; that its year stands first is never taken from the figures alone. */
    public Optional<PartialDate> in(DateOrder order) {
        List<PartialDate> days = days();
        return days.size() == 1 && !readings.keySet().equals(Set.of(DateOrder.YEAR_FIRST))
                ? Optional.of(days.get(0))
                : Optional.ofNullable(readings.get(order));
    }

    /** Whether no year is written. */
    public boolean yearless() {
        return days().stream().allMatch(d -> d.year().isEmpty());
    }

    /** The same in a year written beside it, where it has none of its own. */
    public WrittenDate inYear(OptionalInt year) {
        if (year.isEmpty() || !yearless()) {
            return this;
        }
        Map<DateOrder, PartialDate> full = new EnumMap<>(DateOrder.class);
        readings.forEach(
                (order, day) -> PartialDate.of(year, day.month(), day.day()).ifPresent(d -> full.put(order, d)));
        return new WrittenDate(full, until, time, weekday, origin, sure);
    }

    /** Whether it tells of more than one day. */
    public boolean spans() {
        return until.entrySet().stream().anyMatch(e -> !e.getValue().equals(readings.get(e.getKey())));
    }

    /** One day of the seven from Monday to Sunday; empty where this is no such week. */
    public Optional<WrittenDate> ofWeek(DayOfWeek day) {
        Optional<LocalDate> first = settled() ? days().get(0).date() : Optional.empty();
        Optional<LocalDate> last = until.values().stream().findFirst().flatMap(PartialDate::date);
        boolean week = first.filter(d -> d.getDayOfWeek() == DayOfWeek.MONDAY).isPresent()
                && last.equals(first.map(d -> d.plusDays(6)));
        return first.filter(d -> week)
                .map(monday -> certain(monday.with(TemporalAdjusters.nextOrSame(day)), time, origin, sure));
    }

    /** The different days it can mean. */
    public List<PartialDate> days() {
        return readings.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(Map.Entry::getValue)
                .distinct()
                .toList();
    }

    /** Whether only one day is possible, whatever the order. */
    public boolean settled() {
        return days().size() == 1;
    }
}
