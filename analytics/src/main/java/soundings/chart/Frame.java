package soundings.chart;

import java.time.LocalDate;

/** Where values and days fall in a box. */
record Frame(Box box, LocalDate from, LocalDate until, Span values) {
    double x(LocalDate day) {
        return box.left() + box.width() * (day.toEpochDay() - first()) / (last() - first());
    }

    double y(double value) {
        return box.bottom() - box.height() * (value - values.low()) / (values.high() - values.low());
    }

    double first() {
        return from.toEpochDay();
    }

    /** A chart of a single day still has a width. */
    double last() {
        return Math.max(until.toEpochDay(), from.toEpochDay() + 1);
    }
}
