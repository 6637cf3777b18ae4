package soundings.chart;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.TimeZone;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.SeriesMarkers;
import soundings.notebook.ChartSpec.At;
import soundings.notebook.Layer;

/**
 * The shapes of layers as XChart draws them. Every series has a colour of its own, by which the canvas knows which
 * shapes are whose. Tick spacing is set so wide that XChart lays out next to no tick labels, which would take nine
 * tenths of its time; all words are written elsewhere.
 */
final class XChartPlot {
    private XChartPlot() {}

    /** @throws Error where the machine has no fonts or no font library, which XChart needs even without words */
    static List<Shapes> of(List<Layer> layers, Frame frame) {
        XYChart chart = bare(frame);
        for (int i = 0; i < layers.size(); i++) {
            add(chart, layers.get(i), i, frame);
        }
        ShapeCanvas canvas = new ShapeCanvas();
        if (!chart.getSeriesCollection().isEmpty()) {
            chart.paint(canvas, chart.getWidth(), chart.getHeight());
        }
        List<Shapes> shapes = new ArrayList<>();
        for (int i = 0; i < layers.size(); i++) {
            shapes.add(barred(layers.get(i), canvas.shapes(key(i), frame.box()), frame));
        }
        return shapes;
    }

    /** Error bars are worked out here: XChart's are symmetrical, and as lines of their own they took most of its time. */
    private static Shapes barred(Layer layer, Shapes drawn, Frame frame) {
        String bars = layer.match(m -> PlainPlot.bars(m, frame), b -> "", l -> "", t -> "", v -> "");
        return bars.isEmpty() ? drawn : new Shapes(drawn.area(), bars, drawn.spots());
    }

    private static XYChart bare(Frame frame) {
        int width = (int) Math.round(frame.box().width());
        int height = (int) Math.round(frame.box().height());
        XYChart chart = new XYChart(width, height);
        XYStyler style = chart.getStyler();
        style.setLegendVisible(false)
                .setChartTitleVisible(false)
                .setPlotBorderVisible(false)
                .setChartPadding(0);
        style.setPlotContentSize(1.0);
        style.setAxisTitlesVisible(false)
                .setAxisTicksVisible(false)
                .setPlotGridLinesVisible(false)
                .setPlotMargin(0);
        style.setXAxisTickMarkSpacingHint(width).setYAxisTickMarkSpacingHint(height);
        style.setXAxisTickLabelsFormattingFunction(v -> "0").setYAxisTickLabelsFormattingFunction(v -> "0");
        style.setErrorBarsColorSeriesColor(true).setTimezone(TimeZone.getTimeZone("UTC"));
        style.setXAxisMin(frame.first()).setXAxisMax(frame.last());
        style.setYAxisMin(frame.values().low()).setYAxisMax(frame.values().high());
        return chart;
    }

    private static Color key(int layer) {
        return new Color(1, 2, layer);
    }

    private static void add(XYChart chart, Layer layer, int index, Frame frame) {
        layer.match(
                marks -> marks(chart, marks, index, frame),
                band -> band(chart, band, index, frame),
                line -> line(chart, line, index, frame),
                target -> false,
                verticals -> false);
    }

    private static boolean marks(XYChart chart, Layer.Marks marks, int index, Frame frame) {
        List<Double> days = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Layer.Mark mark : marks.marks()) {
            days.add((double) mark.on().toEpochDay());
            values.add(frame.values().clamp(mark.value()));
        }
        if (days.isEmpty()) {
            return false;
        }
        XYSeries series = chart.addSeries("marks " + index, days, values);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        series.setMarker(SeriesMarkers.CIRCLE).setMarkerColor(key(index));
        return true;
    }

    private static boolean band(XYChart chart, Layer.Band band, int index, Frame frame) {
        int n = band.spans().size();
        double[] x = new double[2 * n];
        double[] y = new double[2 * n];
        for (int i = 0; i < n; i++) {
            Layer.Span span = band.spans().get(i);
            x[i] = span.on().toEpochDay();
            x[2 * n - 1 - i] = x[i];
            y[i] = frame.values().clamp(span.high());
            y[2 * n - 1 - i] = frame.values().clamp(span.low());
        }
        if (n > 0) {
            XYSeries series = chart.addSeries("band " + index, x, y);
            series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
            series.setMarker(SeriesMarkers.NONE);
            series.setLineStyle(SeriesLines.NONE);
            series.setFillColor(key(index));
        }
        return n > 0;
    }

    private static boolean line(XYChart chart, Layer.Line line, int index, Frame frame) {
        double[] x = new double[line.points().size()];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            At at = line.points().get(i);
            x[i] = at.on().toEpochDay();
            y[i] = frame.values().clamp(at.value());
        }
        if (x.length > 0) {
            XYSeries series = chart.addSeries("line " + index, x, y);
            boolean step = line.stroke() == Layer.Stroke.STEP;
            series.setXYSeriesRenderStyle(step ? XYSeriesRenderStyle.Step : XYSeriesRenderStyle.Line);
            drawn(series, index);
        }
        return x.length > 0;
    }

    private static void drawn(XYSeries series, int index) {
        series.setMarker(SeriesMarkers.NONE).setLineColor(key(index));
    }
}
