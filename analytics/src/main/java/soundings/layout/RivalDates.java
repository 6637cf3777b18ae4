package soundings.layout;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import soundings.sheet.Cell;
import soundings.wording.DateOrder;
import soundings.wording.PartialDate;
import soundings.wording.WrittenDate;

/** Two columns of one table that may both be the day of its results. */
final class RivalDates {
    /** Headings whose scores differ by less call a column the date about as plainly. */
    private static final double AS_PLAIN = 0.1;

    private RivalDates() {}

    /** The two ways of dating the table; empty where the chosen column has no rival with other days in it. */
    static Optional<String> ways(Shape shape, Field chosen, Words words) {
        Map<Integer, Optional<WrittenDate>> days = days(shape.column(chosen), words);
        return shape.all(Role.DATE).stream()
                .filter(f -> !f.equals(chosen) && !f.labels().isEmpty())
                .filter(f -> Math.abs(f.label().score() - chosen.label().score()) < AS_PLAIN)
                .filter(f -> differ(days, days(shape.column(f), words)))
                .findFirst()
                .map(f -> "the days are those from " + place(shape, chosen) + " on, or those from " + place(shape, f)
                        + " on");
    }

    private static Map<Integer, Optional<WrittenDate>> days(Column column, Words words) {
        Map<Integer, Optional<WrittenDate>> days = new HashMap<>();
        column.cells()
                .forEach(c -> days.put(
                        c.at().row(), words.date(c).filter(d -> !d.readings().isEmpty())));
        return days;
    }

    private static boolean differ(Map<Integer, Optional<WrittenDate>> one, Map<Integer, Optional<WrittenDate>> other) {
        long apart = other.entrySet().stream()
                .filter(e -> readings(e.getValue()).isPresent())
                .filter(e -> readings(one.getOrDefault(e.getKey(), Optional.empty()))
                        .filter(r -> !readings(e.getValue()).equals(Optional.of(r)))
                        .isPresent())
                .count();
        return apart * 2 > Math.max(one.size(), other.size());
    }

    private static Optional<Map<DateOrder, PartialDate>> readings(Optional<WrittenDate> day) {
        return day.map(WrittenDate::readings);
    }

    private static String place(Shape shape, Field field) {
        Cell first = shape.column(field).cells().get(0);
        return shape.table().area().place(first).toString();
    }
}
