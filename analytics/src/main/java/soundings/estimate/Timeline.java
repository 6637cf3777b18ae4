package soundings.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Readings, doses and changes of one test put into one order of moments. */
final class Timeline {
    private Timeline() {}

    /** A reading and its moment: days since 1970. */
    record Timed(double day, Sight sight) {}

    /** Stages from the first reading to {@code end}, both included; what happened before the first reading is left out. */
    static List<Stage> of(List<Timed> sights, Inflow inflow, double end) {
        NavigableMap<Double, List<Sight>> seen = sights.stream()
                .collect(Collectors.groupingBy(
                        Timed::day, TreeMap::new, Collectors.mapping(Timed::sight, Collectors.toList())));
        NavigableMap<Double, Inflow.Pulse> pulses = inflow.pulses().stream()
                .collect(Collectors.toMap(Inflow.Pulse::day, p -> p, Inflow.Pulse::then, TreeMap::new));
        return stages(moments(seen, pulses, inflow, end), seen, pulses, inflow);
    }

    private static List<Double> moments(
            NavigableMap<Double, List<Sight>> seen, Map<Double, Inflow.Pulse> pulses, Inflow inflow, double end) {
        TreeMap<Double, Boolean> moments = new TreeMap<>();
        seen.keySet().forEach(d -> moments.put(d, true));
        pulses.keySet().forEach(d -> moments.put(d, true));
        inflow.rates().forEach(r -> moments.put(r.day(), true));
        inflow.shakes().forEach(s -> moments.put(s.day(), true));
        moments.put(end, true);
        return List.copyOf(moments.subMap(seen.firstKey(), true, end, true).keySet());
    }

    private static List<Stage> stages(
            List<Double> moments, Map<Double, List<Sight>> seen, Map<Double, Inflow.Pulse> pulses, Inflow inflow) {
        NavigableMap<Double, Double> rates = new TreeMap<>(Map.of(Double.NEGATIVE_INFINITY, 0.0));
        inflow.rates().forEach(r -> rates.put(r.day(), r.risePerDay()));
        Map<Double, Double> shakes = inflow.shakes().stream()
                .collect(Collectors.toMap(Inflow.Shake::day, Inflow.Shake::variance, Double::sum));
        List<Stage> stages = new ArrayList<>();
        double before = moments.get(0);
        for (double day : moments) {
            double dt = day - before;
            double rise = dt * rates.floorEntry(before).getValue();
            Inflow.Pulse p = pulses.getOrDefault(day, new Inflow.Pulse(day, 1, 0, 0));
            List<Sight> sights = seen.getOrDefault(day, List.of());
            double shake = shakes.getOrDefault(day, 0.0);
            stages.add(new Stage(day, dt, rise, 0, sights, p.keep(), p.add(), p.addVariance(), shake));
            before = day;
        }
        return stages;
    }

    /** The same stages with a moment more at {@code day}, at which nothing happens. */
    static List<Stage> splitAt(List<Stage> stages, double day) {
        List<Stage> out = new ArrayList<>();
        for (Stage stage : stages) {
            double before = stage.day() - stage.dt();
            if (before < day && day < stage.day()) {
                double share = (day - before) / stage.dt();
                out.add(new Stage(day, day - before, stage.rise() * share, 0, List.of(), 1, 0, 0, 0));
                out.add(stage.lasting(stage.day() - day, stage.rise() * (1 - share)));
            } else {
                out.add(stage);
            }
        }
        return out;
    }
}
