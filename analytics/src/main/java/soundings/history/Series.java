package soundings.history;

import java.util.List;
import soundings.chemistry.Parameter;

/** The readings of one parameter in one tank, oldest first, those set aside among them. */
public record Series(Parameter parameter, List<Point> points) {
    public Series {
        points = List.copyOf(points);
    }

    public List<Point> used() {
        return points.stream().filter(Point::used).toList();
    }
}
