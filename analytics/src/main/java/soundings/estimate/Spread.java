package soundings.estimate;

import java.util.List;

/**
 * One choice of the spreads the data do not give away directly, standard deviations in canonical units.
 *
 * @param kit one test, by source; read only through {@link #kit(int)}
 * @param use change of the use in a day
 * @param level unexplained change of the level in a day
 * @param growth of the steady change of the use
 */
record Spread(List<Double> kit, double use, double level, double growth) {
    Spread {
        kit = List.copyOf(kit);
    }

    double kit(int source) {
        return kit.get(source);
    }

    double[] kits() {
        return kit.stream().mapToDouble(k -> k).toArray();
    }
}
