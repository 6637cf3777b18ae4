package soundings.chart;

import java.util.List;
import soundings.notebook.ChartSpec.RangeChart;
import soundings.notebook.Figures;

/** Tests side by side: each row is drawn so that its own range fills the shaded column, a dot and its interval across it. */
final class RangeChartSvg {
    private static final double WIDTH = 560;
    private static final double LEFT = 118;
    private static final double RIGHT = 96;
    private static final double ROW = 24;
    private static final double TOP = 22;
    /** The range fills this share of the width; the rest shows how far outside a level lies. */
    private static final double SHARE = 0.6;

    private RangeChartSvg() {}

    static String of(RangeChart chart) {
        List<RangeChart.Entry> entries = chart.entries();
        double height = TOP + ROW * entries.size() + 6;
        double width = WIDTH - LEFT - RIGHT;
        double low = LEFT + width * (1 - SHARE) / 2;
        Box range = new Box(low, TOP - 4, width * SHARE, ROW * entries.size() + 4);
        StringBuilder svg =
                new StringBuilder(Svg.open(chart.id(), WIDTH, height, chart.title() + ". " + chart.finding()));
        svg.append(Svg.rect("target", range));
        svg.append(Svg.label(range.left(), TOP - 8, "tx", "low"))
                .append(Svg.label(range.right(), TOP - 8, "tx", "high"));
        for (int i = 0; i < entries.size(); i++) {
            svg.append(row(entries.get(i), range, TOP + ROW * i + ROW / 2));
        }
        return svg.append("</svg>").toString();
    }

    private static String row(RangeChart.Entry entry, Box range, double y) {
        double from = x(entry, range, entry.level().low());
        double to = x(entry, range, entry.level().high());
        double mid = x(entry, range, entry.level().mid());
        String figure = Figures.with(Figures.number(entry.level().mid(), entry.decimals()), entry.unit());
        return Svg.label(LEFT - 8, y + 4, "ty", entry.label())
                + Svg.path("bar", new PathText().segment(from, y, to, y).toString())
                + beyond(entry, range, y)
                + "<g class=\"dot\"><circle cx=\"" + Svg.at(mid) + "\" cy=\"" + Svg.at(y) + "\" r=\"4\">"
                + Svg.title(entry.title()) + "</circle></g>"
                + Svg.label(WIDTH - RIGHT + 8, y + 4, "tn", figure);
    }

    /** An arrow at the edge where a level lies off the scale. */
    private static String beyond(RangeChart.Entry entry, Box range, double y) {
        double exact = exact(entry, range, entry.level().mid());
        if (exact >= LEFT + 4 && exact <= WIDTH - RIGHT - 4) {
            return "";
        }
        boolean left = exact < LEFT + 4;
        double tip = left ? LEFT - 3 : WIDTH - RIGHT + 3;
        double back = left ? tip + 6 : tip - 6;
        return Svg.path(
                "axis",
                new PathText().move(back, y - 5).line(tip, y).line(back, y + 5).toString());
    }

    private static double exact(RangeChart.Entry entry, Box range, double value) {
        double share = (value - entry.low()) / (entry.high() - entry.low());
        return range.left() + share * range.width();
    }

    private static double x(RangeChart.Entry entry, Box range, double value) {
        return Math.max(LEFT + 4, Math.min(WIDTH - RIGHT - 4, exact(entry, range, value)));
    }
}
