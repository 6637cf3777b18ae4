package soundings.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/** One layer of a time chart; {@code label} is its entry in the key. */
public sealed interface Layer {
    String label();

    <R> R match(
            Function<Marks, R> marks,
            Function<Band, R> band,
            Function<Line, R> line,
            Function<Target, R> target,
            Function<Verticals, R> verticals);

    /** Single readings. */
    record Marks(String label, Shape shape, List<Mark> marks) implements Layer {
        public Marks {
            marks = List.copyOf(marks);
        }

        @Override
        public <R> R match(
                Function<Marks, R> marks,
                Function<Band, R> band,
                Function<Line, R> line,
                Function<Target, R> target,
                Function<Verticals, R> verticals) {
            return marks.apply(this);
        }
    }

    /** An interval through time, such as the estimated level's; dashed for days to come. */
    record Band(String label, Stroke stroke, List<Span> spans) implements Layer {
        public Band {
            spans = List.copyOf(spans);
        }

        @Override
        public <R> R match(
                Function<Marks, R> marks,
                Function<Band, R> band,
                Function<Line, R> line,
                Function<Target, R> target,
                Function<Verticals, R> verticals) {
            return band.apply(this);
        }
    }

    /** Points joined; a step holds its value until the next point. */
    record Line(String label, Stroke stroke, List<ChartSpec.At> points) implements Layer {
        public Line {
            points = List.copyOf(points);
        }

        @Override
        public <R> R match(
                Function<Marks, R> marks,
                Function<Band, R> band,
                Function<Line, R> line,
                Function<Target, R> target,
                Function<Verticals, R> verticals) {
            return line.apply(this);
        }
    }

    /** The range to keep, on all days of the chart. */
    record Target(String label, ChartSpec.Within range) implements Layer {
        @Override
        public <R> R match(
                Function<Marks, R> marks,
                Function<Band, R> band,
                Function<Line, R> line,
                Function<Target, R> target,
                Function<Verticals, R> verticals) {
            return target.apply(this);
        }
    }

    /** Things that happened on a day: water changes, a one-off dose. */
    record Verticals(String label, List<Happening> happenings) implements Layer {
        public Verticals {
            happenings = List.copyOf(happenings);
        }

        @Override
        public <R> R match(
                Function<Marks, R> marks,
                Function<Band, R> band,
                Function<Line, R> line,
                Function<Target, R> target,
                Function<Verticals, R> verticals) {
            return verticals.apply(this);
        }
    }

    /**
     * One reading.
     *
     * @param low and {@code high}: the error bar's ends, equal to {@code value} where there is none
     * @param title what a reader who points at it is told
     * @param place its cell, such as {@code Log!C14}
     */
    record Mark(LocalDate on, double value, double low, double high, String title, String place) {}

    /** The band's edges on a day. */
    record Span(LocalDate on, double low, double high) {}

    record Happening(LocalDate on, String title, String place) {}

    /** How a mark is drawn. */
    enum Shape {
        DOT,
        /** The value is somewhere below the mark. */
        BELOW,
        /** The value is somewhere above the mark. */
        ABOVE,
        /** Set aside, not used. */
        CROSS
    }

    /** How a line is drawn. */
    enum Stroke {
        SOLID,
        /** If nothing changes. */
        DASHED,
        /** If what is proposed is done. */
        DOTTED,
        STEP
    }
}
