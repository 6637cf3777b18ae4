package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import soundings.notebook.ChartSpec.RangeChart;
import soundings.notebook.Figures;
import soundings.quantity.Interval;
import soundings.xlsx.ChartData.Within;
import soundings.xlsx.ChartPart.Along;
import soundings.xlsx.ChartPart.Pen;
import soundings.xlsx.ChartPart.Said;
import soundings.xlsx.ChartPart.Series;

/** Tests side by side as a native scatter chart, a row each: a dot with its interval, laid over its own range from low to high. */
final class RangeDrawing {
    /** The chart's edges in hundredths of a range; the names stand to the left of where dots may lie. */
    private static final Axis ACROSS = new Axis(-200, 160, 20);

    private static final double LEFTMOST = -60;
    private static final double RIGHTMOST = 150;
    /** Says low and high at the ends of the range, nothing elsewhere. */
    private static final String ENDS = "[=0]\"low\";[=100]\"high\";";

    private static final Pen LEVEL = new Pen("circle", 7, "1F2A33", 0, false);
    private static final Pen BEYOND = new Pen("diamond", 8, "B34700", 0, false);
    private static final Pen RANGE = new Pen("", 0, "009E73", 1.25, true);

    private RangeDrawing() {}

    static ChartPart of(RangeChart chart, ChartData data) {
        int rows = chart.entries().size();
        List<Series> series = new ArrayList<>();
        Stream.of(0.0, 100.0)
                .map(end -> List.of(Within.at(end, 0), Within.at(end, rows + 1)))
                .forEach(line -> series.add(new Series("range", data.put(chart, "range", line), RANGE, Said.NOWHERE)));
        for (int i = 0; i < rows; i++) {
            series.addAll(test(chart, chart.entries().get(i), rows - i, data));
        }
        return new ChartPart(
                chart.title(), new Along("", ENDS, ACROSS), new Along("", "", new Axis(0, rows + 1, 1)), series);
    }

    private static List<Series> test(RangeChart chart, RangeChart.Entry entry, int row, ChartData data) {
        Interval place = place(entry);
        boolean beyond = place.mid() <= LEFTMOST || place.mid() >= RIGHTMOST;
        String name =
                entry.label() + " " + Figures.with(Figures.number(entry.level().mid(), entry.decimals()), entry.unit());
        return List.of(
                new Series(
                        name,
                        data.put(chart, entry.label() + ", name", List.of(Within.at(ACROSS.low(), row))),
                        Pen.NONE,
                        Said.BESIDE),
                new Series(
                        name,
                        data.put(chart, entry.label(), List.of(new Within(place, row))),
                        beyond ? BEYOND : LEVEL,
                        Said.NOWHERE));
    }

    /** The level in hundredths of its range; what lies far out stands at the edge. */
    private static Interval place(RangeChart.Entry entry) {
        return new Interval(
                place(entry, entry.level().mid()),
                place(entry, entry.level().low()),
                place(entry, entry.level().high()));
    }

    private static double place(RangeChart.Entry entry, double value) {
        double place = 100 * (value - entry.low()) / (entry.high() - entry.low());
        return Math.max(LEFTMOST, Math.min(RIGHTMOST, place));
    }
}
