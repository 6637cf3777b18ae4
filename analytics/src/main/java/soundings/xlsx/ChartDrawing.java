package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import soundings.notebook.ChartSpec;
import soundings.notebook.Figures;
import soundings.notebook.Layer;
import soundings.xlsx.ChartPart.Along;
import soundings.xlsx.ChartPart.Pen;
import soundings.xlsx.ChartPart.Said;
import soundings.xlsx.ChartPart.Series;

/** A native scatter chart of one panel, bound to cells; dates are numbers with a date format, which every spreadsheet draws alike. */
final class ChartDrawing {
    private ChartDrawing() {}

    static ChartPart of(ChartSpec.TimeChart spec, ChartSpec.Panel panel, ChartData data) {
        Axis values = Axis.of(panel);
        List<Series> series = new ArrayList<>();
        for (Layer layer : panel.layers()) {
            series.addAll(series(layer, data.put(spec, panel, layer, values)));
        }
        String unit = Figures.unit(panel.unit());
        String label = unit.isEmpty() ? panel.label() : panel.label() + " (" + unit + ")";
        return new ChartPart(
                panel.equals(spec.panel()) ? spec.title() : panel.label(),
                new Along("", "d mmm yy", Axis.of(spec.from(), spec.until())),
                new Along(label, format(values.step()), values),
                series);
    }

    static DrawingPart.Told told(ChartSpec.TimeChart spec, ChartSpec.Panel panel) {
        String name = panel.equals(spec.panel()) ? spec.title() : spec.title() + ": " + panel.label();
        return new DrawingPart.Told(name, spec.finding());
    }

    /** As many decimals as the step needs. */
    private static String format(double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        boolean half = Math.abs(step * Math.pow(10, decimals) - Math.rint(step * Math.pow(10, decimals))) > 1e-6;
        int shown = decimals + (half ? 1 : 0);
        return shown == 0 ? "0" : "0." + "0".repeat(shown);
    }

    /** The second line of a pair has no entry of its own in the key. */
    private static List<Series> series(Layer layer, List<ChartData.Bound> bound) {
        Pen pen = layer.match(
                marks -> pen(marks.shape()),
                band -> new Pen("", 0, "8FBFE0", 1, band.stroke() == Layer.Stroke.DASHED),
                line -> pen(line.stroke()),
                target -> new Pen("", 0, "009E73", 1.25, true),
                verticals -> new Pen("", 0, "B9C3CA", 0.75, false));
        List<Series> series = new ArrayList<>();
        for (ChartData.Bound one : bound) {
            series.add(new Series(layer.label(), one, pen, series.isEmpty() ? Said.IN_KEY : Said.NOWHERE));
        }
        return series;
    }

    private static Pen pen(Layer.Shape shape) {
        return switch (shape) {
            case DOT -> new Pen("circle", 5, "1F2A33", 0, false);
            case BELOW, ABOVE -> new Pen("triangle", 6, "5E6B75", 0, false);
            case CROSS -> new Pen("x", 7, "D55E00", 0, false);
        };
    }

    private static Pen pen(Layer.Stroke stroke) {
        return switch (stroke) {
            case SOLID -> new Pen("", 0, "0072B2", 2, false);
            case DASHED -> new Pen("", 0, "8F4470", 1.5, true);
            case DOTTED -> new Pen("", 0, "0072B2", 1.5, true);
            case STEP -> new Pen("", 0, "B37400", 1.75, false);
        };
    }
}
