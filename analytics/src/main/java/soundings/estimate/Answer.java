package soundings.estimate;

import static soundings.estimate.Start.LEVEL;
import static soundings.estimate.Start.USE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.quantity.Interval;

/** Words the fitted model as an {@link Estimate}. */
final class Answer {
    private static final int AHEAD_DAYS = 30;
    private static final int PLAIN_DAYS = 30;
    private static final int PLAIN_FEWEST = 5;
    /** Part of a test's error that many tests do not average out: a bottle, an eye, an hour of the day; set on the bench. */
    private static final double SHARED = 0.3;
    /** Nodes lighter than this do not show in the track. */
    private static final double SHOWS = 0.1;

    private final Fitted fitted;
    private final Question question;
    private final List<Smoother.Smoothed> smoothed;
    private final ResidualCheck check;
    private final Leaning leaning;
    private final List<String> caveats = new ArrayList<>();
    private final Optional<UsualChange.Kept> usual;

    private Answer(Fitted fitted) {
        this.fitted = fitted;
        this.question = fitted.question();
        this.usual = UsualChange.of(question.inflow().changes(), question.end());
        Trace trace = Trace.of(question.begin(fitted.best()), question.stages());
        this.check = ResidualCheck.of(trace);
        this.leaning = Leaning.of(trace);
        this.smoothed = Smoother.back(trace, question.start());
    }

    static Estimate of(Fitted fitted) {
        return new Answer(fitted).estimate();
    }

    private Estimate estimate() {
        double blind = stepVariance() + written();
        double shared = SHARED * fitted.best().kit(0);
        Mixture levels = mixture(LEVEL, blind + shared * shared);
        Mixture uses = mixture(USE, 2 * blind / Math.pow(Math.max(spanDays(), 1), 2));
        Interval use = leaning.widen(widened(uses.interval()), false);
        Optional<Interval> plain = plainUse();
        caveats(use, plain);
        return new Estimate(
                basis(),
                new Estimate.Figures(
                        floored(leaning.widen(widened(levels.interval()), true)),
                        tellsUse() ? Optional.of(use) : Optional.empty(),
                        use.times(-1).plus(question.dosedNow()),
                        question.dosedNow(),
                        plain),
                new Estimate.Course(track(), ahead(), usual.map(UsualChange.Kept::usual)),
                fit(levels, uses),
                caveats,
                fitted.changed());
    }

    /** A poison is made in the tank and not dosed, and where nothing is and nothing goes in nothing is used. */
    private boolean tellsUse() {
        Parameter parameter = question.parameter();
        boolean nothing = question.dosedNow() == 0 && atZero();
        return parameter.balances()
                && parameter.kind() != Parameter.Kind.TOXIN
                && question.inflow().known()
                && !nothing;
    }

    private Estimate.Basis basis() {
        return new Estimate.Basis(
                question.tank().tank(),
                question.parameter(),
                question.end(),
                question.readings().size() - fitted.doubts().size(),
                spanDays(),
                fitted.doubts(),
                sources());
    }

    private Mixture mixture(int state, double extra) {
        return Mixture.of(fitted.nodes(), b -> b.mean(state), b -> b.covariance(state, state), extra);
    }

    private int spanDays() {
        return Estimating.spanDays(question.readings());
    }

    /** Where the residuals are larger than the model allows, the intervals are made as wide as the residuals are large. */
    private Interval widened(Interval interval) {
        double by = check.tooLarge() ? Math.sqrt(check.meanSquare()) : 1;
        return new Interval(
                interval.mid(),
                interval.mid() - by * (interval.mid() - interval.low()),
                interval.mid() + by * (interval.high() - interval.mid()));
    }

    /** Never below zero; and what no test can tell from none may be as high as half its step. */
    private Interval floored(Interval level) {
        if (!question.parameter().balances()) {
            return level;
        }
        double mid = Math.max(0, level.mid());
        double unseen = mid < question.step() / 2 ? question.step() / 2 : 0;
        return new Interval(mid, Math.max(0, level.low()), Math.max(level.high(), unseen));
    }

    /**
     * Rounding does not average out when the test's own scatter is small against its step: the mean of rounded results is
     * off by up to (step / pi) exp(-2 pi^2 sd^2 / step^2) (Widrow and Kollar 2008, Quantization Noise, ch. 4); half its square.
     */
    private double stepVariance() {
        double step = question.step();
        if (step == 0) {
            return 0;
        }
        double sd = fitted.best().kit(0);
        double off = step / Math.PI * Math.exp(-2 * Math.PI * Math.PI * sd * sd / (step * step));
        return off * off / 2;
    }

    /** Variance of a figure written to the parameter's own digits: no series, however regular, tells finer. */
    private double written() {
        double digit = Math.pow(10, -question.parameter().decimals());
        return digit * digit / 12;
    }

    private List<Estimate.Day> track() {
        Map<Double, List<Mixture.Part>> parts = new TreeMap<>();
        fitted.spreads(SHOWS).forEach((spread, weight) -> {
            for (Smoother.Smoothed s : lookBack(spread)) {
                Mixture.Part part =
                        new Mixture.Part(weight, s.after().mean(), s.after().variance());
                parts.computeIfAbsent(s.stage().day(), d -> new ArrayList<>()).add(part);
            }
        });
        Map<LocalDate, Estimate.Day> days = new TreeMap<>();
        parts.forEach((day, p) -> days.put(date(day), new Estimate.Day(date(day), normal(new Mixture(p)))));
        return List.copyOf(days.values());
    }

    private List<Smoother.Smoothed> lookBack(Spread spread) {
        return spread.equals(fitted.best()) ? smoothed : question.lookBack(spread);
    }

    private static LocalDate date(double day) {
        return LocalDate.ofEpochDay((long) Math.floor(day));
    }

    private Interval normal(Mixture mixture) {
        return floored(Interval.normal(mixture.mean(), Math.sqrt(mixture.variance())));
    }

    private List<Estimate.Day> ahead() {
        List<Grid.Node> nodes = fitted.nodes();
        List<Balance> at = nodes.stream().map(n -> n.end().copy()).toList();
        double noon = Inflows.noon(question.end());
        List<Estimate.Day> days = new ArrayList<>();
        for (int d = 1; d <= AHEAD_DAYS; d++) {
            Stage day = stageAhead(d, noon + d);
            List<Mixture.Part> before = new ArrayList<>();
            List<Mixture.Part> changed = new ArrayList<>();
            for (int i = 0; i < nodes.size(); i++) {
                at.get(i).take(day);
                (nodes.get(i).changed() ? changed : before)
                        .add(new Mixture.Part(
                                nodes.get(i).weight(),
                                at.get(i).mean(LEVEL),
                                at.get(i).covariance(LEVEL, LEVEL)));
            }
            days.add(new Estimate.Day(question.end().plusDays(d), widened(floored(fan(before, changed)))));
        }
        return days;
    }

    /** What goes on as it was and what has changed lately, each matched by one normal: the second is wide and seldom likely. */
    private static Interval fan(List<Mixture.Part> before, List<Mixture.Part> changed) {
        return new Mixture(Stream.of(before, changed)
                        .filter(p -> !p.isEmpty())
                        .map(p -> new Mixture(p).matched())
                        .toList())
                .interval();
    }

    private Stage stageAhead(int d, double at) {
        Inflow.Pulse nothing = new Inflow.Pulse(at, 1, 0, 0);
        Inflow.Pulse p = usual.filter(u -> u.usual().isOn(question.end().plusDays(d)))
                .map(UsualChange.Kept::each)
                .orElse(nothing);
        return new Stage(at, 1, question.dosedNow(), 0, List.of(), p.keep(), p.add(), p.addVariance(), 0);
    }

    /** Theil-Sen over the last weeks, on readings from which doses and changes are taken off. */
    private Optional<Interval> plainUse() {
        if (!question.inflow().known() || !question.parameter().balances()) {
            return Optional.empty();
        }
        List<Double> days = new ArrayList<>();
        List<Double> corrected = new ArrayList<>();
        double brought = 0;
        double from = smoothed.get(smoothed.size() - 1).stage().day() - PLAIN_DAYS;
        for (Smoother.Smoothed s : smoothed) {
            brought += s.stage().rise();
            for (Sight sight : s.stage().sights()) {
                if (s.stage().day() >= from && sight.exact()) {
                    days.add(s.stage().day());
                    corrected.add(sight.low() - brought);
                }
            }
            brought += s.after().mean() - s.before().mean();
        }
        boolean enough = days.size() >= PLAIN_FEWEST && Collections.max(days) > Collections.min(days);
        return enough ? Optional.of(Robust.line(days, corrected).slope().times(-1)) : Optional.empty();
    }

    private List<Estimate.SourceBias> sources() {
        Sources sources = question.sources();
        List<Estimate.SourceBias> all = new ArrayList<>();
        for (int i = 0; i < sources.size(); i++) {
            int source = i;
            int n = (int) question.readings().stream()
                    .filter(r -> sources.indexOf(r.method()) == source)
                    .count();
            Interval bias = i == 0
                    ? new Interval(0, 0, 0)
                    : mixture(Start.FIRST_BIAS + i - 1, 0).interval();
            double error = fitted.nodes().stream()
                    .mapToDouble(node -> node.weight() * node.spread().kit(source))
                    .sum();
            all.add(new Estimate.SourceBias(sources.names().get(i), n, bias, error));
        }
        return all;
    }

    private Estimate.Fit fit(Mixture levels, Mixture uses) {
        double kit = 0;
        double level = 0;
        double use = 0;
        double covariance = -levels.mean() * uses.mean();
        for (Grid.Node node : fitted.nodes()) {
            kit += node.weight() * node.spread().kit(0);
            level += node.weight() * node.spread().level();
            use += node.weight() * node.spread().use();
            Balance end = node.end();
            covariance += node.weight() * (end.covariance(LEVEL, USE) + end.mean(LEVEL) * end.mean(USE));
        }
        double levelSd = Math.sqrt(levels.variance());
        double useSd = Math.sqrt(uses.variance());
        return new Estimate.Fit(
                kit, question.step(), level, use, levelSd, useSd, covariance, usualGap(), check.sound());
    }

    private double usualGap() {
        List<Double> days =
                question.readings().stream().map(Sights::day).sorted().toList();
        List<Double> gaps = new ArrayList<>();
        for (int i = Math.max(1, days.size() - 10); i < days.size(); i++) {
            gaps.add(days.get(i) - days.get(i - 1));
        }
        return Math.max(1, Robust.median(gaps));
    }

    private void caveats(Interval use, Optional<Interval> plain) {
        caveats.addAll(question.inflow().caveats().stream().distinct().toList());
        for (Stage jump : fitted.jumps()) {
            caveats.add("the level moved by about " + amount(Math.sqrt(jump.jump())) + " shortly before "
                    + date(jump.day()) + " with no dose or change on record");
        }
        if (question.parameter().balances() && question.dosedNow() > 0 && atZero()) {
            caveats.add(
                    "the level lies at or near zero, where less is used than would be: the use may be higher than stated");
        }
        sources().stream().skip(1).map(this::bias).forEach(caveats::add);
        fitted.changed().map(Estimate.Changed::words).ifPresent(caveats::add);
        if (check.tooLarge()) {
            caveats.add("the readings scatter more than the model allows; the intervals were widened for it");
        }
        if (check.correlated()) {
            caveats.add("readings in a row err to the same side; the use may be less certain than stated");
        }
        plain.filter(p -> p.low() > use.high() || p.high() < use.low())
                .ifPresent(p -> caveats.add("a plain line through the last " + PLAIN_DAYS + " days gives another use: "
                        + amount(p.mid()) + " a day"));
    }

    /** How one way of testing stands to the one that the level is told on. */
    private String bias(Estimate.SourceBias source) {
        Scale scale = question.tank().findScale(question.parameter()).orElseThrow();
        double level = smoothed.get(smoothed.size() - 1).before().mean();
        Interval bias = scale.change(source.bias(), level);
        boolean lower = bias.mid() < 0;
        Interval size = lower ? bias.times(-1) : bias;
        String most = called(question.sources().names().get(0));
        boolean told = bias.low() > 0 || bias.high() < 0;
        return "tests by " + called(source.name()) + " read "
                + (told
                        ? Said.amount(size.mid(), scale, 0) + (lower ? " lower" : " higher") + " than those by " + most
                                + " (" + Said.span(size, scale) + "); the level is told as the latter have it"
                        : "as high as those by " + most + ", as far as can be told (" + Said.span(bias, scale) + ")");
    }

    private static String called(String name) {
        return name.isEmpty() ? "no named kit" : name;
    }

    /** Whether the last tests leave the level at zero, as far as the kit can tell. */
    private boolean atZero() {
        Smoother.Belief last = smoothed.get(smoothed.size() - 1).before();
        return last.mean() < 2 * fitted.best().kit(0);
    }

    private String amount(double value) {
        Scale scale = question.tank().findScale(question.parameter()).orElseThrow();
        return Said.amount(scale.change(value, 0), scale, 1);
    }
}
