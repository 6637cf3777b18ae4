package soundings.layout;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import soundings.log.Inferred;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Value;
import soundings.wording.Dates;

/**
 * When a column's cells were written, as far as its heading says: a day of the week, in a strip of seven or a calendar, or an
 * hour. The day itself comes from the row's date, from the one above the table, or from the day's number in the calendar.
 */
final class HeadedDays {
    private static final int FEWEST = 3;
    private static final Pattern NUMBERED = Pattern.compile("\\s*([0-9]{1,2})\\.?\\s*[\\n:]\\s*(.*)", Pattern.DOTALL);

    private final Map<Integer, DayOfWeek> days;
    private final boolean calendar;
    private final Map<CellRef, LocalDate> numbered = new HashMap<>();

    private HeadedDays(Map<Integer, DayOfWeek> days, boolean calendar) {
        this.days = days;
        this.calendar = calendar;
    }

    static HeadedDays of(Shape shape) {
        HeadedDays headed = new HeadedDays(in(shape.fields()), shape.calendar());
        if (headed.calendar) {
            shape.topic().month().ifPresent(m -> headed.number(shape, m));
        }
        return headed;
    }

    /** The columns headed by days of the week, from left to right; empty where they are too few to be a week's. */
    static Map<Integer, DayOfWeek> in(List<Field> fields) {
        Map<Integer, DayOfWeek> days = new LinkedHashMap<>();
        for (Field field : fields) {
            Optional<DayOfWeek> day = field.labels().isEmpty()
                    ? Optional.empty()
                    : weekday(field.labels().get(field.labels().size() - 1));
            day.ifPresent(d -> days.put(field.column(), d));
        }
        boolean distinct = days.values().stream().distinct().count() == days.size();
        return distinct && days.size() >= FEWEST ? days : Map.of();
    }

    private static Optional<DayOfWeek> weekday(Cell cell) {
        return cell.value() instanceof Value.Text text && text.text().length() < 15
                ? Dates.weekday(text.text())
                : Optional.empty();
    }

    /** Whether a line names days of a week side by side. */
    static boolean heads(Line line) {
        long days = line.cells().stream()
                .flatMap(c -> weekday(c).stream())
                .distinct()
                .count();
        return days >= FEWEST && days >= line.cells().size() - 2;
    }

    /** What the days' columns hold: results of the row's test or of the sheet's, else notes. */
    static Shape settle(Shape shape) {
        Map<Integer, DayOfWeek> days = in(shape.fields());
        return days.isEmpty()
                ? shape
                : shape.replace(f -> days.containsKey(f.column()), f -> f.with(label(shape, shape.column(f))));
    }

    private static Label label(Shape shape, Column column) {
        Label topic = shape.topic().subject();
        boolean numbers = column.share(Kind.NUMBER) >= 0.5 && !shape.calendar();
        Label told = shape.has(Role.TEST) ? Label.of(Role.RESULT, 0.8) : topic;
        boolean words =
                column.cells().stream().anyMatch(c -> c.value() instanceof Value.Text && DateColumn.day(c) == 0);
        return numbers ? told : words ? Label.of(Role.NOTE, 0.7) : Label.UNKNOWN;
    }

    /** The table as it is before anything is known of its days' columns. */
    static Shape open(Shape shape) {
        Map<Integer, DayOfWeek> days = in(shape.fields());
        return shape.replace(f -> days.containsKey(f.column()), f -> f.with(Label.UNKNOWN));
    }

    /** A calendar's days: each number holds for the cells below it, down to the next. */
    private void number(Shape shape, YearMonth month) {
        for (int column : days.keySet()) {
            int day = 0;
            for (Cell cell : shape.columns().getOrDefault(column, Column.EMPTY).cells()) {
                day = numberIn(cell).orElse(day);
                if (month.isValidDay(day)) {
                    numbered.put(cell.at(), month.atDay(day));
                }
            }
        }
    }

    private static Optional<Integer> numberIn(Cell cell) {
        int alone = DateColumn.day(cell);
        Matcher leads = NUMBERED.matcher(cell.value() instanceof Value.Text text ? text.text() : "");
        return alone > 0
                ? Optional.of(alone)
                : leads.matches() ? Optional.of(Integer.parseInt(leads.group(1))) : Optional.empty();
    }

    /** Whether a cell is only a day's number in a calendar. */
    boolean number(Field field, Cell cell) {
        return calendar && days.containsKey(field.column()) && DateColumn.day(cell) > 0;
    }

    /** A cell's text without the day's number it begins with. */
    String text(Field field, Cell cell) {
        Matcher leads = NUMBERED.matcher(cell.shown());
        return calendar && days.containsKey(field.column()) && leads.matches() ? leads.group(2) : cell.shown();
    }

    /** Whether a column's heading tells of which day of the row's week it is. */
    boolean tells(Field field) {
        return days.containsKey(field.column());
    }

    Where in(Field field, Cell cell, Where where) {
        DayOfWeek day = days.get(field.column());
        Where there = day == null
                ? where
                : (calendar ? numbered(cell, day) : ofWeek(day, where.date()))
                        .map(d -> where.on(d, Inferred.DATE))
                        .orElseGet(() -> where.refuse("of which day it is cannot be told"));
        return hour(field).map(there::at).orElse(there);
    }

    private Optional<LocalDate> numbered(Cell cell, DayOfWeek day) {
        return Optional.ofNullable(numbered.get(cell.at())).filter(d -> d.getDayOfWeek() == day);
    }

    /** The row's date is the first or the last day of its strip. */
    private Optional<LocalDate> ofWeek(DayOfWeek day, LocalDate date) {
        List<DayOfWeek> strip = List.copyOf(days.values());
        int ahead = Math.floorMod(day.getValue() - date.getDayOfWeek().getValue(), 7);
        boolean first = date.getDayOfWeek() == strip.get(0);
        boolean last = date.getDayOfWeek() == strip.get(strip.size() - 1);
        return first
                ? Optional.of(date.plusDays(ahead))
                : last ? Optional.of(date.minusDays(Math.floorMod(7 - ahead, 7))) : Optional.empty();
    }

    private static Optional<LocalTime> hour(Field field) {
        List<Cell> labels = field.labels();
        boolean brief =
                !labels.isEmpty() && labels.get(labels.size() - 1).shown().length() < 12;
        return brief
                ? Dates.read(labels.get(labels.size() - 1).shown())
                        .filter(d -> d.readings().isEmpty())
                        .flatMap(d -> d.time())
                : Optional.empty();
    }
}
