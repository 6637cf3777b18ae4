package soundings.chart;

import soundings.notebook.Layer;

/** Marks by shape, so that they are told apart without colour. */
final class Symbols {
    private Symbols() {}

    static String kind(Layer.Shape shape) {
        return switch (shape) {
            case DOT -> "dot";
            case BELOW, ABOVE -> "limit";
            case CROSS -> "cross";
        };
    }

    static String symbol(Layer.Shape shape, Shapes.Spot at, String title) {
        if (shape == Layer.Shape.DOT) {
            return "<circle cx=\"" + Svg.at(at.x()) + "\" cy=\"" + Svg.at(at.y()) + "\" r=\"2.5\">" + Svg.title(title)
                    + "</circle>";
        }
        return "<path d=\"" + outline(shape, at.x(), at.y()) + "\">" + Svg.title(title) + "</path>";
    }

    private static String outline(Layer.Shape shape, double x, double y) {
        return switch (shape) {
            case BELOW -> "M" + Svg.at(x - 4) + " " + Svg.at(y) + "h8l-4 7z";
            case ABOVE -> "M" + Svg.at(x - 4) + " " + Svg.at(y) + "h8l-4 -7z";
            case CROSS -> "M" + Svg.at(x - 4) + " " + Svg.at(y - 4) + "l8 8m0 -8l-8 8";
            case DOT -> "";
        };
    }
}
