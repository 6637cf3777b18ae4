package soundings.wording;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import soundings.sheet.Value;

/** Reads a text, a moment or a number as a date: every day it can mean, with its time. */
public final class Dates {
    private static final int LONGEST = 60;

    private Dates() {}

    public static Optional<WrittenDate> read(Value value) {
        return value.match(
                text -> read(text.text()),
                numeric -> serial(numeric.number()),
                Dates::moment,
                flag -> Optional.empty(),
                fault -> Optional.empty());
    }

    private static Optional<WrittenDate> moment(Value.Moment moment) {
        boolean timed =
                moment.shows() != Value.Shows.DATE && !moment.at().toLocalTime().equals(LocalTime.MIDNIGHT);
        Optional<LocalTime> time = timed ? Optional.of(moment.at().toLocalTime()) : Optional.empty();
        if (moment.shows() == Value.Shows.TIME && Math.abs(moment.serial()) < 1) {
            return Optional.of(new WrittenDate(
                    Map.of(),
                    Map.of(),
                    Optional.of(moment.at().toLocalTime()),
                    Optional.empty(),
                    WrittenDate.Origin.MOMENT,
                    1));
        }
        return Optional.of(WrittenDate.certain(moment.at().toLocalDate(), time, WrittenDate.Origin.MOMENT, 1));
    }

    /** A day count of a 1900 workbook between 30,000 and 60,000. */
    public static Optional<WrittenDate> serial(double number) {
        return DateText.serial(number);
    }

    /** A day told in pieces; empty where there is none such. */
    public static Optional<WrittenDate> ofParts(OptionalInt year, int month, int day) {
        return PartialDate.of(year, month, day)
                .map(d -> new WrittenDate(
                        WrittenDate.everyOrder(d),
                        Map.of(),
                        Optional.empty(),
                        Optional.empty(),
                        WrittenDate.Origin.TEXT,
                        0.9));
    }

    public static Optional<WrittenDate> read(String text) {
        String plain = Plain.of(text).strip();
        if (plain.isEmpty() || plain.length() > LONGEST || plain.chars().noneMatch(c -> c >= '0' && c <= '9')) {
            return Optional.empty();
        }
        Optional<WrittenDate> single = Weeks.read(plain).or(() -> DateText.read(plain));
        return single.or(() -> number(plain)).or(() -> range(plain));
    }

    /** Whether a text is a week's number, with or without its year. */
    public static boolean week(String text) {
        String plain = Plain.of(text).strip();
        return Weeks.missing(plain).isPresent() || Weeks.read(plain).isPresent();
    }

    /** The day of the week that a text names, and nothing else. */
    public static Optional<DayOfWeek> weekday(String text) {
        String plain = Plain.of(text).strip();
        return MonthNames.weekday(plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain);
    }

    /** Why a text that is written as a date is none in this order: {@code 31 September does not exist}; empty where it is one. */
    public static Optional<String> missing(String text, DateOrder order) {
        String plain = Plain.of(text).strip();
        return plain.isEmpty() || plain.length() > LONGEST
                ? Optional.empty()
                : Weeks.missing(plain).or(() -> DateText.missing(plain, order));
    }

    private static Optional<WrittenDate> number(String plain) {
        boolean five = plain.length() == 5 && plain.chars().allMatch(c -> c >= '0' && c <= '9');
        return five ? serial(Integer.parseInt(plain)) : Optional.empty();
    }

    private static Optional<WrittenDate> range(String plain) {
        for (String between : new String[] {" - ", " to ", " bis ", " until ", " till ", " au ", " tot ", "-"}) {
            int at = plain.indexOf(between);
            if (at > 0) {
                Optional<WrittenDate> range = range(
                        plain.substring(0, at).strip(),
                        plain.substring(at + between.length()).strip());
                if (range.isPresent()) {
                    return range;
                }
            }
        }
        return Optional.empty();
    }

    /** The first day may leave out its month or year: {@code 3-5 May 2026}. */
    private static Optional<WrittenDate> range(String first, String last) {
        Optional<WrittenDate> end = DateText.read(last);
        if (end.isEmpty() || end.get().readings().isEmpty()) {
            return Optional.empty();
        }
        Map<DateOrder, PartialDate> starts = new EnumMap<>(DateOrder.class);
        Map<DateOrder, PartialDate> ends = new EnumMap<>(DateOrder.class);
        Optional<WrittenDate> start = DateText.read(first);
        end.get()
                .readings()
                .forEach((order, until) -> start(first, start, order, until).ifPresent(from -> {
                    starts.put(order, from);
                    ends.put(order, until);
                }));
        return starts.isEmpty()
                ? Optional.empty()
                : Optional.of(new WrittenDate(
                        starts, ends, end.get().time(), Optional.empty(), WrittenDate.Origin.TEXT, 0.8));
    }

    private static Optional<PartialDate> start(
            String text, Optional<WrittenDate> start, DateOrder order, PartialDate until) {
        boolean onlyDay = text.length() <= 2 && text.chars().allMatch(c -> c >= '0' && c <= '9');
        Optional<PartialDate> from = onlyDay
                ? PartialDate.of(until.year(), until.month(), Integer.parseInt(text))
                : start.flatMap(s -> s.in(order));
        return from.flatMap(
                f -> f.year().isPresent() ? from : PartialDate.of(yearBefore(f, until), f.month(), f.day()));
    }

    private static OptionalInt yearBefore(PartialDate from, PartialDate until) {
        boolean turns = from.month() > until.month();
        return turns && until.year().isPresent() ? OptionalInt.of(until.year().getAsInt() - 1) : until.year();
    }

    /** A month, such as a sheet's name: {@code October 2025}, {@code Oct 25}, {@code 2025-10}, {@code 10-2025}, {@code Oct}. */
    public static Optional<WrittenMonth> month(String text) {
        String plain = Plain.of(text).strip();
        DatePieces pieces = new DatePieces(plain.length() > LONGEST ? "?" : plain);
        if (pieces.foreign || pieces.time.isPresent() || pieces.figures.size() > 2) {
            return Optional.empty();
        }
        return pieces.month.isPresent() ? namedMonth(pieces, plain) : countedMonth(pieces);
    }

    /** A day's figures stand before the name, {@code 12 Oct}; the month's own may, {@code 10 October}, to put sheets in order. */
    private static Optional<WrittenMonth> namedMonth(DatePieces pieces, String plain) {
        int month = pieces.month.orElse(1);
        if (pieces.figures.isEmpty()) {
            return Optional.of(new WrittenMonth(OptionalInt.empty(), month));
        }
        if (pieces.figures.size() > 1) {
            return Optional.empty();
        }
        String figures = pieces.figures.get(0).text();
        int number = Integer.parseInt(figures);
        boolean before = figures.length() <= 2 && Character.isDigit(plain.charAt(0));
        if (before && number <= 31) {
            return number == month ? Optional.of(new WrittenMonth(OptionalInt.empty(), month)) : Optional.empty();
        }
        return DateText.year(figures).map(y -> new WrittenMonth(OptionalInt.of(y), month));
    }

    private static Optional<WrittenMonth> countedMonth(DatePieces pieces) {
        if (pieces.figures.size() != 2) {
            return Optional.empty();
        }
        String a = pieces.figures.get(0).text();
        String b = pieces.figures.get(1).text();
        String year = a.length() == 4 ? a : b;
        String month = a.length() == 4 ? b : a;
        boolean valid = year.length() == 4 && month.length() <= 2;
        return valid && Integer.parseInt(month) >= 1 && Integer.parseInt(month) <= 12
                ? DateText.year(year).map(y -> new WrittenMonth(OptionalInt.of(y), Integer.parseInt(month)))
                : Optional.empty();
    }
}
