package soundings.chart;

import java.util.List;
import soundings.notebook.ChartSpec.Panel;
import soundings.notebook.ChartSpec.TimeChart;
import soundings.notebook.Figures;

/** A time chart: a panel, and under it on the same days a low strip for doses. */
final class TimeChartSvg {
    private static final double WIDTH = 560;
    private static final double LEFT = 46;
    private static final double RIGHT = 10;
    private static final double TOP = 20;
    private static final double MAIN = 160;
    private static final double GAP = 24;
    private static final double STRIP = 40;
    private static final double FOOT = 22;

    private TimeChartSvg() {}

    static String of(TimeChart chart) {
        double plotWidth = WIDTH - LEFT - RIGHT;
        Box main = new Box(LEFT, TOP, plotWidth, MAIN);
        Box strip = new Box(LEFT, TOP + MAIN + GAP, plotWidth, STRIP);
        double bottom = chart.strip().isPresent() ? strip.bottom() : main.bottom();
        StringBuilder svg = new StringBuilder();
        svg.append(Svg.open(chart.id(), WIDTH, bottom + FOOT, chart.title() + ". " + chart.finding()));
        svg.append(days(chart, main.top(), bottom));
        svg.append(panel(chart, chart.panel(), main, ValueSpan.of(chart.panel().layers()), 5));
        chart.strip().ifPresent(p -> svg.append(panel(chart, p, strip, ValueSpan.fromZero(p.layers()), 2)));
        return svg.append("</svg>").toString();
    }

    private static String days(TimeChart chart, double top, double bottom) {
        Frame frame = new Frame(
                new Box(LEFT, top, WIDTH - LEFT - RIGHT, bottom - top), chart.from(), chart.until(), new Span(0, 1));
        StringBuilder svg = new StringBuilder();
        PathText lines = new PathText();
        for (Ticks.Tick tick : Ticks.days(chart.from(), chart.until(), 6)) {
            double x = frame.x(tick.day());
            lines.segment(x, bottom, x, bottom + 4);
            String anchor = x < LEFT + 16 ? "tx first" : x > WIDTH - RIGHT - 16 ? "tx last" : "tx";
            svg.append(Svg.label(x, bottom + 17, anchor, tick.label()));
        }
        return Svg.path("axis", lines.toString()) + svg;
    }

    private static String panel(TimeChart chart, Panel panel, Box box, Span span, int ticks) {
        Frame frame = new Frame(box, chart.from(), chart.until(), span);
        List<Shapes> shapes = Plots.of(panel.layers(), frame);
        StringBuilder svg = new StringBuilder(grid(panel, frame, ticks));
        for (int i = 0; i < shapes.size(); i++) {
            svg.append(LayerSvg.of(panel.layers().get(i), shapes.get(i), frame));
        }
        return svg.toString();
    }

    private static String grid(Panel panel, Frame frame, int most) {
        Box box = frame.box();
        List<Double> ticks = Ticks.values(frame.values(), most);
        int decimals = Ticks.decimals(ticks);
        PathText lines = new PathText();
        StringBuilder labels = new StringBuilder();
        for (double tick : ticks) {
            double y = frame.y(tick);
            lines.segment(box.left(), y, box.right(), y);
            labels.append(Svg.label(box.left() - 6, y + 4, "ty", Figures.number(tick, decimals)));
        }
        String unit = Figures.unit(panel.unit());
        String name = unit.isEmpty() ? panel.label() : panel.label() + ", " + unit;
        return Svg.path("grid", lines.toString()) + labels + Svg.label(box.left(), box.top() - 7, "tn", name);
    }
}
