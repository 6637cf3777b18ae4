package soundings.estimate;

/**
 * Rough sizes the priors are hung on, canonical units.
 *
 * @param level usual level, the middle of the readings
 * @param spread robust spread of the readings
 * @param kit one standard deviation of a home test
 * @param use size of the use a day
 * @param kitStated the keeper stated the kit's error
 */
record Scales(double level, double spread, double kit, double use, boolean kitStated) {
    Scales withUse(double size) {
        return new Scales(level, spread, kit, size, kitStated);
    }
}
