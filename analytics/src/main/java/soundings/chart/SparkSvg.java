package soundings.chart;

import java.util.List;
import soundings.notebook.ChartSpec.At;
import soundings.notebook.ChartSpec.SparkLine;

/** A line without axes; its own writer, since a table of many would spend most of its time in chart layout. */
final class SparkSvg {
    private static final Box BOX = new Box(2, 3, 92, 18);

    private SparkSvg() {}

    static String of(SparkLine spark) {
        List<At> points = spark.points();
        var values = points.stream().mapToDouble(At::value).summaryStatistics();
        Span span = Span.around(values.getMin(), values.getMax(), 0.1);
        Frame frame =
                new Frame(BOX, points.get(0).on(), points.get(points.size() - 1).on(), span);
        PathText path = new PathText();
        for (int i = 0; i < points.size(); i++) {
            double x = frame.x(points.get(i).on());
            double y = frame.y(points.get(i).value());
            path = i == 0 ? path.move(x, y) : path.line(x, y);
        }
        At last = points.get(points.size() - 1);
        return "<svg class=\"spark\" viewBox=\"0 0 100 24\" role=\"img\" aria-label=\"" + Svg.text(spark.finding())
                + "\">"
                + target(spark, frame)
                + Svg.path("line solid", path.toString())
                + "<circle class=\"end\" cx=\"" + Svg.at(frame.x(last.on())) + "\" cy=\""
                + Svg.at(frame.y(last.value()))
                + "\" r=\"2.4\"/></svg>";
    }

    private static String target(SparkLine spark, Frame frame) {
        return spark.target()
                .map(t -> {
                    double top = frame.y(frame.values().clamp(t.high()));
                    double bottom = frame.y(frame.values().clamp(t.low()));
                    return bottom - top < 0.1
                            ? ""
                            : Svg.rect("target", new Box(BOX.left(), top, BOX.width(), bottom - top));
                })
                .orElse("");
    }
}
