package soundings.estimate;

import java.util.Optional;

/**
 * A kit too coarse for the range it must judge.
 *
 * @param step of the results, canonical unit
 * @param error one standard deviation of a single test, the step counted in
 * @param range width of the range
 */
public record KitStep(double step, double error, double range) {
    /** Fewer steps than this over the range cannot tell inside from near its edge. Common practice, no source. */
    private static final double FEWEST_STEPS = 4;
    /** Width of the middle 90 % of a normal distribution, in standard deviations. */
    private static final double MIDDLE_90 = 3.29;

    /** Present when the range holds fewer than four steps, or is narrower than what single tests scatter over. */
    public static Optional<KitStep> tooCoarse(Estimate estimate, double low, double high) {
        Estimate.Fit fit = estimate.fit();
        double error = Math.sqrt(fit.kitError() * fit.kitError() + fit.kitStep() * fit.kitStep() / 12);
        double range = high - low;
        boolean coarse = fit.kitStep() * FEWEST_STEPS > range || MIDDLE_90 * error > range;
        return coarse ? Optional.of(new KitStep(fit.kitStep(), error, range)) : Optional.empty();
    }
}
