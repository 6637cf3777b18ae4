package soundings.estimate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import soundings.chemistry.Names;
import soundings.chemistry.NaturalSeawater;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/** Works out what doses and water changes bring into a tank for one parameter. */
final class Inflows {
    /** Share by which a fresh mix may be off what the keeper states, and off natural seawater where nothing is stated. */
    private static final double STATED_MIX = 0.02;

    private static final double ASSUMED_MIX = 0.08;
    /** How far off the tank a mix of unknown content may be, and how unsure that is: 0.1 and 0.08 of the level. */
    private static final double UNKNOWN_MIX = 0.18;

    private static final double STANDARD_SALINITY = 35;
    /** Width of the middle 90 % of a normal distribution, in standard deviations. */
    private static final double MIDDLE_90 = 3.29;

    /** A change of unknown size: between none and about a third. */
    private static final double UNKNOWN_SHARE = 0.15;

    private final TankHistory tank;
    private final Parameter parameter;
    private final Setup setup;
    private final Reference reference;
    private final Scales scales;
    private final List<String> caveats = new ArrayList<>();
    private final List<Inflow.Shake> shakes = new ArrayList<>();
    private final List<Inflow.Pulse> pulses = new ArrayList<>();
    private final List<Inflow.Pulse> changed = new ArrayList<>();
    private final TreeMap<Double, Double> turns = new TreeMap<>();
    private boolean known = true;

    private Inflows(TankHistory tank, Parameter parameter, Setup setup, Reference reference, Scales scales) {
        this.tank = tank;
        this.parameter = parameter;
        this.setup = setup;
        this.reference = reference;
        this.scales = scales;
    }

    static Inflow of(TankHistory tank, Parameter parameter, Setup setup, Reference reference, Scales scales) {
        if (!parameter.balances()) {
            return Inflow.NONE;
        }
        return new Inflows(tank, parameter, setup, reference, scales).collect();
    }

    /** Where no time is written a thing is taken to happen at noon, a test before a change of the same day. */
    static double noon(LocalDate day) {
        return day.toEpochDay() + 0.5;
    }

    private Inflow collect() {
        tank.doses().forEach(this::dose);
        changes();
        List<Inflow.Rate> rates = new ArrayList<>();
        double rise = 0;
        for (var turn : turns.entrySet()) {
            rise += turn.getValue();
            rates.add(new Inflow.Rate(turn.getKey(), Math.abs(rise) < 1e-12 ? 0 : rise));
        }
        return new Inflow(rates, pulses, changed, shakes, known, caveats);
    }

    private void dose(DoseCourse course) {
        if (course.additive().isEmpty()) {
            if (reference.isNamedIn(parameter, course.name())) {
                unknown(course, "the strength of " + course.name() + " is not known");
            }
            return;
        }
        course.additive().stream()
                .filter(a -> a.parameter().equals(parameter))
                .forEach(a -> dose(course, a.risePerMlInOneLitre()));
    }

    private void dose(DoseCourse course, OptionalDouble risePerMlInOneLitre) {
        if (risePerMlInOneLitre.isEmpty()) {
            unknown(course, "the strength of " + course.name() + " is not known");
        } else if (tank.litres().isEmpty()) {
            unknown(course, "the volume of the tank is not known");
        } else {
            double risePerMl = risePerMlInOneLitre.getAsDouble() / tank.litres().getAsDouble();
            known(course, risePerMl);
        }
    }

    private void known(DoseCourse course, double risePerMl) {
        double pumped = risePerMl * calibration(course.name());
        for (DoseCourse.Step step : course.steps()) {
            turns.merge(noon(step.from()), step.mlPerDay() * pumped, Double::sum);
            step.until().ifPresent(until -> turns.merge(noon(until), -step.mlPerDay() * pumped, Double::sum));
        }
        course.oneOffs().forEach(o -> pulses.add(new Inflow.Pulse(noon(o.on()), 1, o.ml() * risePerMl, 0)));
    }

    /** Measured over commanded volume of the pump that doses this additive; 1 where it was never measured. */
    private double calibration(String additive) {
        Optional<Setup.Pump> measured = setup.pumps().stream()
                .filter(p -> same(p.additive(), additive) && (p.tank().isEmpty() || same(p.tank(), tank.tank())))
                .filter(p -> p.commandedMl().orElse(0) > 0 && p.measuredMl().isPresent())
                .findFirst();
        return measured.map(p -> p.measuredMl().getAsDouble() / p.commandedMl().getAsDouble())
                .orElse(1.0);
    }

    private static boolean same(String a, String b) {
        return Names.fold(a).equals(Names.fold(b));
    }

    private void unknown(DoseCourse course, String why) {
        if (course.steps().stream().allMatch(s -> s.mlPerDay() == 0)
                && course.oneOffs().isEmpty()) {
            return;
        }
        known = false;
        caveats.add(why + ", so only the net change can be told, not the use");
        double variance = scales.use() * scales.use() / 4;
        course.steps().forEach(s -> shakes.add(new Inflow.Shake(noon(s.from()), variance)));
        double once = scales.level() / 10;
        course.oneOffs().forEach(o -> pulses.add(new Inflow.Pulse(noon(o.on()), 1, 0, once * once)));
    }

    /** What a change brings in, give or take one standard deviation. */
    private record Mix(double value, double sd) {}

    private void changes() {
        if (tank.changes().isEmpty()) {
            return;
        }
        Optional<Mix> mix = statedMix().map(v -> new Mix(v, STATED_MIX * v));
        if (mix.isEmpty()) {
            mix = natural();
            caveats.add(mix.map(this::assumed)
                    .orElse("what a water change brings in is not known; each adds to the uncertainty"));
        }
        for (Change change : tank.changes()) {
            changed.add(pulse(change, mix));
        }
        pulses.addAll(changed);
    }

    private String assumed(Mix mix) {
        Scale scale = tank.scale(parameter, reference);
        return "the fresh mix is taken to be like natural seawater as salty as the tank, "
                + Said.amount(scale.written(mix.value()), scale, 0) + " give or take "
                + Said.amount(scale.change(mix.sd(), mix.value()), scale, 0) + "; its own value is not known";
    }

    /** The sea at the tank's salinity; for a trace the middle of what compilations say, as unsure as they disagree. */
    private Optional<Mix> natural() {
        double salinity = tank.series().stream()
                .filter(s -> s.parameter().id().equals("salinity") && !s.used().isEmpty())
                .mapToDouble(s -> Robust.median(
                        s.used().stream().map(p -> p.reading().amount().about()).toList()))
                .findFirst()
                .orElse(STANDARD_SALINITY);
        OptionalDouble level = NaturalSeawater.level(parameter, salinity, reference);
        return level.isPresent()
                ? Optional.of(new Mix(level.getAsDouble(), ASSUMED_MIX * level.getAsDouble()))
                : NaturalSeawater.spread(parameter, salinity, reference)
                        .map(i -> new Mix(i.mid(), (i.high() - i.low()) / MIDDLE_90));
    }

    /** The tank's own fresh mix before the one of all tanks. */
    private Optional<Double> statedMix() {
        List<Setup.FreshMix> of = setup.freshMix().stream()
                .filter(m -> m.parameter().equals(parameter))
                .toList();
        return of.stream()
                .filter(m -> same(m.tank(), tank.tank()))
                .findFirst()
                .or(() -> of.stream().filter(m -> m.tank().isEmpty()).findFirst())
                .map(Setup.FreshMix::value);
    }

    private Inflow.Pulse pulse(Change change, Optional<Mix> mix) {
        double day = noon(change.on());
        double away =
                mix.map(m -> Math.abs(m.value() - scales.level()) + m.sd()).orElse(scales.level() * UNKNOWN_MIX);
        if (change.fraction().isEmpty() || mix.isEmpty()) {
            double unsure = change.fraction().orElse(UNKNOWN_SHARE) * away;
            return new Inflow.Pulse(day, 1, 0, unsure * unsure);
        }
        double f = change.fraction().getAsDouble();
        double unsure = f * mix.get().sd();
        return new Inflow.Pulse(day, 1 - f, f * mix.get().value(), unsure * unsure);
    }
}
