package soundings.estimate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.log.Reading;
import soundings.quantity.Interval;

/**
 * Level, use and drift in the parameter's canonical unit (a day), each with its 90 % interval.
 *
 * @param asOf the day the level and the rates are stated for
 * @param readings how many readings the figures rest on
 * @param use positive when used up; empty where it cannot be told from the dose: a condition, or a dose of unknown strength
 * @param drift what the level does a day with the present dose, water changes left out
 * @param dosedPerDay rise a day of the present dose; zero when nothing is dosed or its strength is unknown
 * @param track the smoothed level, a point a day that matters, for charts
 * @param ahead the level on days to come if nothing changes
 * @param setAside readings the model found to be mistyped, with why
 * @param plainUse Theil-Sen on dose-corrected readings of the last weeks, where there are enough; a cross-check
 * @param sources the kits and laboratories the readings come from, the one the level is stated on first
 * @param fit what the figures above were computed with, for {@link TestsNeeded}, {@link KitStep} and the curious
 * @param caveats what a reader must know: unknown dose strength, a residual check failed, cross-check disagrees
 */
public record Estimate(
        String tank,
        Parameter parameter,
        LocalDate asOf,
        int readings,
        int spanDays,
        Interval level,
        Optional<Interval> use,
        Interval drift,
        double dosedPerDay,
        List<Day> track,
        List<Day> ahead,
        List<Doubt> setAside,
        Optional<Interval> plainUse,
        List<SourceBias> sources,
        Fit fit,
        List<String> caveats)
        implements Outcome {
    public Estimate {
        track = List.copyOf(track);
        ahead = List.copyOf(ahead);
        setAside = List.copyOf(setAside);
        sources = List.copyOf(sources);
        caveats = List.copyOf(caveats);
    }

    @Override
    public <R> R match(Function<Estimate, R> estimate, Function<NotEnough, R> notEnough) {
        return estimate.apply(this);
    }

    /** The level on days to come when the present dose is changed so that it raises {@code morePerDay} more; never below zero. */
    public List<Day> aheadWith(double morePerDay) {
        return ahead.stream()
                .map(d -> new Day(
                        d.date(), floored(d.level().plus(morePerDay * ChronoUnit.DAYS.between(asOf, d.date())))))
                .toList();
    }

    private static Interval floored(Interval level) {
        return new Interval(Math.max(0, level.mid()), Math.max(0, level.low()), Math.max(0, level.high()));
    }

    /** The level on one day. */
    public record Day(LocalDate date, Interval level) {}

    /** A reading the model does not believe. */
    public record Doubt(Reading reading, String because) {}

    /**
     * One kit or laboratory among several.
     *
     * @param name as the log names it; empty where the log names none
     * @param bias how much higher it reads than the first source; zero for the first
     * @param error one standard deviation of a single test
     */
    public record SourceBias(String name, int readings, Interval bias, double error) {}

    /**
     * The spreads the filter found and where it ended.
     *
     * @param kitError one standard deviation of a test of the main source, its step not counted
     * @param kitStep the step its results are written in; zero where none shows
     * @param levelWander standard deviation of unexplained movement of the level in a day
     * @param useWander standard deviation by which the use changes in a day
     * @param levelSd standard deviation of the level on {@link Estimate#asOf}
     * @param useSd standard deviation of the use, and so of the drift
     * @param levelUseCovariance their covariance
     * @param testEveryDays usual days between tests, median of the last ten
     * @param sound false when the residual check failed: the figures are then to be doubted
     */
    public record Fit(
            double kitError,
            double kitStep,
            double levelWander,
            double useWander,
            double levelSd,
            double useSd,
            double levelUseCovariance,
            double testEveryDays,
            boolean sound) {}
}
