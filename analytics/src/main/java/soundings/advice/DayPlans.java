package soundings.advice;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/**
 * Spreads each pump's doses evenly over the day and shifts the pumps against each other. Alkalinity and calcium given together
 * precipitate before they mix; how far apart is enough is common practice, so they are set as far apart as they go.
 */
final class DayPlans {
    private static final int DAY = 24 * 60;
    private static final int SHARP = 5;
    /** No dose gives way for more than this. */
    private static final int ENOUGH = 15;

    private DayPlans() {}

    /** @param supplies the pumps with a rate and a known number of doses */
    static List<DayPlan> of(History history, List<Supply> supplies) {
        return history.tanks().stream()
                .map(t -> plan(t, pumps(t, supplies)))
                .flatMap(Optional::stream)
                .toList();
    }

    /** One pump's day: so many doses, of a kind. */
    private record Pump(
            String additive, int doses, double ml, double proposedMl, boolean alkalinity, boolean hardness) {
        boolean clashes(Pump other) {
            return (alkalinity && other.hardness) || (hardness && other.alkalinity);
        }
    }

    /** A pump with the minutes of its doses. */
    private record Placed(Pump pump, List<Integer> minutes) {
        static Placed evenly(Pump pump, int first) {
            return new Placed(
                    pump,
                    IntStream.range(0, pump.doses())
                            .mapToObj(i -> (int) ((first + (long) i * DAY / pump.doses()) % DAY))
                            .toList());
        }
    }

    private static List<Pump> pumps(TankHistory tank, List<Supply> supplies) {
        return supplies.stream()
                .filter(s -> s.tank().equals(tank.tank()) && s.aheadMlPerDay() > 0)
                .filter(s -> s.dosesPerDay().orElse(0) >= 1 && s.dosesPerDay().orElse(0) <= DAY)
                .map(s -> pump(tank, s))
                .sorted(Comparator.comparing(Pump::alkalinity)
                        .thenComparing(Pump::hardness)
                        .reversed()
                        .thenComparing(Pump::additive))
                .toList();
    }

    private static Pump pump(TankHistory tank, Supply supply) {
        int doses = (int) Math.round(supply.dosesPerDay().orElse(1));
        return new Pump(
                supply.additive(),
                doses,
                supply.mlPerDay() / doses,
                supply.aheadMlPerDay() / doses,
                raises(tank, supply.additive(), Set.of("alkalinity")),
                raises(tank, supply.additive(), Set.of("calcium", "magnesium", "strontium")));
    }

    private static boolean raises(TankHistory tank, String additive, Set<String> parameters) {
        return tank.doses().stream()
                .filter(d -> d.name().equals(additive))
                .flatMap(d -> d.additive().stream())
                .map(Setup.Additive::parameter)
                .anyMatch(p -> parameters.contains(p.id()));
    }

    private static Optional<DayPlan> plan(TankHistory tank, List<Pump> pumps) {
        List<Placed> placed = new ArrayList<>();
        pumps.forEach(p -> placed.add(nudged(Placed.evenly(p, best(p, placed)), placed)));
        return placed.isEmpty() ? Optional.empty() : Optional.of(plan(tank.tank(), placed));
    }

    private static DayPlan plan(String tank, List<Placed> placed) {
        List<DayPlan.Dose> doses = placed.stream()
                .flatMap(p -> p.minutes().stream()
                        .map(m -> new DayPlan.Dose(
                                LocalTime.ofSecondOfDay(m * 60L),
                                p.pump().additive(),
                                p.pump().ml(),
                                p.pump().proposedMl())))
                .sorted(Comparator.comparing(DayPlan.Dose::at).thenComparing(DayPlan.Dose::additive))
                .toList();
        return new DayPlan(tank, doses, apart(placed));
    }

    private static int apart(List<Placed> placed) {
        int least = DAY;
        for (Placed one : placed) {
            for (Placed other : placed) {
                if (one.pump().clashes(other.pump())) {
                    least = Math.min(least, gap(one, other));
                }
            }
        }
        return least;
    }

    /** The first minute that keeps farthest from what clashes, then from everything else. */
    private static int best(Pump pump, List<Placed> placed) {
        int best = 0;
        long bestScore = -1;
        for (int first = 0;
                first < Math.max(1, DAY / pump.doses());
                first += pump.doses() > DAY / (4 * SHARP) ? 1 : SHARP) {
            Placed here = Placed.evenly(pump, first);
            long score = score(here, placed);
            if (score > bestScore) {
                bestScore = score;
                best = first;
            }
        }
        return best;
    }

    private static long score(Placed here, List<Placed> placed) {
        int clashing = DAY;
        int others = DAY;
        for (Placed other : placed) {
            int gap = gap(here, other);
            others = Math.min(others, gap);
            clashing = here.pump().clashes(other.pump()) ? Math.min(clashing, gap) : clashing;
        }
        return (long) clashing * DAY + others;
    }

    /** Where the numbers of doses do not fit each other, single doses give way by some minutes. */
    private static Placed nudged(Placed even, List<Placed> placed) {
        List<Integer> clashing = placed.stream()
                .filter(p -> p.pump().clashes(even.pump()))
                .flatMap(p -> p.minutes().stream())
                .toList();
        int most = DAY / even.pump().doses() / 2;
        return new Placed(
                even.pump(),
                even.minutes().stream().map(m -> nudged(m, clashing, most)).toList());
    }

    private static int nudged(int minute, List<Integer> clashing, int most) {
        int best = minute;
        for (int by = 1; by <= most && gap(best, clashing) < ENOUGH; by++) {
            for (int moved : new int[] {(minute + by) % DAY, (minute - by + DAY) % DAY}) {
                best = gap(moved, clashing) > gap(best, clashing) ? moved : best;
            }
        }
        return best;
    }

    private static int gap(Placed one, Placed other) {
        return one.minutes().stream()
                .mapToInt(m -> gap(m, other.minutes()))
                .min()
                .orElse(DAY);
    }

    private static int gap(int minute, List<Integer> minutes) {
        int least = DAY;
        for (int other : minutes) {
            int apart = Math.abs(minute - other);
            least = Math.min(least, Math.min(apart, DAY - apart));
        }
        return least;
    }
}
