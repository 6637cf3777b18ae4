package soundings.chart;

import soundings.notebook.Layer;

/** A layer's sign for the key beside a chart; the words stand next to it. */
public final class Key {
    private static final Shapes.Spot MIDDLE = new Shapes.Spot(9, 6);

    private Key() {}

    public static String symbol(Layer layer) {
        String inside = layer.match(
                m -> "<g class=\"" + Symbols.kind(m.shape()) + "\">" + plain(m.shape()) + "</g>",
                b -> Svg.rect("band " + LayerSvg.kind(b.stroke()), new Box(1, 1, 16, 10)),
                l -> Svg.path(
                        "line " + LayerSvg.kind(l.stroke()),
                        l.stroke() == Layer.Stroke.STEP ? "M1 9H9V3H17" : "M1 6H17"),
                t -> Svg.rect("target", new Box(1, 1, 16, 10)),
                v -> "<g class=\"hair\"><path d=\"M9 0V12\"/></g>");
        return "<svg class=\"sign\" viewBox=\"0 0 18 12\" aria-hidden=\"true\">" + inside + "</svg>";
    }

    private static String plain(Layer.Shape shape) {
        return Symbols.symbol(shape, MIDDLE, "").replace("<title></title>", "");
    }
}
