package soundings.layout;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.Dates;
import soundings.wording.DatesInText;
import soundings.wording.WrittenDate;

/** The days of a grid's cells: weekdays across in the week of the row, the line of dates or the title; months across and days down, or turned. */
final class GridDays {
    private static final int FEWEST = 3;
    private static final int MANY_DAYS = 15;
    private static final double TELLING = 0.7;
    private static final Pattern NUMBERED =
            Pattern.compile("(?i)(?:^|[^\\p{L}])(?:w|wk|week|kw|woche|sem|semaine|semana)[. ]*([0-9]{1,2})(?![0-9])");
    private static final Pattern WEEK =
            Pattern.compile("(?i)\\s*(?:w|wk|week|kw|woche|sem|semaine|semana)[. ]*(?:no|nr|number|#)?[. ]*");

    private final Line head;
    private final Words words;
    private final OptionalInt year;
    private final Optional<YearMonth> month;
    private final Map<Integer, DayOfWeek> weekdays;
    private final Map<Integer, Month> months;
    private final Map<Integer, Integer> numbers;
    private final Optional<LocalDate> titled;
    private final Map<Integer, LocalDate> dated = new HashMap<>();
    /** Where a line says its week, or its day of the month. */
    private final Optional<Integer> told;

    private final List<Integer> before;

    private GridDays(String sheet, List<Line> above, Line head, Optional<Line> dates, List<Line> lines, Words words) {
        this.head = head;
        this.words = words;
        this.weekdays = weekdays(head);
        this.months = weekdays.isEmpty() ? months(head, words) : Map.of();
        this.numbers = weekdays.isEmpty() && months.isEmpty() ? numbers(head) : Map.of();
        List<String> texts = Stream.concat(
                        above.stream().flatMap(l -> l.cells().stream()).map(Cell::shown), Stream.of(sheet))
                .toList();
        this.year = texts.stream().flatMapToInt(t -> words.year(t).stream()).findFirst();
        this.month = texts.stream().flatMap(t -> words.month(t).stream()).findFirst();
        dates.ifPresent(this::date);
        Optional<LocalDate> over = above.stream()
                .flatMap(l -> l.cells().stream())
                .flatMap(c -> week(c.shown()).stream())
                .reduce((a, b) -> b);
        this.titled = over.isPresent() ? over : week(sheet);
        int first = columns().stream().mapToInt(c -> c).min().orElse(0);
        List<Integer> leading = lines.stream()
                .flatMap(l -> l.cells().stream())
                .map(c -> c.at().column())
                .filter(c -> c < first)
                .distinct()
                .sorted()
                .toList();
        this.told = leading.stream().filter(c -> tells(c, lines)).findFirst();
        this.before =
                leading.stream().filter(c -> told.filter(c::equals).isEmpty()).toList();
    }

    static GridDays of(String sheet, List<Line> above, Line head, Optional<Line> dates, List<Line> lines, Words words) {
        return new GridDays(sheet, above, head, dates, lines, words);
    }

    /** Whether a line may head a grid: days of the week, months or nearly all days of a month side by side. */
    static boolean heads(Line line, Words words) {
        return line.cells().size() >= FEWEST
                && (!weekdays(line).isEmpty()
                        || !months(line, words).isEmpty()
                        || !numbers(line).isEmpty());
    }

    /** Whether a line has the dates of the columns that a head names the weekdays of. */
    static boolean dates(Line line, Line head, Words words) {
        long filled = weekdays(head).keySet().stream()
                .flatMap(c -> line.at(c).stream())
                .filter(c -> words.kind(c) == Kind.DATE || DateColumn.day(c) > 0)
                .count();
        return filled >= FEWEST && filled >= line.cells().size() - 1;
    }

    private static Map<Integer, DayOfWeek> weekdays(Line line) {
        Map<Integer, DayOfWeek> days = new LinkedHashMap<>();
        if (HeadedDays.heads(line)) {
            for (Cell cell : line.cells()) {
                Dates.weekday(cell.shown())
                        .filter(d -> !days.containsValue(d))
                        .ifPresent(d -> days.put(cell.at().column(), d));
            }
        }
        return days;
    }

    private static Map<Integer, Month> months(Line line, Words words) {
        Map<Integer, Month> months = new LinkedHashMap<>();
        for (Cell cell : line.cells()) {
            words.monthNamed(cell)
                    .map(Month::of)
                    .filter(m -> !months.containsValue(m))
                    .ifPresent(m -> months.put(cell.at().column(), m));
        }
        boolean most = months.size() >= FEWEST && months.size() >= line.cells().size() - 2;
        return most ? months : Map.of();
    }

    private static Map<Integer, Integer> numbers(Line line) {
        Map<Integer, Integer> days = new LinkedHashMap<>();
        if (line.cells().size() < MANY_DAYS) {
            return days;
        }
        int last = 0;
        for (Cell cell : line.cells()) {
            int day = DateColumn.day(cell);
            if (day == last + 1) {
                days.put(cell.at().column(), day);
                last = day;
            }
        }
        boolean most = days.size() >= MANY_DAYS && days.size() >= line.cells().size() - 2;
        return most ? days : Map.of();
    }

    /** The columns whose cells have days of their own. */
    List<Integer> columns() {
        return Stream.of(weekdays.keySet(), months.keySet(), numbers.keySet())
                .flatMap(s -> s.stream())
                .toList();
    }

    /** The columns before the grid that do not tell the day. */
    List<Integer> before() {
        return before;
    }

    /** What a line says about its days. */
    Optional<Line> told(Line line) {
        return told.flatMap(line::at).map(c -> new Line(line.row(), List.of(c)));
    }

    /** The rest of the line. */
    Optional<Line> untold(Line line) {
        List<Cell> rest = line.cells().stream()
                .filter(c -> told.filter(t -> t == c.at().column()).isEmpty())
                .toList();
        return rest.isEmpty() ? Optional.empty() : Optional.of(new Line(line.row(), rest));
    }

    /** The day of a line's cell in one of the columns. */
    Optional<LocalDate> of(Line line, int column) {
        if (!weekdays.isEmpty()) {
            Optional<LocalDate> own = told.flatMap(line::at).flatMap(this::week);
            return own.isPresent()
                    ? own.map(first -> first.plusDays(ahead(column)))
                    : Optional.ofNullable(dated.get(column))
                            .or(() -> titled.map(first -> first.plusDays(ahead(column))));
        }
        Optional<Cell> cell = told.flatMap(line::at);
        if (told.isEmpty() && !numbers.isEmpty()) {
            int day = numbers.getOrDefault(column, 0);
            return month.filter(m -> m.isValidDay(day)).map(m -> m.atDay(day));
        }
        return months.isEmpty()
                ? cell.flatMap(words::monthNamed).flatMap(m -> day(cell, Month.of(m), numbers.getOrDefault(column, 0)))
                : cell.flatMap(
                        c -> day(head.at(column), months.getOrDefault(column, Month.JANUARY), DateColumn.day(c)));
    }

    /** @param said the cell that names the month, perhaps with its year */
    private Optional<LocalDate> day(Optional<Cell> said, Month month, int day) {
        OptionalInt own = said.map(c -> words.year(c.shown())).orElse(OptionalInt.empty());
        OptionalInt of = own.isPresent() ? own : year;
        return of.isPresent() ? inYear(of.getAsInt(), month.getValue(), day) : Optional.empty();
    }

    private int ahead(int column) {
        List<Integer> order = List.copyOf(weekdays.keySet());
        DayOfWeek first = weekdays.getOrDefault(order.get(0), DayOfWeek.MONDAY);
        DayOfWeek own = weekdays.getOrDefault(column, first);
        return Math.floorMod(own.getValue() - first.getValue(), 7);
    }

    private boolean tells(int column, List<Line> lines) {
        List<Cell> cells = lines.stream().flatMap(l -> l.at(column).stream()).toList();
        long telling = cells.stream().filter(this::tells).count();
        return telling > 0 && telling >= TELLING * cells.size();
    }

    private boolean tells(Cell cell) {
        boolean day = !months.isEmpty() && DateColumn.day(cell) > 0;
        boolean month = !numbers.isEmpty() && words.monthNamed(cell).isPresent();
        return day || month || !weekdays.isEmpty() && week(cell).isPresent();
    }

    /** The first day of the week that a cell beside the strip names. */
    private Optional<LocalDate> week(Cell cell) {
        if (cell.value() instanceof Value.Text text) {
            return week(text.text());
        }
        if (cell.value() instanceof Value.Numeric number) {
            boolean headed = head.at(cell.at().column())
                    .filter(c -> WEEK.matcher(c.shown()).matches())
                    .isPresent();
            return headed ? numbered((int) number.number()) : Optional.empty();
        }
        return words.date(cell).flatMap(this::begins);
    }

    private Optional<LocalDate> week(String text) {
        if (weekdays.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalDate> dates = DatesInText.only(text)
                .or(() -> Dates.read(text)
                        .filter(d -> d.sure() >= 0.6 && !d.readings().isEmpty()))
                .flatMap(this::begins);
        Matcher number = NUMBERED.matcher(text);
        return dates.isPresent() || !number.find() ? dates : numbered(Integer.parseInt(number.group(1)));
    }

    private Optional<LocalDate> numbered(int week) {
        OptionalInt of = year;
        return of.isPresent() && week > 0
                ? Dates.read(of.getAsInt() + "-W" + week).flatMap(this::begins)
                : Optional.empty();
    }

    /** The strip's first day where a date is its first or its last. */
    private Optional<LocalDate> begins(WrittenDate date) {
        List<DayOfWeek> strip = List.copyOf(weekdays.values());
        DayOfWeek first = strip.get(0);
        DayOfWeek last = strip.get(strip.size() - 1);
        int length = Math.floorMod(last.getValue() - first.getValue(), 7);
        List<LocalDate> days = full(date);
        List<LocalDate> begin =
                days.stream().filter(d -> d.getDayOfWeek() == first).toList();
        List<LocalDate> end = days.stream()
                .filter(d -> d.getDayOfWeek() == last)
                .map(d -> d.minusDays(length))
                .toList();
        List<LocalDate> found = begin.isEmpty() ? end : begin;
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private List<LocalDate> full(WrittenDate date) {
        return date.days().stream()
                .flatMap(d -> d.year().isPresent() || year.isEmpty()
                        ? d.date().stream()
                        : inYear(year.getAsInt(), d.month(), d.day()).stream())
                .toList();
    }

    private static Optional<LocalDate> inYear(int year, int month, int day) {
        YearMonth of = YearMonth.of(year, month);
        return of.isValidDay(day) ? Optional.of(of.atDay(day)) : Optional.empty();
    }

    /** The dates over or under the weekdays, of all that they can mean those that are that day of the week. */
    private void date(Line line) {
        weekdays.forEach((column, weekday) -> line.at(column)
                .flatMap(c -> days(c).stream()
                        .filter(d -> d.getDayOfWeek() == weekday)
                        .findFirst())
                .ifPresent(d -> dated.put(column, d)));
    }

    private List<LocalDate> days(Cell cell) {
        int day = DateColumn.day(cell);
        return day == 0
                ? words.date(cell).map(this::full).orElse(List.of())
                : month.stream()
                        .flatMap(m -> Stream.of(m, m.plusMonths(1), m.minusMonths(1)))
                        .filter(m -> m.isValidDay(day))
                        .map(m -> m.atDay(day))
                        .toList();
    }
}
