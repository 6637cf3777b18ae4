package soundings.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/** A canvas that keeps the shapes painted on it, with their colours, instead of painting them. */
final class ShapeCanvas extends BlankCanvas {
    private final List<Kept> kept = new ArrayList<>();

    private record Kept(Color colour, boolean filled, Shape shape) {}

    @Override
    public void draw(Shape shape) {
        kept.add(new Kept(getColor(), false, getTransform().createTransformedShape(shape)));
    }

    @Override
    public void fill(Shape shape) {
        boolean round = shape instanceof Ellipse2D;
        kept.add(new Kept(getColor(), true, round ? shape : getTransform().createTransformedShape(shape)));
    }

    /** What was painted in one colour, moved to where the box begins. */
    Shapes shapes(Color colour, Box box) {
        PathText area = new PathText();
        PathText line = new PathText();
        List<Shapes.Spot> spots = new ArrayList<>();
        for (Kept one : kept) {
            if (one.colour().equals(colour) && one.filled() && one.shape() instanceof Ellipse2D dot) {
                spots.add(new Shapes.Spot(dot.getCenterX() + box.left(), dot.getCenterY() + box.top()));
            } else if (one.colour().equals(colour)) {
                trace(one.shape(), one.filled() ? area : line, box);
            }
        }
        return new Shapes(area.toString(), line.toString(), spots);
    }

    private static void trace(Shape shape, PathText path, Box box) {
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator it = shape.getPathIterator(null); !it.isDone(); it.next()) {
            int kind = it.currentSegment(at);
            double nextX = at[0] + box.left();
            double nextY = at[1] + box.top();
            if (kind == PathIterator.SEG_LINETO) {
                path.segment(x, y, nextX, nextY);
            } else if (kind == PathIterator.SEG_CLOSE) {
                path.close();
                continue;
            }
            x = nextX;
            y = nextY;
        }
    }
}
