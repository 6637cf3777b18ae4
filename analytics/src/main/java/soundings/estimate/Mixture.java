package soundings.estimate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import soundings.quantity.Interval;

/** Normal distributions weighed together. */
record Mixture(List<Part> parts) {
    private static final int STEPS = 60;
    /** Standard deviations; no figure is printed finer. */
    private static final double CLOSE = 1e-9;

    Mixture {
        parts = List.copyOf(parts);
    }

    record Part(double weight, double mean, double variance) {}

    static Mixture of(
            List<Grid.Node> nodes, ToDoubleFunction<Balance> mean, ToDoubleFunction<Balance> variance, double extra) {
        return new Mixture(nodes.stream()
                .map(n -> new Part(
                        n.weight(), mean.applyAsDouble(n.end()), Math.max(variance.applyAsDouble(n.end()), 0) + extra))
                .toList());
    }

    /** One normal of the same mean and variance, with the weight of all. */
    Part matched() {
        double all = parts.stream().mapToDouble(Part::weight).sum();
        Mixture whole = new Mixture(parts.stream()
                .map(p -> new Part(p.weight() / all, p.mean(), p.variance()))
                .toList());
        return new Part(all, whole.mean(), whole.variance());
    }

    double mean() {
        double sum = 0;
        for (Part p : parts) {
            sum += p.weight() * p.mean();
        }
        return sum;
    }

    double variance() {
        double middle = mean();
        double sum = 0;
        for (Part p : parts) {
            sum += p.weight() * (p.variance() + (p.mean() - middle) * (p.mean() - middle));
        }
        return sum;
    }

    double below(double x) {
        double sum = 0;
        for (Part p : parts) {
            sum += p.weight()
                    * (p.variance() > 0
                            ? Gauss.cumulative((x - p.mean()) / Math.sqrt(p.variance()))
                            : (x >= p.mean() ? 1 : 0));
        }
        return sum;
    }

    private double density(double x) {
        double sum = 0;
        for (Part p : parts) {
            if (p.variance() > 0) {
                double sd = Math.sqrt(p.variance());
                sum += p.weight() * Gauss.density((x - p.mean()) / sd) / sd;
            }
        }
        return sum;
    }

    /** Newton's steps, a halving where one leaves the bracket. */
    double quantile(double share) {
        double sd = Math.sqrt(variance());
        double low = mean() - 12 * sd;
        double high = mean() + 12 * sd;
        double at = mean();
        for (int i = 0; i < STEPS && high - low > CLOSE * sd; i++) {
            double off = below(at) - share;
            low = off < 0 ? at : low;
            high = off < 0 ? high : at;
            double next = at - off / density(at);
            if (Math.abs(next - at) < CLOSE * sd) {
                return next;
            }
            at = next > low && next < high ? next : (low + high) / 2;
        }
        return at;
    }

    /** Median with the points at 5 % and 95 %. */
    Interval interval() {
        double mid = quantile(0.5);
        return new Interval(mid, Math.min(mid, quantile(0.05)), Math.max(mid, quantile(0.95)));
    }
}
