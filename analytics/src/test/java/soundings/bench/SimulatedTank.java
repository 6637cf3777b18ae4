package soundings.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.history.Use;
import soundings.log.AsWritten;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.setup.Setup;
import soundings.sheet.CellRef;

/** A made-up tank with one test: its true use and level, and the log a keeper would have kept of it. */
final class SimulatedTank {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 1);
    private static final AsWritten AT = new AsWritten("Log", new CellRef(0, 0), "");

    /** What is simulated: typical size of the use, the test's scatter and step, where the level starts and is aimed at. */
    record Kind(Parameter parameter, double use, double scatter, double step, double aim, double least) {}

    /** What may go wrong; each is drawn for a tank. */
    record Troubles(boolean growth, boolean stepChange, boolean typos, boolean unlogged, boolean smooth) {
        static Troubles draw(Random random) {
            return new Troubles(
                    random.nextDouble() < 0.6,
                    random.nextDouble() < 0.25,
                    random.nextDouble() < 0.5,
                    random.nextDouble() < 0.15,
                    random.nextDouble() < 0.5);
        }
    }

    private final Random random;
    private final Kind kind;
    final long seed;
    final Troubles troubles;
    /** After the last day where the use takes no step. */
    int stepDay;

    final int days;
    final double litres;
    private final double strength;
    final double[] use;
    final double[] level;
    final double[] dosed;
    final double[] changed;
    private final List<DoseCourse.Step> steps = new ArrayList<>();
    private final List<Change> changes = new ArrayList<>();
    private final List<Point> points = new ArrayList<>();

    SimulatedTank(long seed, Kind kind) {
        this(seed, kind, 45 + (int) Math.floorMod(seed * 7919, 180L));
    }

    SimulatedTank(long seed, Kind kind, int days) {
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
        this.kind = kind;
        this.seed = seed;
        this.troubles = Troubles.draw(random);
        this.days = days;
        this.litres = 50 + random.nextInt(450);
        this.strength = kind.use() * litres / (5 + random.nextInt(45));
        this.use = new double[days + 1];
        this.level = new double[days + 1];
        this.dosed = new double[days + 1];
        this.changed = new double[days + 1];
        drawUse();
        live();
        test();
    }

    private void drawUse() {
        double size = kind.use() * Math.exp(0.5 * random.nextGaussian());
        double growth = troubles.growth() ? 0.002 + 0.0015 * random.nextGaussian() : 0;
        double wander = troubles.smooth() ? 0 : 0.012 * random.nextDouble();
        stepDay = troubles.stepChange() ? random.nextInt(days) : days + 1;
        double step = 1 + (random.nextBoolean() ? 0.3 : -0.25) * (0.5 + random.nextDouble());
        double log = 0;
        for (int d = 0; d <= days; d++) {
            log += wander * random.nextGaussian();
            use[d] = size * Math.exp(growth * d + log) * (d >= stepDay ? step : 1);
        }
    }

    private void live() {
        double c = kind.aim() * (1 + 0.04 * random.nextGaussian());
        boolean changesWater = random.nextDouble() < 0.75;
        int every = 7 + 7 * random.nextInt(2);
        double rate = rate(use[0]);
        step(0, rate);
        for (int d = 0; d <= days; d++) {
            level[d] = c;
            changed[d] = 0;
            if (d > 0 && d % 30 == 0 && random.nextDouble() < 0.7) {
                rate = rate(use[d] + (c - kind.aim()) / 30);
                step(d, rate);
            }
            dosed[d] = rate * strength / litres;
            if (changesWater && d % every == every - 1) {
                double share = 0.05 * (1 + random.nextInt(5));
                changes.add(new Change(FIRST.plusDays(d), OptionalDouble.of(share), OptionalDouble.empty(), AT));
                changed[d] = share * (kind.aim() - c);
            }
            double unlogged =
                    troubles.unlogged() && random.nextDouble() < 0.01 ? 8 * kind.scatter() * random.nextDouble() : 0;
            double wander = 0.1 * kind.scatter() * random.nextGaussian();
            c = Math.max(0, c + changed[d] + unlogged + dosed[d] - use[d] + wander);
        }
    }

    private double rate(double needed) {
        double asked = Math.max(0, needed) * (0.9 + 0.2 * random.nextDouble());
        return Math.rint(asked * litres / strength * 10) / 10;
    }

    private void step(int day, double mlPerDay) {
        if (!steps.isEmpty()) {
            DoseCourse.Step last = steps.remove(steps.size() - 1);
            steps.add(new DoseCourse.Step(last.from(), Optional.of(FIRST.plusDays(day)), last.mlPerDay(), AT));
        }
        steps.add(new DoseCourse.Step(FIRST.plusDays(day), Optional.empty(), mlPerDay, AT));
    }

    private void test() {
        int usual = 2 + random.nextInt(6);
        for (int d = random.nextInt(3); d <= days; d += Math.max(1, usual - 1 + random.nextInt(3))) {
            double seen = level[d] + kind.scatter() * random.nextGaussian();
            boolean after = random.nextDouble() < 0.2;
            double written = Math.rint((seen + (after ? changed[d] : 0)) / kind.step()) * kind.step();
            boolean mistyped = troubles.typos() && random.nextDouble() < 0.025;
            points.add(new Point(reading(d, amount(mistyped ? mistype(written) : written)), Use.USED, ""));
        }
    }

    private Amount amount(double written) {
        return written < kind.least() ? new Amount.Below(kind.least()) : new Amount.Exact(written);
    }

    private double mistype(double value) {
        return switch (random.nextInt(4)) {
            case 0 -> value * 10;
            case 1 -> value / 10;
            case 2 -> value * 1.5;
            default -> value + 10 * kind.scatter();
        };
    }

    private Scale scale() {
        Parameter p = kind.parameter();
        return new Scale(p, p.unit(), p.unit(), "", w -> w, c -> c);
    }

    private Reading reading(int day, Amount amount) {
        AsWritten at = new AsWritten("Log", new CellRef(day, 1), "");
        LocalDate date = FIRST.plusDays(day);
        return new Reading(
                "Reef A", date, Optional.empty(), kind.parameter(), amount, scale(), Set.of(), "", false, "", at);
    }

    TankHistory tank() {
        Setup.Additive additive = new Setup.Additive(
                "Part A", List.of(), kind.parameter(), OptionalDouble.of(strength), "", OptionalDouble.empty(), "");
        DoseCourse course = new DoseCourse("Part A", List.of(additive), steps, List.of());
        List<Series> series = List.of(new Series(kind.parameter(), scale(), points));
        return new TankHistory("Reef A", OptionalDouble.of(litres), series, List.of(course), changes, List.of());
    }

    History history() {
        Setup empty = Setup.EMPTY;
        List<Setup.FreshMix> mix = List.of(new Setup.FreshMix("", kind.parameter(), kind.aim(), ""));
        Setup setup = new Setup(
                empty.tanks(),
                mix,
                empty.targets(),
                empty.additives(),
                empty.kits(),
                empty.pumps(),
                empty.columns(),
                empty.preferences(),
                empty.issues());
        return new History(FIRST.plusDays(days), List.of(tank()), setup, List.of());
    }

    List<Point> points() {
        return points;
    }

    int dayOf(Reading reading) {
        return (int) (reading.date().toEpochDay() - FIRST.toEpochDay());
    }
}
