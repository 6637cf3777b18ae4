package soundings.history;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Parameter;
import soundings.log.Reading;

/**
 * Finds mistypings: readings no tank has, and readings far from those around them that a slip of the fingers explains.
 *
 * <p>A reading is held against the medians of up to three used readings before and after it. The spread to expect is the
 * median absolute deviation of the series from its own neighbours, with a floor (kit, substance), widened by what the keeper
 * did in between. A jump that the next reading confirms is no mistyping; nor is a rise of a poison, which must not be missed.
 * The factors here are choices of this program, tried on simulated logs; they have no outside source.
 */
final class Screening {
    private static final int REACH = 3;
    private static final double SLIP_SPREADS = 5;
    private static final double FAR_SPREADS = 8;
    private static final double NEAR_SPREADS = 3;
    /** Longer gaps than this tell no more about the level. */
    private static final long GAP_DAYS = 14;

    private final Parameter parameter;
    private final List<Reading> readings;
    private final Disturbance disturbance;
    private final double[] level;
    private final boolean[] open;
    private final String[] because;
    private final double spread;

    private Screening(Parameter parameter, List<Reading> readings, Disturbance disturbance, double floor) {
        this.parameter = parameter;
        this.readings = readings;
        this.disturbance = disturbance;
        this.level = readings.stream().mapToDouble(r -> r.amount().about()).toArray();
        this.open = new boolean[level.length];
        this.because = new String[level.length];
        Arrays.fill(because, "");
        for (int i = 0; i < level.length; i++) {
            open[i] = isPlausible(level[i]);
        }
        this.spread = spread(floor);
    }

    /** @param readings of one tank and parameter in time; {@code floor} the least spread of honest ones, canonical unit */
    static List<Point> of(Parameter parameter, List<Reading> readings, Disturbance disturbance, double floor) {
        Screening screening = new Screening(parameter, readings, disturbance, floor);
        screening.setAsideTheWorst();
        screening.takeBackAnotherSource();
        screening.takeBackAFall();
        return screening.points();
    }

    private boolean isPlausible(double about) {
        return about >= parameter.plausibleLow() && about <= parameter.plausibleHigh();
    }

    private void setAsideTheWorst() {
        if (!parameter.isOfTheWater()) {
            return;
        }
        Optional<Suspect> worst = worst();
        while (worst.isPresent()) {
            open[worst.get().index()] = false;
            because[worst.get().index()] = worst.get().because();
            worst = worst();
        }
    }

    /** A reading to set aside and how many spreads it lies off. */
    private record Suspect(int index, double off, String because) {}

    private Optional<Suspect> worst() {
        Optional<Suspect> worst = Optional.empty();
        for (int i = 0; i < level.length; i++) {
            if (open[i]) {
                Optional<Suspect> next = suspect(i);
                boolean worse = next.isPresent()
                        && (worst.isEmpty() || next.get().off() > worst.get().off());
                worst = worse ? next : worst;
            }
        }
        return worst;
    }

    private Optional<Suspect> suspect(int i) {
        Around around = around(i);
        double distance = around.distance(level[i]);
        if (around.isEmpty() || isCensored(i) || distance < SLIP_SPREADS * spread) {
            return Optional.empty();
        }
        return slip(i, around, distance)
                .or(() -> far(i, around, distance))
                .map(why -> new Suspect(i, distance / spread, why));
    }

    private boolean isCensored(int i) {
        return readings.get(i).amount().match(e -> false, b -> true, a -> true, b -> false);
    }

    /** A slip of the fingers that would put the reading where its neighbours are. */
    private Optional<String> slip(int i, Around around, double distance) {
        if (isPoison() || around.count() < 3 || distance < 0.5 * allowance(i, around)) {
            return Optional.empty();
        }
        return Slips.of(readings.get(i), level[i]).stream()
                .filter(s -> around.distance(s.meant()) <= nearness(around, s))
                .filter(s -> s.decimal() || (around.bothSides() && distance > allowance(i, around)))
                .findFirst()
                .map(s -> stands(i, around) + "; " + s.how());
    }

    private double nearness(Around around, Slips.Slip slip) {
        double near = NEAR_SPREADS * spread;
        double middle = Math.abs(around.middle());
        return slip.decimal() ? Math.min(Math.max(near, 0.15 * middle), 0.4 * middle) : near;
    }

    /** So far from neighbours that agree with each other that nothing done to the tank explains it. */
    private Optional<String> far(int i, Around around, double distance) {
        boolean mayJump = isPoison() || parameter.kind() == Parameter.Kind.NUTRIENT;
        boolean agree = around.bothSides() && around.width() < distance / 3 && around.count() >= 4;
        double nearest = Math.min(distance, around.nearest(level[i]));
        return !mayJump && agree && nearest > FAR_SPREADS * spread + 1.5 * allowance(i, around)
                ? Optional.of(stands(i, around) + ", further than a tank moves in that time")
                : Optional.empty();
    }

    private boolean isPoison() {
        return parameter.kind() == Parameter.Kind.TOXIN;
    }

    private String stands(int i, Around around) {
        String own = Slips.shown(readings.get(i).scale().written(level[i]));
        return own + " stands far from " + around.words(readings.get(i).scale());
    }

    /** How far the level may honestly have moved since the neighbour before (or until the one after). */
    private double allowance(int i, Around around) {
        LocalDate from = around.before() >= 0
                ? readings.get(around.before()).date()
                : readings.get(i).date();
        LocalDate to = around.after() >= 0
                ? readings.get(around.after()).date()
                : readings.get(i).date();
        LocalDate own = readings.get(i).date();
        long gap = around.before() >= 0 ? own.toEpochDay() - from.toEpochDay() : to.toEpochDay() - own.toEpochDay();
        double byItself = dailyShare(parameter) * Math.abs(around.middle()) * days(gap);
        return byItself + disturbance.between(from.minusDays(1), to, around.middle());
    }

    /** A temperature or pH swings within a day as far as within a week. */
    private double days(long gap) {
        long days = Math.min(Math.max(gap, 1), GAP_DAYS);
        return parameter.kind() == Parameter.Kind.CONDITION ? 3 + days : days;
    }

    private static double dailyShare(Parameter parameter) {
        return switch (parameter.kind()) {
            case ION -> 0.05;
            case TRACE -> 0.1;
            case NUTRIENT, TOXIN -> 0.25;
            case CONDITION, LIGHT -> 0.02;
        };
    }

    private static double floorShare(Parameter parameter) {
        return switch (parameter.kind()) {
            case ION -> 0.02;
            case TRACE -> 0.08;
            case NUTRIENT, TOXIN -> 0.15;
            case CONDITION, LIGHT -> 0.01;
        };
    }

    private double spread(double floor) {
        double[] off = new double[level.length];
        double[] used = new double[level.length];
        int n = 0;
        for (int i = 0; i < level.length; i++) {
            Around around = around(i);
            if (open[i] && !around.isEmpty()) {
                used[n] = level[i];
                off[n++] = Math.abs(level[i] - around.middle());
            }
        }
        double typical = n == 0 ? 0 : Math.abs(Medians.of(used, n));
        double scatter = n == 0 ? 0 : 1.4826 * Medians.of(off, n);
        double least = 0.005 * parameter.plausibleHigh() + floorShare(parameter) * typical;
        return Math.max(scatter, Math.max(Math.min(least, 0.25 * typical + floor), floor) + 1e-9);
    }

    /** A laboratory, or another kit, that agrees with itself reads differently; it did not mistype each time. */
    private void takeBackAnotherSource() {
        for (int i = 0; i < level.length; i++) {
            if (!open[i] && isPlausible(level[i]) && agreesWithItsOwn(i)) {
                open[i] = true;
                because[i] = "";
            }
        }
    }

    private boolean agreesWithItsOwn(int i) {
        double[] own = new double[level.length];
        int n = 0;
        for (int j = 0; j < level.length; j++) {
            if (j != i && isPlausible(level[j]) && source(j).equals(source(i))) {
                own[n++] = level[j];
            }
        }
        boolean alone = n == level.length - 1;
        return n > 0 && !alone && Math.abs(Medians.of(own, n) - level[i]) <= NEAR_SPREADS * spread;
    }

    /** Who tested: the kit or laboratory where one is named, else the sheet it stands on. */
    private String source(int i) {
        Reading reading = readings.get(i);
        return reading.method().isEmpty() ? "sheet " + reading.at().sheet() : reading.method();
    }

    /** A level no tank is said to have, reached step by step, is the tank's: a fall of alkalinity to nothing must not be hidden. */
    private void takeBackAFall() {
        for (int i = 0; i < level.length; i++) {
            if (!open[i] && because[i].isEmpty()) {
                Around around = around(i);
                boolean follows = around.before() >= 0
                        && Math.abs(level[i] - level[around.before()]) <= NEAR_SPREADS * spread + allowance(i, around);
                open[i] = follows && level[i] >= 0 && level[i] <= 1.25 * parameter.plausibleHigh();
                because[i] = open[i] ? "" : implausible(i, around);
            }
        }
    }

    private String implausible(int i, Around around) {
        String own = Slips.shown(readings.get(i).scale().written(level[i])) + " "
                + readings.get(i).scale().label();
        Optional<String> slip = around.isEmpty()
                ? Optional.empty()
                : Slips.of(readings.get(i), level[i]).stream()
                        .filter(s -> around.distance(s.meant()) <= nearness(around, s))
                        .map(Slips.Slip::how)
                        .findFirst();
        return "no tank has " + parameter.name() + " at " + own.strip()
                + slip.map(s -> "; " + s).orElse("");
    }

    private List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < level.length; i++) {
            boolean slipped = because[i].contains(Slips.MARK);
            Use use = open[i] ? Use.USED : isPlausible(level[i]) || slipped ? Use.OUTLIER : Use.EXCLUDED;
            points.add(new Point(readings.get(i), use, because[i]));
        }
        return points;
    }

    private Around around(int i) {
        double[] before = new double[REACH];
        double[] after = new double[REACH];
        int[] nearest = {-1, -1};
        int b = gather(i, -1, before, nearest);
        int a = gather(i, 1, after, nearest);
        return Around.of(before, b, after, a, nearest);
    }

    private int gather(int i, int step, double[] into, int[] nearest) {
        int n = 0;
        for (int j = i + step; j >= 0 && j < level.length && n < REACH; j += step) {
            if (open[j]) {
                if (n == 0) {
                    nearest[step < 0 ? 0 : 1] = j;
                }
                into[n++] = level[j];
            }
        }
        return n;
    }
}
