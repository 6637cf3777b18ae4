package soundings.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.estimate.Estimating;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.reference.ReferenceTables;

/** How long the estimates of a large log take: sixty series of three years. Run: see the package. */
public final class EstimateTiming {
    private static final int DAYS = 3 * 365;
    private static final int TESTS = 5 * 12;

    private EstimateTiming() {}

    public static void main(String[] args) {
        Reference reference = ReferenceTables.load();
        History history = large(reference);
        int readings = history.tanks().stream()
                .flatMap(t -> t.series().stream())
                .mapToInt(s -> s.points().size())
                .sum();
        for (int i = 0; i < 20; i++) {
            long before = System.nanoTime();
            long cpuBefore = cpu();
            int n = Estimating.of(history, reference).outcomes().size();
            double ms = (System.nanoTime() - before) / 1e6;
            double cpuMs = (cpu() - cpuBefore) / 1e6;
            System.out.printf(
                    Locale.ROOT,
                    "%d estimates from %d readings in %.0f ms, %.0f ms of one core%n",
                    n,
                    readings,
                    ms,
                    cpuMs);
        }
    }

    /** Processor time of the whole program, all cores together: steadier than the clock where others use the machine. */
    private static long cpu() {
        return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime();
    }

    private static History large(Reference reference) {
        Parameter alkalinity = reference.parameter("alkalinity");
        SimulatedTank.Kind kind = new SimulatedTank.Kind(alkalinity, 0.9, 0.15, 0.1, 8.2, 0);
        List<TankHistory> tanks = new ArrayList<>();
        History one = new SimulatedTank(1, kind, DAYS).history();
        for (int t = 0; t < TESTS; t++) {
            SimulatedTank simulated = new SimulatedTank(10 + t, kind, DAYS);
            TankHistory tank = simulated.tank();
            tanks.add(new TankHistory(
                    "Reef " + t, tank.litres(), tank.series(), tank.doses(), tank.changes(), List.of()));
        }
        return new History(one.asOf(), tanks, one.setup(), List.of());
    }
}
