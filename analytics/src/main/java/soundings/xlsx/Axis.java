package soundings.xlsx;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.DoubleStream;
import soundings.notebook.ChartSpec;
import soundings.notebook.Layer;

/** An axis from {@code low} to {@code high} with a line each {@code step}, all round numbers. */
record Axis(double low, double high, double step) {
    private static final List<Double> ROUND = List.of(1.0, 2.0, 2.5, 5.0, 10.0);
    private static final List<Integer> DAYS = List.of(1, 2, 7, 14, 28, 56, 91, 182, 365, 730);
    private static final int MOST_LINES = 6;
    private static final int MOST_DAYS = 9;

    /** The values of a panel with a little air; what is held for a time (a dose) is seen from zero. */
    static Axis of(ChartSpec.Panel panel) {
        double[] values = panel.layers().stream().flatMapToDouble(Axis::values).toArray();
        double least = DoubleStream.of(values).min().orElse(0);
        double most = DoubleStream.of(values).max().orElse(1);
        double reach = most > least ? most - least : Math.max(1e-3, Math.abs(most) * 0.1);
        double step = step(reach);
        double low = Math.floor((least - reach * 0.04) / step) * step;
        double floor = least >= 0 ? Math.max(0, low) : low;
        return new Axis(floor, Math.ceil((most + reach * 0.04) / step) * step, step);
    }

    private static double step(double reach) {
        double decade = Math.pow(10, Math.floor(Math.log10(reach / MOST_LINES)));
        return ROUND.stream()
                .mapToDouble(r -> r * decade)
                .filter(s -> reach / s <= MOST_LINES)
                .findFirst()
                .orElse(10 * decade);
    }

    private static DoubleStream values(Layer layer) {
        return layer.match(
                marks -> marks.marks().stream().flatMapToDouble(m -> DoubleStream.of(m.value(), m.low(), m.high())),
                band -> band.spans().stream().flatMapToDouble(s -> DoubleStream.of(s.low(), s.high())),
                line -> DoubleStream.concat(
                        line.stroke() == Layer.Stroke.STEP ? DoubleStream.of(0) : DoubleStream.empty(),
                        line.points().stream().mapToDouble(ChartSpec.At::value)),
                target -> DoubleStream.of(target.range().low(), target.range().high()),
                verticals -> DoubleStream.empty());
    }

    /** The days of a chart. */
    static Axis of(LocalDate from, LocalDate until) {
        long days = Math.max(1, ChronoUnit.DAYS.between(from, until));
        int step = DAYS.stream().filter(d -> days / d <= MOST_DAYS).findFirst().orElse(1461);
        return new Axis(SheetRows.serial(from), SheetRows.serial(from) + days, step);
    }
}
