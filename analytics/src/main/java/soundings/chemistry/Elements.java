package soundings.chemistry;

import java.util.Map;
import java.util.TreeSet;

/** Atomic weights, g/mol, by symbol. */
public record Elements(Map<String, Double> weights) {
    public Elements {
        weights = Map.copyOf(weights);
    }

    public boolean knows(String symbol) {
        return weights.containsKey(symbol);
    }

    /** @throws IllegalArgumentException when the tables have no such element */
    public double weight(String symbol) {
        Double weight = weights.get(symbol);
        if (weight == null) {
            throw new IllegalArgumentException("no atomic weight for '" + symbol + "'; there are "
                    + String.join(" ", new TreeSet<>(weights.keySet())));
        }
        return weight;
    }
}
