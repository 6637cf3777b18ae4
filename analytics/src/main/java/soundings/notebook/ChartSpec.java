package soundings.notebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import soundings.quantity.Interval;

/** What a chart shows, in numbers and words; how it is drawn is somebody else's matter. */
public sealed interface ChartSpec {
    String id();

    String title();

    /** What the chart shows, in a sentence: its alternative text. */
    String finding();

    <R> R match(Function<TimeChart, R> time, Function<RangeChart, R> range, Function<SparkLine, R> spark);

    /**
     * Something through time.
     *
     * @param strip a low panel under the main one on the same days (doses), empty for none
     */
    record TimeChart(
            String id,
            String title,
            String finding,
            LocalDate from,
            LocalDate until,
            Panel panel,
            Optional<Panel> strip)
            implements ChartSpec {
        public TimeChart {
            if (until.isBefore(from)) {
                throw new IllegalArgumentException("chart " + id + " runs from " + from + " to " + until);
            }
        }

        @Override
        public <R> R match(Function<TimeChart, R> time, Function<RangeChart, R> range, Function<SparkLine, R> spark) {
            return time.apply(this);
        }
    }

    /** Layers on one value axis, the first drawn first; {@code label} names the axis. */
    record Panel(String label, String unit, int decimals, List<Layer> layers) {
        public Panel {
            layers = List.copyOf(layers);
        }
    }

    /** Many tests side by side, each against its own range: a dot with its interval. */
    record RangeChart(String id, String title, String finding, List<Entry> entries) implements ChartSpec {
        public RangeChart {
            entries = List.copyOf(entries);
        }

        @Override
        public <R> R match(Function<TimeChart, R> time, Function<RangeChart, R> range, Function<SparkLine, R> spark) {
            return range.apply(this);
        }

        /** One test: its level and the range it is judged by, in its own unit. */
        public record Entry(
                String label, String unit, int decimals, Interval level, double low, double high, String title) {}
    }

    /** A line without axes, small enough for a table's cell; the last point is marked. */
    record SparkLine(
            String id,
            String title,
            String finding,
            String unit,
            int decimals,
            List<At> points,
            Optional<Within> target)
            implements ChartSpec {
        public SparkLine {
            points = List.copyOf(points);
        }

        @Override
        public <R> R match(Function<TimeChart, R> time, Function<RangeChart, R> range, Function<SparkLine, R> spark) {
            return spark.apply(this);
        }
    }

    /** A value on a day. */
    record At(LocalDate on, double value) {}

    /** A range of values. */
    record Within(double low, double high) {}
}
