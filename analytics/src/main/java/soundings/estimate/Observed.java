package soundings.estimate;

/**
 * What one reading did: the state moves by {@code pull} and its covariance narrows by {@code narrowing} along the direction
 * of the reading.
 *
 * @param expected the reading expected beforehand
 * @param own variance of what was expected, the test's error left out
 * @param variance with the test's error
 * @param trust probability that the reading is not mistyped
 * @param surprise standardised difference; zero for a reading that is not exact
 */
record Observed(
        double expected,
        double own,
        double variance,
        double pull,
        double narrowing,
        double trust,
        double surprise,
        double logLikelihood) {
    static final Observed NOTHING = new Observed(0, 0, 1, 0, 0, 1, 0, 0);
}
