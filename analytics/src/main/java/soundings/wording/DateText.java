package soundings.wording;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Works out the days that the pieces of one date can mean. */
final class DateText {
    /** Day 0 of the day count of 1900 workbooks, its false leap day already behind: right from 1 March 1900 on. */
    private static final LocalDate EPOCH = LocalDate.of(1899, 12, 30);

    private final DatePieces pieces;

    private DateText(DatePieces pieces) {
        this.pieces = pieces;
    }

    static Optional<WrittenDate> read(String plain) {
        DatePieces pieces = new DatePieces(plain);
        return pieces.foreign ? Optional.empty() : new DateText(pieces).read();
    }

    private Optional<WrittenDate> read() {
        Map<DateOrder, PartialDate> readings = pieces.month.isPresent() ? named() : counted();
        if (readings.isEmpty()) {
            return pieces.figures.isEmpty() && pieces.month.isEmpty()
                    ? pieces.time.map(t -> written(Map.of(), 0.9))
                    : Optional.empty();
        }
        return Optional.of(written(readings, sure()));
    }

    /** A day that its month does not have. */
    static Optional<String> missing(String plain, DateOrder order) {
        DatePieces pieces = new DatePieces(plain);
        List<String> figures =
                pieces.figures.stream().map(DatePieces.Figures::text).toList();
        boolean named = pieces.month.isPresent() && !figures.isEmpty() && figures.size() <= 2;
        boolean counted = pieces.month.isEmpty() && (figures.size() == 2 || figures.size() == 3);
        if (pieces.foreign || !(named || counted) || figures.stream().anyMatch(f -> f.length() > 4)) {
            return Optional.empty();
        }
        boolean yearFirst =
                figures.get(0).length() == 4 || counted && figures.size() == 3 && order == DateOrder.YEAR_FIRST;
        List<String> rest = yearFirst ? figures.subList(1, figures.size()) : figures;
        boolean monthFirst = yearFirst || order == DateOrder.MONTH_FIRST;
        int day = rest.isEmpty() ? 0 : Integer.parseInt(rest.get(named || !monthFirst ? 0 : rest.size() > 1 ? 1 : 0));
        int month = named
                ? pieces.month.orElse(0)
                : Integer.parseInt(rest.get(monthFirst ? 0 : Math.min(1, rest.size() - 1)));
        String year = yearFirst ? figures.get(0) : rest.size() > (named ? 1 : 2) ? rest.get(rest.size() - 1) : "";
        return missing(year.isEmpty() ? Optional.empty() : year(year), month, day);
    }

    private static Optional<String> missing(Optional<Integer> year, int month, int day) {
        boolean fits = month >= 1 && month <= 12 && day >= 1 && day <= 31;
        OptionalInt inYear = year.map(OptionalInt::of).orElse(OptionalInt.empty());
        if (!fits || PartialDate.of(inYear, month, day).isPresent()) {
            return Optional.empty();
        }
        String name = Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        String leap = day == 29 && month == 2 ? year.map(y -> " " + y).orElse("") : "";
        return Optional.of(day + " " + name + leap + " does not exist");
    }

    private WrittenDate written(Map<DateOrder, PartialDate> readings, double sure) {
        return new WrittenDate(readings, Map.of(), pieces.time, pieces.weekday, WrittenDate.Origin.TEXT, sure);
    }

    private double sure() {
        boolean telling = pieces.month.isPresent() || pieces.weekday.isPresent() || pieces.figures.size() == 3;
        if (telling) {
            return 0.95;
        }
        boolean point = pieces.figures.size() == 2 && pieces.figures.get(1).before() == '.' && !pieces.trailingDot;
        return point ? 0.2 : pieces.figures.size() == 2 ? 0.6 : 0.7;
    }

    private Map<DateOrder, PartialDate> named() {
        int month = pieces.month.orElse(1);
        List<DatePieces.Figures> figures = pieces.figures;
        Optional<PartialDate> day = Optional.empty();
        if (figures.size() == 1 && figures.get(0).text().length() <= 2) {
            day = PartialDate.of(OptionalInt.empty(), month, figures.get(0).value());
        } else if (figures.size() == 2) {
            boolean yearFirst = figures.get(0).text().length() == 4;
            if (!yearFirst && pieces.figuresBeforeMonth == 2) {
                return Map.of(); // two days of one month: 12, 13 May
            }
            DatePieces.Figures year = figures.get(yearFirst ? 0 : 1);
            DatePieces.Figures ofMonth = figures.get(yearFirst ? 1 : 0);
            day = ofMonth.text().length() > 2
                    ? Optional.empty()
                    : year(year.text()).flatMap(y -> PartialDate.of(OptionalInt.of(y), month, ofMonth.value()));
        }
        return day.map(WrittenDate::everyOrder).orElse(Map.of());
    }

    private Map<DateOrder, PartialDate> counted() {
        List<DatePieces.Figures> figures = pieces.figures;
        if (figures.size() == 1 && figures.get(0).text().length() == 8) {
            return compact(figures.get(0).text());
        }
        boolean joined = figures.stream().skip(1).allMatch(f -> "/.-, ".indexOf(f.before()) >= 0 || f.before() == '\'');
        if (!joined
                || figures.stream()
                        .anyMatch(f -> f.text().length() > 4 || f.text().length() == 3)) {
            return Map.of();
        }
        if (figures.size() == 3) {
            return threes(
                    figures.get(0).text(), figures.get(1).text(), figures.get(2).text());
        }
        boolean pair = figures.size() == 2
                && figures.get(1).before() != ' '
                && figures.get(1).before() != ',';
        return pair ? pairs(figures.get(0).text(), figures.get(1).text()) : Map.of();
    }

    private static Map<DateOrder, PartialDate> compact(String text) {
        return year(text.substring(0, 4))
                .flatMap(y -> PartialDate.of(
                        OptionalInt.of(y),
                        Integer.parseInt(text.substring(4, 6)),
                        Integer.parseInt(text.substring(6, 8))))
                .map(WrittenDate::everyOrder)
                .orElse(Map.of());
    }

    private static Map<DateOrder, PartialDate> threes(String a, String b, String c) {
        Map<DateOrder, PartialDate> readings = new EnumMap<>(DateOrder.class);
        if (a.length() == 4) {
            put(readings, DateOrder.YEAR_FIRST, a, b, c);
            return readings.values().stream()
                    .findFirst()
                    .map(WrittenDate::everyOrder)
                    .orElse(Map.of());
        }
        put(readings, DateOrder.DAY_FIRST, c, b, a);
        put(readings, DateOrder.MONTH_FIRST, c, a, b);
        if (c.length() <= 2 && a.length() == 2 && b.length() == 2) {
            put(readings, DateOrder.YEAR_FIRST, a, b, c);
        }
        return readings;
    }

    private static void put(
            Map<DateOrder, PartialDate> readings, DateOrder order, String year, String month, String day) {
        if (month.length() <= 2 && day.length() <= 2) {
            year(year)
                    .flatMap(y -> PartialDate.of(OptionalInt.of(y), Integer.parseInt(month), Integer.parseInt(day)))
                    .ifPresent(d -> readings.put(order, d));
        }
    }

    private static Map<DateOrder, PartialDate> pairs(String a, String b) {
        Map<DateOrder, PartialDate> readings = new EnumMap<>(DateOrder.class);
        if (a.length() <= 2 && b.length() <= 2) {
            int first = Integer.parseInt(a);
            int second = Integer.parseInt(b);
            PartialDate.of(OptionalInt.empty(), second, first).ifPresent(d -> readings.put(DateOrder.DAY_FIRST, d));
            PartialDate.of(OptionalInt.empty(), first, second).ifPresent(d -> readings.put(DateOrder.MONTH_FIRST, d));
        }
        return readings;
    }

    /** Four figures as they stand from 1900 to 2100; two count from 1970 to 2069. */
    static Optional<Integer> year(String figures) {
        int number = Integer.parseInt(figures);
        if (figures.length() == 2) {
            return Optional.of(number < 70 ? 2000 + number : 1900 + number);
        }
        return figures.length() == 4 && number >= 1900 && number <= 2100 ? Optional.of(number) : Optional.empty();
    }

    /** A day count of a workbook, from 30,000 (1982) to 60,000 (2064). */
    static Optional<WrittenDate> serial(double number) {
        if (!(number >= 30_000 && number < 60_001)) {
            return figures(number);
        }
        LocalDate date = EPOCH.plusDays((long) Math.floor(number));
        long minutes = Math.round((number - Math.floor(number)) * 1440);
        boolean timed = minutes > 0 && minutes < 1440;
        Optional<java.time.LocalTime> time =
                timed ? Optional.of(java.time.LocalTime.ofSecondOfDay(minutes * 60)) : Optional.empty();
        return Optional.of(WrittenDate.certain(date, time, WrittenDate.Origin.SERIAL, 0.6));
    }

    /** Year, month and day in one number: {@code 20260503}. */
    private static Optional<WrittenDate> figures(double number) {
        int figures = number >= 19_900_101 && number <= 20_991_231 && number == Math.rint(number) ? (int) number : 0;
        return PartialDate.of(OptionalInt.of(figures / 10_000), figures / 100 % 100, figures % 100)
                .filter(d -> figures > 0)
                .flatMap(PartialDate::date)
                .map(d -> WrittenDate.certain(d, Optional.empty(), WrittenDate.Origin.TEXT, 0.6));
    }
}
