package soundings.chart;

import java.util.List;
import java.util.stream.DoubleStream;
import soundings.notebook.ChartSpec.At;
import soundings.notebook.Layer;

/** What the value axis must show: all that counts; what was set aside may lie outside and is shown at the edge. */
final class ValueSpan {
    private ValueSpan() {}

    static Span of(List<Layer> layers) {
        var core = layers.stream().flatMapToDouble(ValueSpan::core).summaryStatistics();
        if (core.getCount() == 0) {
            core = layers.stream().flatMapToDouble(ValueSpan::aside).summaryStatistics();
        }
        if (core.getCount() == 0) {
            return new Span(0, 1);
        }
        double low = core.getMin();
        double high = core.getMax();
        for (Layer layer : layers) {
            double[] edges = layer.match(
                    m -> new double[0],
                    b -> new double[0],
                    l -> new double[0],
                    t -> new double[] {t.range().low(), t.range().high()},
                    v -> new double[0]);
            for (double edge : edges) {
                boolean near = edge > low - 1.2 * (high - low) && edge < high + 1.2 * (high - low);
                low = near ? Math.min(low, edge) : low;
                high = near ? Math.max(high, edge) : high;
            }
        }
        return Span.around(low, high, 0.06);
    }

    /** For doses: the axis begins at nothing. */
    static Span fromZero(List<Layer> layers) {
        double high = layers.stream().flatMapToDouble(ValueSpan::core).max().orElse(1);
        return new Span(0, high > 0 ? high * 1.15 : 1);
    }

    private static DoubleStream core(Layer layer) {
        return layer.match(
                m -> m.shape() == Layer.Shape.CROSS ? DoubleStream.empty() : ends(m),
                b -> b.spans().stream().flatMapToDouble(s -> DoubleStream.of(s.low(), s.high())),
                l -> l.points().stream().mapToDouble(At::value),
                t -> DoubleStream.empty(),
                v -> DoubleStream.empty());
    }

    private static DoubleStream aside(Layer layer) {
        return layer.match(
                ValueSpan::ends,
                b -> DoubleStream.empty(),
                l -> DoubleStream.empty(),
                t -> DoubleStream.of(t.range().low(), t.range().high()),
                v -> DoubleStream.empty());
    }

    private static DoubleStream ends(Layer.Marks marks) {
        return marks.marks().stream().flatMapToDouble(m -> DoubleStream.of(m.value(), m.low(), m.high()));
    }
}
