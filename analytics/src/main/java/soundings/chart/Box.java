package soundings.chart;

/** A rectangle of the drawing, in its own units, y downward. */
record Box(double left, double top, double width, double height) {
    double right() {
        return left + width;
    }

    double bottom() {
        return top + height;
    }
}
