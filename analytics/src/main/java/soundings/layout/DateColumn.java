package soundings.layout;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.DateOrder;
import soundings.wording.Dates;
import soundings.wording.DatesInText;
import soundings.wording.PartialDate;
import soundings.wording.WrittenDate;

/**
 * The dates of one table as they stand, one for each line; empty where a line has none of its own.
 *
 * @param pointed how many are written with points, as in {@code 1.5.2026}
 */
record DateColumn(Shape shape, List<Optional<WrittenDate>> written, long pointed) {
    /** Days parted by points stand day first, unless they cannot: nobody else writes them so. */
    private static final Pattern POINTED =
            Pattern.compile("(?<![0-9.])[0-9]{1,2}\\.[0-9]{1,2}\\.([0-9]{4}|[0-9]{2})?(?![0-9])");

    private static final Pattern DAY = Pattern.compile("\\s*([0-9]{1,2})(?i:st|nd|rd|th|\\.)?\\s*");
    private static final double AGAINST_POINTS = 5;

    static DateColumn of(Shape shape, Words words, long epochShift) {
        if (shape.calendar()) {
            return new DateColumn(shape, calendar(shape), 0);
        }
        if (shape.findDate().isEmpty()) {
            return new DateColumn(shape, undated(shape), pointed(shape));
        }
        if (shape.has(Role.MONTH)) {
            return new DateColumn(shape, DateParts.written(shape), 0);
        }
        Optional<Field> field = shape.findDate();
        List<Optional<WrittenDate>> written = new ArrayList<>();
        Optional<YearMonth> month = shape.topic().month();
        Map<Integer, YearMonth> banners = shape.topic().banners();
        Optional<YearMonth> current = month;
        int before = 0;
        for (Line line : shape.table().body()) {
            Optional<YearMonth> banner = Optional.ofNullable(banners.get(line.row()));
            Optional<Cell> cell = banner.isPresent() ? Optional.empty() : field.flatMap(f -> line.at(f.column()));
            current = banner.isPresent() ? banner : current;
            // Below a line of its own, such as a tank's name, the days may begin anew.
            before = line.cells().size() == 1 && line.cells().get(0).value() instanceof Value.Text ? 0 : before;
            int day = current.isPresent() ? cell.map(DateColumn::day).orElse(0) : 0;
            boolean turned = banners.isEmpty() && day > 0 && before - day >= 15;
            current = turned ? current.map(m -> m.plusMonths(1)) : current;
            before = day > 0 ? day : before;
            Optional<YearMonth> inMonth = current;
            Optional<WrittenDate> found = day > 0
                    ? inMonth.flatMap(m -> onDay(m, day))
                    : cell.flatMap(c -> words.date(c)).map(d -> shifted(d, epochShift));
            written.add(found.filter(d -> !d.readings().isEmpty())
                    .or(() -> cell.flatMap(c -> inTitledWeek(shape, c)))
                    .map(d -> inWeek(shape, line, d))
                    .map(d -> d.inYear(DateParts.year(shape, line))));
        }
        return new DateColumn(shape, List.copyOf(written), pointed(shape));
    }

    /** A weekday's name under the Monday of its week, {@code Week from Monday 2 March 2026}. */
    private static Optional<WrittenDate> inTitledWeek(Shape shape, Cell cell) {
        return Dates.weekday(cell.shown())
                .flatMap(w -> shape.topic().day().flatMap(DateColumn::monday).map(d -> d.plusDays(w.getValue() - 1L)))
                .flatMap(DateColumn::on);
    }

    /** The only one of the days it can mean that is a Monday. */
    private static Optional<LocalDate> monday(WrittenDate date) {
        List<LocalDate> mondays = date.days().stream()
                .flatMap(d -> d.date().stream())
                .filter(d -> d.getDayOfWeek() == DayOfWeek.MONDAY)
                .toList();
        return mondays.size() == 1 ? Optional.of(mondays.get(0)) : Optional.empty();
    }

    /** A week's number and the day of the week beside it are a day. */
    private static WrittenDate inWeek(Shape shape, Line line, WrittenDate week) {
        Optional<DayOfWeek> day =
                !week.spans() || !HeadedDays.in(shape.fields()).isEmpty()
                        ? Optional.empty()
                        : shape.fields().stream()
                                .filter(f -> !f.role().gives())
                                .flatMap(f -> line.at(f.column()).stream())
                                .flatMap(c -> Dates.weekday(c.shown()).stream())
                                .findFirst();
        return day.flatMap(week::ofWeek).orElse(week);
    }

    /** The rows of a calendar go from one week to the next; each cell has its own day. */
    private static List<Optional<WrittenDate>> calendar(Shape shape) {
        YearMonth month = shape.topic().month().orElseThrow();
        List<Optional<WrittenDate>> written = new ArrayList<>();
        int day = 1;
        for (Line line : shape.table().body()) {
            day = line.cells().stream()
                    .mapToInt(DateColumn::day)
                    .filter(d -> d > 0 && month.isValidDay(d))
                    .findFirst()
                    .orElse(day);
            written.add(onDay(month, day));
        }
        return List.copyOf(written);
    }

    private static long pointed(Shape shape) {
        Stream<Cell> above = shape.titledDay().isPresent()
                ? shape.table().titles().stream().flatMap(l -> l.cells().stream())
                : shape.findDate().or(shape::findDiary).stream().flatMap(f -> shape.column(f).cells().stream());
        Stream<String> texts =
                above.filter(c -> c.value() instanceof Value.Text).map(Cell::shown);
        Stream<String> sheet =
                shape.titledDay().isPresent() ? Stream.of(shape.table().area().sheet()) : Stream.of();
        return Stream.concat(texts, sheet)
                .filter(t -> POINTED.matcher(t).find())
                .count();
    }

    /** Each row has the day its text begins with, or the one above the table. */
    private static List<Optional<WrittenDate>> undated(Shape shape) {
        Optional<Field> diary = shape.findDiary();
        Optional<WrittenDate> titled = shape.titledDay();
        return shape.table().body().stream()
                .map(line -> titled.or(() -> diary.flatMap(f -> line.at(f.column()))
                        .flatMap(c -> DatesInText.leading(c.shown()))
                        .map(DatesInText.Found::date)))
                .toList();
    }

    /** The day of a month that a cell holds; 0 where it holds none. */
    static int day(Cell cell) {
        double number = cell.value() instanceof Value.Numeric numeric ? numeric.number() : dayInText(cell);
        return Column.dayOfMonth(number) ? (int) number : 0;
    }

    private static double dayInText(Cell cell) {
        Matcher day = DAY.matcher(cell.value() instanceof Value.Text text ? text.text() : "");
        return day.matches() ? Integer.parseInt(day.group(1)) : 0;
    }

    private static Optional<WrittenDate> onDay(YearMonth month, int day) {
        return month.isValidDay(day) ? on(month.atDay(day)) : Optional.empty();
    }

    private static Optional<WrittenDate> on(LocalDate date) {
        return Dates.read(new Value.Moment(0, date.atStartOfDay(), Value.Shows.DATE));
    }

    /** Bare day counts of a workbook that counts from 1904 start four years later. */
    private static WrittenDate shifted(WrittenDate date, long days) {
        return date.origin() != WrittenDate.Origin.SERIAL || days == 0
                ? date
                : date.days().get(0).date().flatMap(d -> on(d.plusDays(days))).orElse(date);
    }

    /** How unlikely this column looks when read in an order: days far apart from row to row, days that do not exist, days to come. */
    double cost(DateOrder order, LocalDate today) {
        double cost = order == DateOrder.DAY_FIRST ? 0 : AGAINST_POINTS * pointed;
        long last = Long.MIN_VALUE;
        for (Optional<WrittenDate> one : written) {
            Optional<LocalDate> date = one.flatMap(d -> d.in(order)).map(DateColumn::anyYear);
            cost += one.isPresent() && date.isEmpty() ? 12 : 0;
            if (date.isPresent()) {
                long day = date.get().toEpochDay();
                cost += last == Long.MIN_VALUE ? 0 : Math.log1p((double) Math.abs(day - last));
                cost += day > today.toEpochDay() + 1 ? 4 : 0;
                last = day;
            }
        }
        return cost;
    }

    private static LocalDate anyYear(PartialDate day) {
        return day.date().orElseGet(() -> LocalDate.of(2000, day.month(), day.day()));
    }

    /** The only order in which all those dates can be meant that allow for one order alone. */
    Optional<DateOrder> proven() {
        List<DateOrder> alone = written.stream()
                .flatMap(Optional::stream)
                .filter(d ->
                        d.origin() == WrittenDate.Origin.TEXT && d.readings().size() == 1)
                .flatMap(d -> d.readings().keySet().stream())
                .toList();
        return alone.size() >= 2 && alone.stream().distinct().count() == 1
                ? Optional.of(alone.get(0))
                : Optional.empty();
    }

    boolean ambiguous() {
        return written.stream().flatMap(Optional::stream).anyMatch(d -> !d.settled());
    }
}
