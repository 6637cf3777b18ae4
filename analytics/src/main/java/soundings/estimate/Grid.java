package soundings.estimate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** A node's spread, its share of the whole and the belief it ends in. */
    record Node(Spread spread, double logPrior, double weight, Balance end) {}

    private record Tried(Spread spread, double logPrior, Balance end) {
        double log() {
            return logPrior + end.logLikelihood();
        }
    }

    /** The nodes that matter, heaviest first, weights adding to one. */
    static List<Node> search(List<Axis> axes, Function<List<Double>, Spread> spread, Function<Spread, Balance> run) {
        Map<List<Integer>, Tried> tried = new HashMap<>();
        Queue<List<Integer>> edge = new ArrayDeque<>();
        edge.add(Collections.nCopies(axes.size(), 0));
        double best = Double.NEGATIVE_INFINITY;
        while (!edge.isEmpty()) {
            List<Integer> at = edge.remove();
            if (tried.containsKey(at)) {
                continue;
            }
            Tried node = attempt(at, axes, spread, run);
            tried.put(at, node);
            best = Math.max(best, node.log());
            if (node.log() > best - MATTERS) {
                neighbours(at).stream().filter(n -> !tried.containsKey(n)).forEach(edge::add);
            }
        }
        return weigh(tried.values(), best);
    }

    /** The same nodes weighed again on readings that changed a little. */
    static List<Node> again(List<Node> nodes, Function<Spread, Balance> run) {
        List<Tried> tried = nodes.stream()
                .map(n -> new Tried(n.spread(), n.logPrior(), run.apply(n.spread())))
                .toList();
        return weigh(tried, tried.stream().mapToDouble(Tried::log).max().orElseThrow());
    }

    private static Tried attempt(
            List<Integer> at, List<Axis> axes, Function<List<Double>, Spread> spread, Function<Spread, Balance> run) {
        List<Double> values = new ArrayList<>();
        double log = 0;
        for (int d = 0; d < axes.size(); d++) {
            values.add(axes.get(d).at(at.get(d)));
            log += axes.get(d).logPrior(at.get(d));
        }
        Spread chosen = spread.apply(values);
        Balance end = run.apply(chosen);
        return new Tried(chosen, log, end);
    }

    private static List<List<Integer>> neighbours(List<Integer> at) {
        List<List<Integer>> all = new ArrayList<>();
        for (int d = 0; d < at.size(); d++) {
            for (int by = -1; by <= 1; by += 2) {
                List<Integer> next = new ArrayList<>(at);
                next.set(d, at.get(d) + by);
                if (Math.abs(next.get(d)) <= REACH) {
                    all.add(List.copyOf(next));
                }
            }
        }
        return all;
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
                .map(t -> new Node(t.spread(), t.logPrior(), Math.exp(t.log() - best) / all, t.end()))
                .toList();
    }
}
