package soundings.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.stat.regression.SimpleRegression;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.estimate.Estimate;
import soundings.estimate.Estimating;
import soundings.history.Point;
import soundings.quantity.Amount;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;

/**
 * Several hundred made-up tanks: how often the intervals hold the truth, and how far the use is off, against a Theil-Sen line
 * and a least-squares line through the last thirty days. Run: see the package; arguments: tanks a test, first seed.
 */
public final class EstimateBench {
    private static final int RECENT_DAYS = 30;

    /** One tank's result. */
    private record Result(
            SimulatedTank.Kind kind,
            long seed,
            SimulatedTank.Troubles troubles,
            int daysSinceStep,
            boolean shows,
            boolean warned,
            double truth,
            Interval use,
            boolean levelIn,
            double levelError,
            Optional<Double> theilSen,
            Optional<Double> leastSquares) {
        double error() {
            return Math.abs(use.mid() - truth) / kind.use();
        }
    }

    private final Reference reference = ReferenceTables.load();
    private final List<Result> results = new ArrayList<>();
    private int refused;

    private EstimateBench() {}

    public static void main(String[] args) {
        int tanks = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        EstimateBench bench = new EstimateBench();
        for (SimulatedTank.Kind kind : bench.kinds()) {
            for (int i = 0; i < tanks; i++) {
                bench.run(new SimulatedTank(seed + i, kind), kind);
            }
        }
        bench.print();
    }

    private List<SimulatedTank.Kind> kinds() {
        Parameter alkalinity = reference.parameter("alkalinity");
        return List.of(
                new SimulatedTank.Kind(alkalinity, 0.9, 0.15, 0.1, 8.2, 0),
                new SimulatedTank.Kind(reference.parameter("calcium"), 6, 7, 5, 425, 0),
                new SimulatedTank.Kind(reference.parameter("magnesium"), 0.7, 15, 10, 1320, 0),
                new SimulatedTank.Kind(reference.parameter("iodine"), 0.0015, 0.004, 0.005, 0.055, 0.03));
    }

    private void run(SimulatedTank tank, SimulatedTank.Kind kind) {
        Estimating.of(tank.history(), reference)
                .outcomes()
                .get(0)
                .match(e -> e.use().isPresent() ? results.add(result(tank, kind, e)) : refuse(), n -> refuse());
    }

    private boolean refuse() {
        refused++;
        return false;
    }

    private static Result result(SimulatedTank tank, SimulatedTank.Kind kind, Estimate e) {
        double level = tank.level[tank.days];
        boolean levelIn = e.level().low() <= level && level <= e.level().high();
        Lines lines = new Lines(tank);
        return new Result(
                kind,
                tank.seed,
                tank.troubles,
                tank.days - tank.stepDay,
                shows(tank, kind),
                e.changed().isPresent(),
                tank.use[tank.days],
                e.use().orElseThrow(),
                levelIn,
                (e.level().mid() - level) / kind.scatter(),
                lines.theilSen(),
                lines.leastSquares());
    }

    /** Whether two tests or more came after a step, and it had moved the level by three errors of a test before the last. */
    private static boolean shows(SimulatedTank tank, SimulatedTank.Kind kind) {
        List<Integer> since = tank.points().stream()
                .map(p -> tank.dayOf(p.reading()) - tank.stepDay)
                .filter(d -> d > 0)
                .toList();
        if (since.size() < 2 || tank.stepDay == 0) {
            return false;
        }
        double step = tank.use[tank.stepDay] - tank.use[tank.stepDay - 1];
        return Math.abs(step) * since.get(since.size() - 1) > 3 * kind.scatter();
    }

    private void print() {
        System.out.printf("%d tanks estimated, %d refused%n", results.size(), refused);
        System.out.println(
                "                    n   50 %   90 %  level90   bias     error  Theil-Sen  least sq.  ratio to better  warned");
        row("all", r -> true);
        results.stream()
                .map(r -> r.kind().parameter().id())
                .distinct()
                .forEach(id -> row(id, r -> r.kind().parameter().id().equals(id)));
        row("growth", r -> r.troubles().growth());
        row("no growth", r -> !r.troubles().growth());
        row("smooth", r -> r.troubles().smooth());
        row("wandering", r -> !r.troubles().smooth());
        row("step in use", r -> r.troubles().stepChange());
        row("  last 2 weeks", r -> r.daysSinceStep() >= 0 && r.daysSinceStep() < 14);
        row("   and it shows", r -> r.daysSinceStep() >= 0 && r.daysSinceStep() < 14 && r.shows());
        row("   not yet", r -> r.daysSinceStep() >= 0 && r.daysSinceStep() < 14 && !r.shows());
        row("  2 to 6 weeks", r -> r.daysSinceStep() >= 14 && r.daysSinceStep() < 42);
        row("coarse steps", r -> r.kind().step() >= r.kind().scatter());
        row("mistyped", r -> r.troubles().typos());
        row("unlogged doses", r -> r.troubles().unlogged());
        row(
                "none of these",
                r -> !r.troubles().unlogged()
                        && !r.troubles().typos()
                        && !r.troubles().stepChange());
        worst();
    }

    private void row(String name, Predicate<Result> which) {
        List<Result> of = results.stream().filter(which).toList();
        double bias = of.stream()
                .mapToDouble(r -> (r.use().mid() - r.truth()) / r.kind().use())
                .average()
                .orElse(0);
        double error = median(of.stream().map(Result::error).toList());
        double sen = rival(of, true);
        double squares = rival(of, false);
        System.out.printf(
                Locale.ROOT,
                "%-16s %4d   %4.1f   %4.1f     %4.1f  %+6.4f   %6.4f     %6.4f     %6.4f   %5.2f           %5.1f%n",
                name,
                of.size(),
                share(of, r -> inside(r, 0.6744898 / 1.6448536)),
                share(of, r -> inside(r, 1)),
                share(of, Result::levelIn),
                bias,
                error,
                sen,
                squares,
                error / Math.min(sen, squares),
                share(of, Result::warned));
    }

    /** The ten intervals furthest from the truth, for whoever wants to know why. */
    private void worst() {
        System.out.println("furthest off, in half widths:");
        results.stream()
                .sorted(Comparator.comparingDouble((Result r) -> -off(r)))
                .limit(10)
                .forEach(r -> System.out.printf(
                        Locale.ROOT,
                        "  %-10s seed %d  %.1f  true %.4g  use %s  %s%n",
                        r.kind().parameter().id(),
                        r.seed(),
                        off(r),
                        r.truth(),
                        r.use(),
                        r.troubles()));
    }

    private static double off(Result r) {
        return Math.abs(r.truth() - r.use().mid()) / (r.use().high() - r.use().low()) * 2;
    }

    private static boolean inside(Result r, double scaled) {
        double off = r.truth() - r.use().mid();
        double reach = off > 0
                ? r.use().high() - r.use().mid()
                : r.use().mid() - r.use().low();
        return Math.abs(off) <= reach * scaled;
    }

    private static double rival(List<Result> of, boolean theilSen) {
        return median(of.stream()
                .flatMap(r -> (theilSen ? r.theilSen() : r.leastSquares())
                        .map(u -> Math.abs(u - r.truth()) / r.kind().use()).stream())
                .toList());
    }

    private static double share(List<Result> of, Predicate<Result> which) {
        return 100.0 * of.stream().filter(which).count() / of.size();
    }

    private static double median(List<Double> values) {
        return values.isEmpty() ? Double.NaN : values.stream().sorted().toList().get(values.size() / 2);
    }

    /** Plain lines through the last thirty days, doses and the true effect of water changes taken off: all in their favour. */
    private static final class Lines {
        private final List<double[]> xy = new ArrayList<>();

        Lines(SimulatedTank tank) {
            double[] brought = new double[tank.days + 1];
            for (int d = 1; d <= tank.days; d++) {
                brought[d] = brought[d - 1] + tank.dosed[d - 1] + tank.changed[d - 1];
            }
            for (Point p : tank.points()) {
                int day = tank.dayOf(p.reading());
                if (day > tank.days - RECENT_DAYS && p.reading().amount() instanceof Amount.Exact e) {
                    xy.add(new double[] {day, e.value() - brought[day]});
                }
            }
        }

        Optional<Double> theilSen() {
            List<Double> slopes = new ArrayList<>();
            for (double[] a : xy) {
                for (double[] b : xy) {
                    if (b[0] > a[0]) {
                        slopes.add((b[1] - a[1]) / (b[0] - a[0]));
                    }
                }
            }
            return slopes.isEmpty() ? Optional.empty() : Optional.of(-median(slopes));
        }

        Optional<Double> leastSquares() {
            SimpleRegression line = new SimpleRegression();
            xy.forEach(p -> line.addData(p[0], p[1]));
            return xy.size() < 3 ? Optional.empty() : Optional.of(-line.getSlope());
        }
    }
}
