package soundings.chart;

import soundings.notebook.ChartSpec;

/** A chart as an {@code svg} element that stands in an HTML page and takes its colours from the page's style. */
public final class Charts {
    private Charts() {}

    public static String svg(ChartSpec spec) {
        return spec.match(TimeChartSvg::of, RangeChartSvg::of, SparkSvg::of);
    }
}
