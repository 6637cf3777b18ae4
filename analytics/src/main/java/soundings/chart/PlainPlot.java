package soundings.chart;

import java.util.List;
import soundings.notebook.ChartSpec.At;
import soundings.notebook.Layer;

/** The shapes of layers worked out here, for machines on which XChart cannot run. */
final class PlainPlot {
    private PlainPlot() {}

    static List<Shapes> of(List<Layer> layers, Frame frame) {
        return layers.stream().map(layer -> shapes(layer, frame)).toList();
    }

    private static Shapes shapes(Layer layer, Frame frame) {
        return layer.match(
                marks -> marks(marks, frame),
                band -> new Shapes(area(band, frame), "", List.of()),
                line -> new Shapes("", line(line, frame), List.of()),
                target -> Shapes.NONE,
                verticals -> Shapes.NONE);
    }

    private static Shapes marks(Layer.Marks marks, Frame frame) {
        List<Shapes.Spot> spots = marks.marks().stream()
                .map(m -> new Shapes.Spot(frame.x(m.on()), y(frame, m.value())))
                .toList();
        return new Shapes("", bars(marks, frame), spots);
    }

    static String bars(Layer.Marks marks, Frame frame) {
        PathText bars = new PathText();
        for (Layer.Mark mark : marks.marks()) {
            if (mark.high() > mark.low()) {
                double x = frame.x(mark.on());
                bars.segment(x, y(frame, mark.low()), x, y(frame, mark.high()));
            }
        }
        return bars.toString();
    }

    private static String area(Layer.Band band, Frame frame) {
        PathText path = new PathText();
        List<Layer.Span> spans = band.spans();
        for (int i = 0; i < spans.size(); i++) {
            double x = frame.x(spans.get(i).on());
            double y = y(frame, spans.get(i).high());
            path = i == 0 ? path.move(x, y) : path.line(x, y);
        }
        for (int i = spans.size() - 1; i >= 0; i--) {
            path.line(frame.x(spans.get(i).on()), y(frame, spans.get(i).low()));
        }
        return spans.isEmpty() ? "" : path.close().toString();
    }

    private static String line(Layer.Line line, Frame frame) {
        PathText path = new PathText();
        List<At> points = line.points();
        for (int i = 0; i < points.size(); i++) {
            double x = frame.x(points.get(i).on());
            double y = y(frame, points.get(i).value());
            if (i == 0) {
                path.move(x, y);
            } else {
                boolean step = line.stroke() == Layer.Stroke.STEP;
                path = step ? path.line(x, y(frame, points.get(i - 1).value())).line(x, y) : path.line(x, y);
            }
        }
        return path.toString();
    }

    private static double y(Frame frame, double value) {
        return frame.y(frame.values().clamp(value));
    }
}
