package soundings.care;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import soundings.quantity.Interval;

/**
 * When a falling level reaches a limit: a straight line, or one of the logarithms, by least squares, whichever lies closer to the
 * readings; through the last few alone where that misses them.
 *
 * @param shape which of the two
 * @param day where the line meets the limit, with the 90 % interval of Fieller (1954, J. R. Stat. Soc. B 16, 175-185)
 * @param readings how many it rests on
 */
public record Falling(Shape shape, Interval day, int readings) {
    /** The fewest readings a line with an interval can be drawn through. */
    static final int FEWEST = 3;

    /** So many of the last readings are looked at by themselves. */
    private static final int LAST = 4;

    /** Up to this ratio of their squares neither shape is the better one: on made-up tanks nine in ten intervals then hold the day. */
    private static final double ALIKE = 2;

    /** How it falls. */
    public enum Shape {
        /** The same amount a day. */
        LINEAR,
        /** The same share a day. */
        LOG_LINEAR
    }

    /** A reading: days since some first day, and its level. */
    record At(double day, double level) {}

    /** Empty where there are too few readings, or where their fall is no clearer than their scatter. */
    static Optional<Falling> to(double limit, List<At> readings) {
        if (readings.size() < FEWEST) {
            return Optional.empty();
        }
        Line line = Line.through(readings, d -> 1, step(readings) / Math.sqrt(12));
        Fit straight = new Fit(Shape.LINEAR, squares(readings, line::at), line::at, line.reaches(limit));
        Optional<Fit> curved = limit > 0
                ? logarithms(readings)
                        .map(logs -> new Fit(
                                Shape.LOG_LINEAR,
                                squares(readings, d -> Math.exp(logs.at(d))),
                                d -> Math.exp(logs.at(d)),
                                logs.reaches(Math.log(limit))))
                : Optional.empty();
        Fit all = curved.map(c -> c.squares() < straight.squares() ? c.beside(straight) : straight.beside(c))
                .orElse(straight);
        return lately(limit, readings, all).orElse(all).falling(readings.size());
    }

    /**
     * A straight line through the last readings alone, where what was drawn through all of them clearly misses those: nitrite's fall
     * is often the steepest at its end.
     */
    private static Optional<Fit> lately(double limit, List<At> readings, Fit all) {
        if (readings.size() <= LAST) {
            return Optional.empty();
        }
        List<At> last = readings.subList(readings.size() - LAST, readings.size());
        double step = step(readings);
        double unseen = LAST * step * step / 12;
        Line line = Line.through(last, d -> 1, step / Math.sqrt(12));
        double squares = squares(last, line::at) + unseen;
        boolean misses = squares(last, all.course()) + unseen > ALIKE * squares;
        return misses
                ? line.reaches(limit).map(day -> new Fit(Shape.LINEAR, squares, line::at, Optional.of(day)))
                : Optional.empty();
    }

    /** One shape's answer, with the squares its line leaves among the readings. */
    private record Fit(Shape shape, double squares, DoubleUnaryOperator course, Optional<Interval> day) {
        /** Where the readings cannot tell the two shapes apart, the interval takes in what the other one says. */
        Fit beside(Fit other) {
            boolean alike = other.squares() < ALIKE * squares && other.day().isPresent();
            return alike
                    ? new Fit(
                            shape,
                            squares,
                            course,
                            day.map(d -> around(d, other.day().orElseThrow())))
                    : this;
        }

        private static Interval around(Interval one, Interval other) {
            return new Interval(one.mid(), Math.min(one.low(), other.low()), Math.max(one.high(), other.high()));
        }

        Optional<Falling> falling(int readings) {
            return day.map(d -> new Falling(shape, d, readings));
        }
    }

    /**
     * The line of the logarithms, each weighed by the square of its level, so that a kit's error counts the same high and low. The
     * logarithm of zero is none, so a reading of zero leaves only the straight line.
     */
    private static Optional<Line> logarithms(List<At> readings) {
        if (readings.stream().anyMatch(r -> r.level() <= 0)) {
            return Optional.empty();
        }
        List<At> logs =
                readings.stream().map(r -> new At(r.day(), Math.log(r.level()))).toList();
        Line rough = Line.through(logs, d -> 1, 0);
        return Optional.of(Line.through(logs, d -> Math.exp(2 * rough.at(d)), step(readings) / Math.sqrt(12)));
    }

    private static double squares(List<At> readings, DoubleUnaryOperator line) {
        return readings.stream()
                .mapToDouble(r -> Math.pow(r.level() - line.applyAsDouble(r.day()), 2))
                .sum();
    }

    /** The smallest difference between two readings: no finer than what the kit shows, so no smaller scatter is believed. */
    private static double step(List<At> readings) {
        double[] levels =
                readings.stream().mapToDouble(At::level).distinct().sorted().toArray();
        return IntStream.range(1, levels.length)
                .mapToDouble(i -> levels[i] - levels[i - 1])
                .min()
                .orElse(0);
    }

    /** A least-squares line about the weighted middle of its days. */
    private record Line(
            int n, double weight, double middleDay, double middleLevel, double slope, double spread, double scatter) {

        static Line through(List<At> points, DoubleUnaryOperator weightOn, double leastScatter) {
            double weight = sum(points, weightOn, p -> 1);
            double x = sum(points, weightOn, At::day) / weight;
            double y = sum(points, weightOn, At::level) / weight;
            double spread = sum(points, weightOn, p -> Math.pow(p.day() - x, 2));
            double together = sum(points, weightOn, p -> (p.day() - x) * (p.level() - y));
            double slope = spread > 0 ? together / spread : 0;
            double rest = sum(points, weightOn, p -> Math.pow(p.level() - y - slope * (p.day() - x), 2));
            double scatter = Math.sqrt(rest / (points.size() - 2));
            return new Line(points.size(), weight, x, y, slope, spread, Math.max(scatter, leastScatter));
        }

        private static double sum(List<At> points, DoubleUnaryOperator weightOn, ToDoubleFunction<At> of) {
            return points.stream()
                    .mapToDouble(p -> weightOn.applyAsDouble(p.day()) * of.applyAsDouble(p))
                    .sum();
        }

        double at(double day) {
            return middleLevel + slope * (day - middleDay);
        }

        /**
         * All days u, from the middle on, at which the line may lie at the limit:
         * {@code (d + b u)^2 <= t^2 s^2 (1/w + u^2/Sxx)} with d the height above the limit, w the sum of
         * weights.
         */
        Optional<Interval> reaches(double limit) {
            double t = new TDistribution(n - 2.0).inverseCumulativeProbability(0.95);
            double above = middleLevel - limit;
            double reach = t * t * scatter * scatter;
            double a = slope * slope - reach / spread;
            if (slope >= 0 || !(a > 0)) {
                return Optional.empty();
            }
            double b = slope * above;
            double root = Math.sqrt(Math.max(0, b * b - a * (above * above - reach / weight)));
            double mid = -above / slope;
            double low = Math.min(mid, (-b - root) / a);
            double high = Math.max(mid, (-b + root) / a);
            return Optional.of(new Interval(middleDay + mid, middleDay + low, middleDay + high));
        }
    }
}
