package soundings.estimate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import soundings.quantity.Interval;

/** Normal distributions weighed together. */
record Mixture(List<Part> parts) {
    private static final int HALVINGS = 40;

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

    double mean() {
        return parts.stream().mapToDouble(p -> p.weight() * p.mean()).sum();
    }

    double variance() {
        double middle = mean();
        return parts.stream()
                .mapToDouble(p -> p.weight() * (p.variance() + (p.mean() - middle) * (p.mean() - middle)))
                .sum();
    }

    double below(double x) {
        return parts.stream()
                .mapToDouble(p -> p.weight()
                        * (p.variance() > 0
                                ? Gauss.cumulative((x - p.mean()) / Math.sqrt(p.variance()))
                                : (x >= p.mean() ? 1 : 0)))
                .sum();
    }

    double quantile(double share) {
        double reach = 12 * Math.sqrt(variance());
        double low = mean() - reach;
        double high = mean() + reach;
        for (int i = 0; i < HALVINGS && high > low; i++) {
            double middle = (low + high) / 2;
            if (below(middle) < share) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Median with the points at 5 % and 95 %. */
    Interval interval() {
        double mid = quantile(0.5);
        return new Interval(mid, Math.min(mid, quantile(0.05)), Math.max(mid, quantile(0.95)));
    }
}
