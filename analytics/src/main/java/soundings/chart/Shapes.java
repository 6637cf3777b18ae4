package soundings.chart;

import java.util.List;

/**
 * One layer as shapes in the drawing's units.
 *
 * @param area path data of a filled area, empty for none
 * @param line path data of a line, or of error bars
 * @param spots centres of marks, in the layer's order
 */
record Shapes(String area, String line, List<Spot> spots) {
    static final Shapes NONE = new Shapes("", "", List.of());

    Shapes {
        spots = List.copyOf(spots);
    }

    record Spot(double x, double y) {}
}
