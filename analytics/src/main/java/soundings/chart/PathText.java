package soundings.chart;

/** Path data, built point by point; a segment that begins where the last one ended goes on from there. */
final class PathText {
    private final StringBuilder d = new StringBuilder();
    private String last = "";

    PathText move(double x, double y) {
        last = point(x, y);
        d.append('M').append(last);
        return this;
    }

    PathText line(double x, double y) {
        String next = point(x, y);
        if (!next.equals(last)) {
            d.append('L').append(next);
            last = next;
        }
        return this;
    }

    PathText segment(double x1, double y1, double x2, double y2) {
        if (!point(x1, y1).equals(last)) {
            move(x1, y1);
        }
        return line(x2, y2);
    }

    PathText close() {
        d.append('Z');
        last = "";
        return this;
    }

    private static String point(double x, double y) {
        return Svg.at(x) + " " + Svg.at(y);
    }

    @Override
    public String toString() {
        return d.toString();
    }
}
