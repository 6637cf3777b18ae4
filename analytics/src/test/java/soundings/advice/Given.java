package soundings.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.Outcome;
import soundings.history.History;
import soundings.history.WrittenLog;
import soundings.quantity.Interval;
import soundings.setup.Setup;
import soundings.setup.SmallReference;

/** Cases built by hand: a log, a setup, and estimates with the numbers a test wants. */
final class Given {
    static final Reference REFERENCE = SmallReference.load();

    private Given() {}

    static WrittenLog log() {
        return new WrittenLog(REFERENCE);
    }

    /** An estimate as of a day with normal spreads, the days ahead by the plain sum of level and drift. */
    static Estimate estimate(
            LocalDate asOf, Parameter parameter, double level, double levelSd, double use, double useSd, double dosed) {
        List<Estimate.Day> ahead = new ArrayList<>();
        for (int d = 1; d <= 30; d++) {
            double sd = Math.hypot(levelSd, d * useSd);
            ahead.add(new Estimate.Day(asOf.plusDays(d), Interval.normal(level + d * (dosed - use), sd)));
        }
        return new Estimate(
                new Estimate.Basis("Cube", parameter, asOf, 20, 40),
                new Estimate.Figures(
                        Interval.normal(level, levelSd),
                        Optional.of(Interval.normal(use, useSd)),
                        Interval.normal(dosed - use, useSd),
                        dosed,
                        Optional.empty()),
                new Estimate.Course(List.of(), ahead, Optional.empty()),
                new Estimate.Fit(levelSd, 0.1, 0.01, 0.001, levelSd, useSd, 0, 3, true));
    }

    static Estimates estimates(Outcome... outcomes) {
        return new Estimates(List.of(outcomes));
    }

    static Setup setup(OptionalDouble litres, List<Setup.Additive> additives) {
        return setup(litres, additives, List.of());
    }

    static Setup setup(OptionalDouble litres, List<Setup.Additive> additives, List<Setup.Pump> pumps) {
        return new Setup(
                List.of(new Setup.Tank("Cube", litres, List.of(), Optional.empty(), "Tanks!B2")),
                List.of(),
                List.of(),
                additives,
                List.of(),
                pumps,
                List.of(),
                Map.of(),
                List.of());
    }

    static Setup.Additive additive(String name, Parameter parameter, double rise) {
        return new Setup.Additive(
                name,
                List.of(),
                parameter,
                rise > 0 ? OptionalDouble.of(rise) : OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                "Additives!D2");
    }

    static Recommendation only(Advice advice, Parameter parameter) {
        return advice.recommendations().stream()
                .filter(r -> r.parameter().equals(parameter))
                .reduce((a, b) -> {
                    throw new AssertionError("two recommendations: " + a + b);
                })
                .orElseThrow();
    }

    static Judgement judged(Advice advice, Parameter parameter) {
        return advice.judgements().stream()
                .filter(j -> j.parameter().equals(parameter))
                .findFirst()
                .orElseThrow();
    }

    static Advice advice(History history, Outcome... outcomes) {
        return Advising.of(history, estimates(outcomes), REFERENCE);
    }
}
