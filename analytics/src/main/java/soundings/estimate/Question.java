package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.log.Reading;

/**
 * One test of one tank made ready for the filter.
 *
 * @param end the day the figures are stated for
 */
record Question(
        TankHistory tank,
        Parameter parameter,
        List<Reading> readings,
        LocalDate end,
        Sources sources,
        Scales scales,
        double step,
        Inflow inflow,
        List<Stage> stages,
        Start start) {
    /** A level is carried this far past the last reading, no further. */
    private static final int CARRIED_DAYS = 45;

    private static final double MISTYPED_SHARE = 0.02;
    /** The use changes by about this share of itself in a day, typically; the grid finds out. */
    private static final double USE_WANDER = 0.005;

    private static final double GROWTH = 0.003;
    private static final double LEVEL_WANDER = 0.15;
    /** The spreads are judged, and the present worked out, on about the last half year of frequent tests. */
    private static final int RECENT_READINGS = 100;

    static List<Reading> used(Series series, LocalDate asOf) {
        return series.used().stream()
                .map(Point::reading)
                .filter(r -> !r.date().isAfter(asOf))
                .toList();
    }

    /** @param readings at least two, on different days */
    static Question of(TankHistory tank, List<Reading> readings, History history, Reference reference) {
        Parameter parameter = readings.get(0).parameter();
        LocalDate last = lastDay(readings);
        LocalDate end = history.asOf().isAfter(last.plusDays(CARRIED_DAYS)) ? last : latest(history.asOf(), last);
        Sources sources = Sources.of(readings);
        double[] steps = Steps.bySource(readings, sources);
        Scales rough = rough(readings, history, reference);
        Inflow first = Inflows.of(tank, parameter, history.setup(), reference, rough);
        Scales scales = rough.withUse(useSize(readings, first, rough.use()));
        Inflow inflow = Inflows.of(tank, parameter, history.setup(), reference, scales);
        List<Timeline.Timed> sights = Sights.of(readings, tank.changes(), history.setup(), sources, scales, steps);
        List<Stage> stages = Timeline.of(
                sights,
                inflow,
                Math.max(Inflows.noon(end), sights.get(sights.size() - 1).day()));
        double dosed = inflow.risePerDay(sights.get(0).day());
        Start start =
                start(parameter, sights.stream().map(Timeline.Timed::sight).toList(), dosed, scales, sources);
        return new Question(tank, parameter, readings, end, sources, scales, steps[0], inflow, stages, start);
    }

    private static LocalDate lastDay(List<Reading> readings) {
        return Collections.max(readings.stream().map(Reading::date).toList());
    }

    private static LocalDate latest(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static Scales rough(List<Reading> readings, History history, Reference reference) {
        Parameter parameter = readings.get(0).parameter();
        List<Double> values = readings.stream().map(r -> r.amount().about()).toList();
        double level = Math.abs(Robust.median(values));
        var stated = Sights.kit(readings.get(readings.size() - 1), history.setup())
                .flatMap(k -> k.error().isPresent()
                        ? java.util.Optional.of(k.error().getAsDouble())
                        : java.util.Optional.empty());
        double kit = stated.orElseGet(() -> Facts.kitError(parameter, level, reference));
        double use = Facts.usualUse(parameter, level, reference);
        return new Scales(level, Robust.spread(values), kit, use, stated.isPresent());
    }

    /** The size of the use as dose and readings roughly have it, never far below the usual. */
    private static double useSize(List<Reading> readings, Inflow inflow, double usual) {
        List<Double> days = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (Reading reading : readings) {
            days.add(Sights.day(reading));
            values.add(reading.amount().about());
        }
        double slope = Robust.roughSlope(days, values).orElse(0);
        double dosed = days.stream().mapToDouble(inflow::risePerDay).average().orElse(0);
        return Math.max(Math.max(usual / 4, Math.abs(dosed)), Math.abs(dosed - slope));
    }

    private static Start start(Parameter parameter, List<Sight> sights, double dosed, Scales scales, Sources sources) {
        List<Double> first =
                sights.stream().limit(5).map(s -> s.reading().amount().about()).toList();
        return new Start(
                Robust.median(first),
                Robust.spread(first) + 0.1 * scales.level() + 3 * scales.kit(),
                dosed,
                1.5 * scales.use(),
                GROWTH * scales.use(),
                0.05 * scales.level() + scales.kit(),
                sources.size(),
                Double.POSITIVE_INFINITY,
                0,
                parameter.balances());
    }

    /** The same question with only the stages that tell about the present. */
    Question recent() {
        int from = stages.size() - 1;
        for (int sights = 0; from > 0 && sights < RECENT_READINGS; from--) {
            sights += stages.get(from).sights().size();
        }
        if (from == 0) {
            return this;
        }
        List<Stage> kept = new ArrayList<>(stages.subList(from, stages.size()));
        kept.set(0, kept.get(0).lasting(0, 0));
        List<Sight> sights = kept.stream().flatMap(s -> s.sights().stream()).toList();
        Start later = start(parameter, sights, inflow.risePerDay(kept.get(0).day()), scales, sources);
        return new Question(tank, parameter, readings, end, sources, scales, step, inflow, kept, later);
    }

    Trust trust() {
        return new Trust(MISTYPED_SHARE, 1 / (2 * Math.max(scales.level(), 10 * scales.kit())));
    }

    List<Grid.Axis> axes() {
        List<Grid.Axis> axes = new ArrayList<>();
        axes.add(new Grid.Axis(USE_WANDER * scales.use(), 4, 1.2));
        axes.add(new Grid.Axis(LEVEL_WANDER * scales.kit(), 4, 1.2));
        axes.add(new Grid.Axis(scales.kit(), 1.5, scales.kitStated() ? 0.25 : 0.6));
        for (int i = 1; i < sources.size(); i++) {
            axes.add(new Grid.Axis(scales.kit(), 1.6, 0.6));
        }
        return axes;
    }

    Spread spread(List<Double> values) {
        return new Spread(values.subList(2, values.size()), values.get(0), values.get(1), start.growth());
    }

    Balance begin(Spread spread) {
        return new Balance(start, spread, trust(), stages.get(0).day());
    }

    Grid.Pass run(Spread spread) {
        Balance balance = begin(spread);
        int first = Lately.first(stages);
        take(balance, 0, first);
        Balance late = balance.copy();
        take(balance, first, stages.size());
        return new Grid.Pass(late, balance);
    }

    private void take(Balance balance, int from, int until) {
        for (int i = from; i < until; i++) {
            balance.take(stages.get(i));
        }
    }

    List<Smoother.Smoothed> lookBack(Spread spread) {
        return Smoother.back(Trace.of(begin(spread), stages), start);
    }

    Question with(List<Stage> others) {
        return new Question(tank, parameter, readings, end, sources, scales, step, inflow, others, start);
    }

    Question asking(Start other) {
        return new Question(tank, parameter, readings, end, sources, scales, step, inflow, stages, other);
    }

    double dosedNow() {
        return inflow.risePerDay(Inflows.noon(end));
    }
}
