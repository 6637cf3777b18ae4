package soundings.estimate;

import java.util.List;

/**
 * What comes into a tank for one parameter, in canonical units of the tank's water.
 *
 * @param rates from that moment on, what all doses together raise a day; oldest first
 * @param pulses water changes and single doses
 * @param changes the water changes among them
 * @param shakes moments at which a dose of unknown strength was altered
 * @param known false when something is dosed whose strength or the tank's volume is unknown
 * @param caveats what was assumed
 */
record Inflow(
        List<Rate> rates,
        List<Pulse> pulses,
        List<Pulse> changes,
        List<Shake> shakes,
        boolean known,
        List<String> caveats) {
    static final Inflow NONE = new Inflow(List.of(), List.of(), List.of(), List.of(), true, List.of());

    Inflow {
        rates = List.copyOf(rates);
        pulses = List.copyOf(pulses);
        changes = List.copyOf(changes);
        shakes = List.copyOf(shakes);
        caveats = List.copyOf(caveats);
    }

    /** A moment at which the use, as seen, may jump. */
    record Shake(double day, double variance) {}

    record Rate(double day, double risePerDay) {}

    /** level' = keep level + add, give or take. */
    record Pulse(double day, double keep, double add, double addVariance) {
        Pulse then(Pulse next) {
            return new Pulse(
                    day,
                    keep * next.keep,
                    add * next.keep + next.add,
                    addVariance * next.keep * next.keep + next.addVariance);
        }
    }

    double risePerDay(double day) {
        double rise = 0;
        for (Rate rate : rates) {
            if (rate.day() <= day) {
                rise = rate.risePerDay();
            }
        }
        return rise;
    }
}
