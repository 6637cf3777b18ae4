package soundings.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.function.Function;

/**
 * Spreads tried on a grid of steps around their priors' middles and weighed by how well they foretold the readings. The grid
 * grows from the middle as long as its edge matters, so it finds a kit far better or worse than usual without a wide grid
 * for every series.
 */
final class Grid {
    /** Nodes this far, in log weight, below the best are left out and not walked past. */
    private static final double MATTERS = 3.2;

    private static final int REACH = 9;

    private Grid() {}

    /**
     * One dimension: {@code middle * ratio^i}.
     *
     * @param priorSd standard deviation of the logarithm, before looking at the readings
     */
    record Axis(double middle, double ratio, double priorSd) {
        double at(int i) {
            return middle * Math.pow(ratio, i);
        }

        double logPrior(int i) {
            double z = i * Math.log(ratio) / priorSd;
            return -z * z / 2;
        }
    }

    /**
     * One pass through the readings.
     *
     * @param late the belief before the first of the last tests, see {@link Lately}
     * @param end after the last
     */
    record Pass(Balance late, Balance end) {}

    /** A node's spread, its share of the whole and how it went; {@code changed}: with a late change, see {@link Lately}. */
    record Node(Spread spread, double logPrior, double weight, Pass pass, boolean changed) {
        Balance end() {
            return pass.end();
        }

        Node weighing(double other) {
            return new Node(spread, logPrior, other, pass, changed);
        }

        Node ending(Balance other, boolean changing) {
            return new Node(spread, logPrior, weight, new Pass(pass.late(), other), changing);
        }
    }

    private record Tried(Spread spread, double logPrior, Pass pass) {
        double log() {
            return logPrior + pass.end().logLikelihood();
        }
    }

    /** The nodes that matter, heaviest first, weights adding to one. */
    static List<Node> search(List<Axis> axes, Function<List<Double>, Spread> spread, Function<Spread, Pass> run) {
        return new Walk(axes, spread, run).all();
    }

    /** Walks from the middle, the best node found so far first. */
    private static final class Walk {
        private final List<Axis> axes;
        private final Function<List<Double>, Spread> spread;
        private final Function<Spread, Pass> run;
        private final Map<List<Integer>, Tried> tried = new HashMap<>();
        private final Queue<List<Integer>> edge = new PriorityQueue<>(Comparator.comparingDouble(at -> -log(at)));
        private double best = Double.NEGATIVE_INFINITY;

        Walk(List<Axis> axes, Function<List<Double>, Spread> spread, Function<Spread, Pass> run) {
            this.axes = axes;
            this.spread = spread;
            this.run = run;
        }

        List<Node> all() {
            attempt(Collections.nCopies(axes.size(), 0));
            while (!edge.isEmpty()) {
                List<Integer> at = edge.remove();
                if (log(at) > best - MATTERS) {
                    around(at);
                }
            }
            return weigh(tried.values(), best);
        }

        private void around(List<Integer> at) {
            for (int d = 0; d < axes.size(); d++) {
                for (int by = -1; by <= 1; by += 2) {
                    List<Integer> next = beside(at, d, by);
                    if (Math.abs(next.get(d)) <= REACH
                            && !tried.containsKey(next)
                            && mayMatter(at, beside(at, d, -by))) {
                        attempt(next);
                    }
                }
            }
        }

        /** Along an axis the weight's logarithm falls ever faster, so it lies no higher than a straight line foretells. */
        private boolean mayMatter(List<Integer> at, List<Integer> before) {
            return !tried.containsKey(before) || 2 * log(at) - log(before) > best - MATTERS;
        }

        private double log(List<Integer> at) {
            Tried node = tried.get(at);
            return node == null ? Double.NEGATIVE_INFINITY : node.log();
        }

        private void attempt(List<Integer> at) {
            Tried node = Grid.attempt(at, axes, spread, run);
            tried.put(at, node);
            best = Math.max(best, node.log());
            edge.add(at);
        }

        private static List<Integer> beside(List<Integer> at, int axis, int by) {
            List<Integer> next = new ArrayList<>(at);
            next.set(axis, at.get(axis) + by);
            return List.copyOf(next);
        }
    }

    /** The same nodes weighed again on readings that changed a little. */
    static List<Node> again(List<Node> nodes, Function<Spread, Pass> run) {
        List<Tried> tried = nodes.stream()
                .map(n -> new Tried(n.spread(), n.logPrior(), run.apply(n.spread())))
                .toList();
        return weigh(tried, tried.stream().mapToDouble(Tried::log).max().orElseThrow());
    }

    private static Tried attempt(
            List<Integer> at, List<Axis> axes, Function<List<Double>, Spread> spread, Function<Spread, Pass> run) {
        List<Double> values = new ArrayList<>();
        double log = 0;
        for (int d = 0; d < axes.size(); d++) {
            values.add(axes.get(d).at(at.get(d)));
            log += axes.get(d).logPrior(at.get(d));
        }
        Spread chosen = spread.apply(values);
        return new Tried(chosen, log, run.apply(chosen));
    }

    private static List<Node> weigh(Iterable<Tried> tried, double best) {
        List<Tried> kept = new ArrayList<>();
        double sum = 0;
        for (Tried t : tried) {
            if (t.log() > best - MATTERS) {
                kept.add(t);
                sum += Math.exp(t.log() - best);
            }
        }
        kept.sort((a, b) -> Double.compare(b.log(), a.log()));
        double all = sum;
        return kept.stream()
                .map(t -> new Node(t.spread(), t.logPrior(), Math.exp(t.log() - best) / all, t.pass(), false))
                .toList();
    }
}
