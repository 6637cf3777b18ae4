package soundings.estimate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.log.Reading;
import soundings.quantity.Interval;

/**
 * Level, use and drift in the parameter's canonical unit (a day), each with its 90 % interval.
 *
 * @param asOf the last used reading's day or the report's day, whichever the level is stated for
 * @param use positive when used up
 * @param drift what the level does a day with the present dose, water changes left out
 * @param dosedPerDay rise a day of the present dose; zero when nothing is dosed
 * @param track the smoothed level, a point a day that matters, for charts
 * @param ahead the level on days to come if nothing changes
 * @param setAside readings the model found to be mistyped, with why
 * @param plainUse Theil-Sen on dose-corrected readings, where there are enough
 * @param caveats what a reader must know: unknown dose strength, a residual check failed, cross-check disagrees
 */
public record Estimate(
        String tank,
        Parameter parameter,
        LocalDate asOf,
        int readings,
        int spanDays,
        Interval level,
        Interval use,
        Interval drift,
        double dosedPerDay,
        List<Day> track,
        List<Day> ahead,
        List<Doubt> setAside,
        Optional<Interval> plainUse,
        List<String> caveats)
        implements Outcome {
    public Estimate {
        track = List.copyOf(track);
        ahead = List.copyOf(ahead);
        setAside = List.copyOf(setAside);
        caveats = List.copyOf(caveats);
    }

    @Override
    public <R> R match(Function<Estimate, R> estimate, Function<NotEnough, R> notEnough) {
        return estimate.apply(this);
    }

    /** The level on one day. */
    public record Day(LocalDate date, Interval level) {}

    /** A reading the model does not believe. */
    public record Doubt(Reading reading, String because) {}
}
