package soundings.estimate;

/**
 * One choice of the spreads the data do not give away directly, standard deviations in canonical units.
 *
 * @param kit one test, by source; read only through {@link #kit(int)}
 * @param use change of the use in a day
 * @param level unexplained change of the level in a day
 * @param growth of the steady change of the use
 */
record Spread(java.util.List<Double> kit, double use, double level, double growth) {
    Spread {
        kit = java.util.List.copyOf(kit);
    }

    double kit(int source) {
        return kit.get(source);
    }
}
