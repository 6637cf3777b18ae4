package soundings.samples;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** A tank that lives one day at a time: use, doses, water changes. Levels are in canonical units, a day's step is exact. */
final class SimulatedTank {
    final String name;
    final double litres;
    final Map<String, Double> level = new LinkedHashMap<>();
    final Map<String, Double> usePerDay = new LinkedHashMap<>();
    final Map<String, Double> fresh;
    /** additive to its parameter, its rise of 1 mL in 1 L, and its present rate. */
    final Map<String, Additive> additives = new TreeMap<>();

    private final Random chance;

    static final class Additive {
        final String parameter;
        final double risePerMlInOneLitre;
        double mlPerDay;

        Additive(String parameter, double risePerMlInOneLitre) {
            this.parameter = parameter;
            this.risePerMlInOneLitre = risePerMlInOneLitre;
        }
    }

    SimulatedTank(String name, double litres, Map<String, Double> fresh, long seed) {
        this.name = name;
        this.litres = litres;
        this.fresh = fresh;
        this.chance = new Random(seed);
    }

    SimulatedTank has(String parameter, double at, double used) {
        level.put(parameter, at);
        usePerDay.put(parameter, used);
        return this;
    }

    SimulatedTank doses(String additive, String parameter, double risePerMlInOneLitre) {
        additives.put(additive, new Additive(parameter, risePerMlInOneLitre));
        return this;
    }

    void rate(String additive, double mlPerDay) {
        additive(additive).mlPerDay = mlPerDay;
    }

    Additive additive(String name) {
        Additive found = additives.get(name);
        if (found == null) {
            throw new IllegalArgumentException("no additive " + name);
        }
        return found;
    }

    /** One day passes. */
    void day() {
        for (Map.Entry<String, Double> entry : level.entrySet()) {
            double next = entry.getValue() - usePerDay.getOrDefault(entry.getKey(), 0.0);
            for (Additive additive : additives.values()) {
                if (additive.parameter.equals(entry.getKey())) {
                    next += additive.mlPerDay * additive.risePerMlInOneLitre / litres;
                }
            }
            entry.setValue(Math.max(0, next));
        }
    }

    void change(double fraction) {
        level.replaceAll((p, c) -> c + fraction * (fresh.getOrDefault(p, 0.0) - c));
    }

    double of(String parameter) {
        return level.getOrDefault(parameter, 0.0);
    }

    /** What a kit with this spread and step shows. */
    double tested(String parameter, double spread, double step) {
        double seen = Math.max(0, of(parameter) + chance.nextGaussian() * spread);
        return Math.round(seen / step) * step;
    }

    boolean happens(double probability) {
        return chance.nextDouble() < probability;
    }

    int pick(int below) {
        return chance.nextInt(below);
    }

    /** Whether a test done about every {@code days} days is done today. */
    boolean due(LocalDate day, int days, int offset) {
        return Math.floorMod(day.toEpochDay() + offset, days) == 0 && chance.nextDouble() < 0.93;
    }
}
