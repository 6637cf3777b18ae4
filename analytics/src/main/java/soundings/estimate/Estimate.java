package soundings.estimate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.log.Reading;
import soundings.quantity.Interval;

/**
 * Level, use and drift of one test of one tank in the parameter's canonical unit (a day), each with its 90 % interval.
 *
 * @param fit what the figures were computed with, for {@link TestsNeeded}, {@link KitStep} and the curious
 * @param caveats what a reader must know: unknown dose strength, a residual check failed, cross-check disagrees
 * @param changed what may have changed shortly before the last tests; empty where nothing likely did
 */
public record Estimate(
        Basis basis, Figures figures, Course course, Fit fit, List<String> caveats, Optional<Changed> changed)
        implements Outcome {
    public Estimate {
        caveats = List.copyOf(caveats);
    }

    public Estimate(Basis basis, Figures figures, Course course, Fit fit) {
        this(basis, figures, course, fit, List.of(), Optional.empty());
    }

    /**
     * What the figures rest on.
     *
     * @param asOf the day the level and the rates are stated for
     * @param readings how many readings the figures rest on
     * @param setAside readings the model found to be mistyped, with why
     * @param sources the kits and laboratories the readings come from, the one the level is stated on first
     */
    public record Basis(
            String tank,
            Parameter parameter,
            LocalDate asOf,
            int readings,
            int spanDays,
            List<Doubt> setAside,
            List<SourceBias> sources) {
        public Basis {
            setAside = List.copyOf(setAside);
            sources = List.copyOf(sources);
        }

        public Basis(String tank, Parameter parameter, LocalDate asOf, int readings, int spanDays) {
            this(tank, parameter, asOf, readings, spanDays, List.of(), List.of());
        }
    }

    /**
     * Canonical unit, and a day.
     *
     * @param use positive when used up; empty where it cannot be told from the dose: a condition, or a dose of unknown strength
     * @param drift what the level does a day with the present dose, water changes left out
     * @param dosedPerDay rise a day of the present dose; zero when nothing is dosed or its strength is unknown
     * @param plainUse Theil-Sen on dose-corrected readings of the last weeks, where there are enough; a cross-check
     */
    public record Figures(
            Interval level, Optional<Interval> use, Interval drift, double dosedPerDay, Optional<Interval> plainUse) {}

    /**
     * The level day by day.
     *
     * @param track smoothed, a point a day that matters, for charts
     * @param ahead on days to come if nothing changes, the keeper's usual water changes among what goes on
     * @param usualChange the water changes counted in ahead; empty where there is no habit to go by
     */
    public record Course(List<Day> track, List<Day> ahead, Optional<UsualChange> usualChange) {
        public static final Course NONE = new Course(List.of(), List.of(), Optional.empty());

        public Course {
            track = List.copyOf(track);
            ahead = List.copyOf(ahead);
        }
    }

    @Override
    public String tank() {
        return basis.tank();
    }

    @Override
    public Parameter parameter() {
        return basis.parameter();
    }

    public LocalDate asOf() {
        return basis.asOf();
    }

    public int readings() {
        return basis.readings();
    }

    public int spanDays() {
        return basis.spanDays();
    }

    public List<Doubt> setAside() {
        return basis.setAside();
    }

    public List<SourceBias> sources() {
        return basis.sources();
    }

    public Interval level() {
        return figures.level();
    }

    public Optional<Interval> use() {
        return figures.use();
    }

    public Interval drift() {
        return figures.drift();
    }

    public double dosedPerDay() {
        return figures.dosedPerDay();
    }

    public Optional<Interval> plainUse() {
        return figures.plainUse();
    }

    public List<Day> track() {
        return course.track();
    }

    public List<Day> ahead() {
        return course.ahead();
    }

    @Override
    public <R> R match(Function<Estimate, R> estimate, Function<NotEnough, R> notEnough) {
        return estimate.apply(this);
    }

    /** The level on days to come when the present dose is changed so that it raises {@code morePerDay} more; never below zero. */
    public List<Day> aheadWith(double morePerDay) {
        return aheadWith(morePerDay, 0, 0);
    }

    /** The same with {@code once} given besides in equal parts on the first days; water changes take out their share of both. */
    public List<Day> aheadWith(double morePerDay, double once, int onDays) {
        List<Day> days = new ArrayList<>();
        double more = 0;
        for (Day day : ahead()) {
            more += morePerDay + (ChronoUnit.DAYS.between(asOf(), day.date()) <= onDays ? once / onDays : 0);
            double left = course.usualChange()
                    .filter(c -> c.isOn(day.date()))
                    .map(c -> 1 - c.share())
                    .orElse(1.0);
            more *= left;
            days.add(new Day(day.date(), floored(day.level().plus(more))));
        }
        return days;
    }

    /** What the drift comes to in so many days, water changes left out: a level falls no further than to zero. */
    public Interval driftOver(int days) {
        Interval level = level();
        Interval all = drift().times(days);
        return parameter().balances()
                ? new Interval(
                        Math.max(all.mid(), -level.mid()),
                        Math.max(all.low(), -level.high()),
                        Math.max(all.high(), -level.mid()))
                : all;
    }

    private static Interval floored(Interval level) {
        return new Interval(Math.max(0, level.mid()), Math.max(0, level.low()), Math.max(0, level.high()));
    }

    /** The level on one day. */
    public record Day(LocalDate date, Interval level) {}

    /**
     * The last tests do not agree with the use before: it took a step, or the level was moved by what nobody wrote down.
     *
     * @param after the likeliest such change came after the tests of this day
     * @param tests how many tests there are since
     * @param probability that there was one at all, 0 to 1
     */
    public record Changed(LocalDate after, int tests, double probability) {
        /** In a sentence's words; the day as {@code 2026-11-04}. */
        public String words() {
            return (tests == 1 ? "the last test does" : "the last " + tests + " tests do")
                    + " not agree with the use before " + after
                    + ": the use may have changed, or something moved the level that is not on record";
        }
    }

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
