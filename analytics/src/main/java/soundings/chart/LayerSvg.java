package soundings.chart;

import java.util.List;
import soundings.notebook.Layer;

/** One layer's shapes as SVG elements; the page's style says how each kind looks. */
final class LayerSvg {
    private LayerSvg() {}

    static String of(Layer layer, Shapes shapes, Frame frame) {
        return layer.match(
                marks -> Svg.path("bar", shapes.line()) + marks(marks, shapes.spots()),
                band -> Svg.path("band " + kind(band.stroke()), shapes.area()),
                line -> Svg.path("line " + kind(line.stroke()), held(line, shapes, frame)),
                target -> target(target, frame),
                verticals -> verticals(verticals, frame));
    }

    static String kind(Layer.Stroke stroke) {
        return switch (stroke) {
            case SOLID -> "solid";
            case DASHED -> "ahead";
            case DOTTED -> "followed";
            case STEP -> "step";
        };
    }

    /** A step's last value holds to the chart's end. */
    private static String held(Layer.Line line, Shapes shapes, Frame frame) {
        boolean step = line.stroke() == Layer.Stroke.STEP && !line.points().isEmpty();
        if (!step) {
            return shapes.line();
        }
        var last = line.points().get(line.points().size() - 1);
        double y = frame.y(frame.values().clamp(last.value()));
        String begun = line.points().size() == 1
                ? new PathText().move(frame.x(last.on()), y).toString()
                : shapes.line();
        return begun + "L" + Svg.at(frame.box().right()) + " " + Svg.at(y);
    }

    private static String target(Layer.Target target, Frame frame) {
        double top = frame.y(frame.values().clamp(target.range().high()));
        double bottom = frame.y(frame.values().clamp(target.range().low()));
        return bottom - top < 0.05
                ? ""
                : Svg.rect(
                        "target", new Box(frame.box().left(), top, frame.box().width(), bottom - top));
    }

    private static String verticals(Layer.Verticals verticals, Frame frame) {
        StringBuilder svg = new StringBuilder("<g class=\"hair\">");
        for (Layer.Happening one : verticals.happenings()) {
            double x = frame.x(one.on());
            String d = new PathText()
                    .segment(x, frame.box().top(), x, frame.box().bottom())
                    .toString();
            svg.append("<path d=\"")
                    .append(d)
                    .append("\">")
                    .append(Svg.title(one.title()))
                    .append("</path>");
        }
        return svg.append("</g>").toString();
    }

    private static String marks(Layer.Marks marks, List<Shapes.Spot> spots) {
        StringBuilder svg = new StringBuilder("<g class=\"" + Symbols.kind(marks.shape()) + "\">");
        for (int i = 0; i < spots.size(); i++) {
            svg.append(Symbols.symbol(
                    marks.shape(), spots.get(i), marks.marks().get(i).title()));
        }
        return svg.append("</g>").toString();
    }
}
