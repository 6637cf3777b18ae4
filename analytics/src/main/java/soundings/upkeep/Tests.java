package soundings.upkeep;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.advice.Advice;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.setup.OtherSheet;

/** When each test is due, whether it is taken oftener than it need be, and what it costs. The rules are common practice, no source. */
final class Tests {
    private static final int GAPS = 10;
    private static final int FEWEST_GAPS = 3;

    /** A test is late once it is half as long again as usual since the last. */
    private static final double LATE = 1.5;

    /** With fewer tests than this nobody should be told to test less. */
    private static final int FEWEST_TO_SPARE = 8;

    /** Time for this share of the way to the nearer end of the range may pass between tests. */
    private static final double SHARE = 0.25;

    private static final int MOST_DAYS = 30;

    private final History history;
    private final Estimates estimates;
    private final Advice advice;
    private final Reference reference;
    private final Map<Parameter, Row> rows;

    private Tests(History history, Estimates estimates, Advice advice, Reference reference, Map<Parameter, Row> rows) {
        this.history = history;
        this.estimates = estimates;
        this.advice = advice;
        this.reference = reference;
        this.rows = rows;
    }

    /** A row of the sheet Tests. */
    record Row(
            Optional<Parameter> parameter,
            OptionalDouble everyDays,
            OptionalDouble price,
            Optional<LocalDate> expires,
            OptionalDouble waitMinutes,
            String cell) {
        static final Row NONE = new Row(
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                "");

        static Row of(OtherSheet.Line line) {
            return new Row(
                    line.parameter(),
                    line.positive("Every days"),
                    line.positive("Price a test"),
                    line.day("Kit expires"),
                    line.positive("Wait minutes"),
                    line.place("Parameter"));
        }
    }

    static Testing of(History history, Estimates estimates, Advice advice, Reference reference, List<Row> rows) {
        Map<Parameter, Row> byParameter = new LinkedHashMap<>();
        rows.forEach(row -> row.parameter().ifPresent(p -> byParameter.putIfAbsent(p, row)));
        Tests tests = new Tests(history, estimates, advice, reference, byParameter);
        return new Testing(tests.tests(), tests.costs(), tests.kits());
    }

    private List<Testing.Test> tests() {
        List<Testing.Test> tests = new ArrayList<>();
        for (TankHistory tank : history.tanks()) {
            tank.series().forEach(s -> test(tank.tank(), s).ifPresent(tests::add));
        }
        tests.sort(Comparator.comparing(Testing.Test::overdueDays).reversed());
        return tests;
    }

    private Optional<Testing.Test> test(String tank, Series series) {
        List<Point> taken = taken(series);
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        Row row = rows.getOrDefault(series.parameter(), Row.NONE);
        Point last = taken.get(taken.size() - 1);
        OptionalDouble own = spacing(days(taken));
        boolean asked = row.everyDays().isPresent();
        OptionalDouble usual = asked ? row.everyDays() : own;
        return Optional.of(new Testing.Test(
                tank,
                series.parameter(),
                last.reading().date(),
                usual,
                asked,
                overdue(last.reading().date(), usual, asked),
                own.isPresent() ? enough(tank, series.parameter(), taken.size(), own.getAsDouble()) : Optional.empty(),
                row.waitMinutes(),
                last.reading().at().place()));
    }

    /** Tests that were taken, whatever became of the result. */
    private List<Point> taken(Series series) {
        return series.points().stream()
                .filter(p -> !p.reading().date().isAfter(history.asOf()))
                .sorted(Comparator.comparing(p -> p.reading().date()))
                .toList();
    }

    private static List<LocalDate> days(List<Point> points) {
        return points.stream().map(p -> p.reading().date()).distinct().toList();
    }

    /** Median of the last ten gaps, days; empty with fewer than three. */
    static OptionalDouble spacing(List<LocalDate> days) {
        List<Long> gaps = new ArrayList<>();
        for (int i = Math.max(1, days.size() - GAPS); i < days.size(); i++) {
            gaps.add(ChronoUnit.DAYS.between(days.get(i - 1), days.get(i)));
        }
        return gaps.size() < FEWEST_GAPS
                ? OptionalDouble.empty()
                : OptionalDouble.of(Pace.median(gaps.stream().sorted().toList()));
    }

    /** Days past the day it was due: by the keeper's own usual spacing it is late at one and a half of it, two days more at least. */
    private long overdue(LocalDate last, OptionalDouble usual, boolean asked) {
        if (usual.isEmpty()) {
            return 0;
        }
        double spacing = usual.getAsDouble();
        long since = ChronoUnit.DAYS.between(last, history.asOf());
        boolean late = asked ? since > spacing : since > Math.max(LATE * spacing, spacing + 2);
        return late ? Math.max(1, Math.round(since - spacing)) : 0;
    }

    /**
     * Days between tests in which the level moves no more than a quarter of the way to the nearer end of its range, even at the
     * faster end of the drift's interval; empty where the keeper's spacing is not less than half of that.
     */
    private Optional<Integer> enough(String tank, Parameter parameter, int taken, double spacing) {
        boolean matters = parameter.balances() && parameter.kind() != Parameter.Kind.TOXIN;
        if (!matters || taken < FEWEST_TO_SPARE) {
            return Optional.empty();
        }
        return estimates
                .find(tank, parameter)
                .flatMap(o -> o.match(Optional::of, n -> Optional.<Estimate>empty()))
                .flatMap(e -> AnimalNotes.range(tank, parameter, history, advice, reference)
                        .flatMap(range -> enough(e, range)))
                .filter(days -> days >= 2 * spacing);
    }

    static Optional<Integer> enough(Estimate estimate, TargetRange range) {
        double room = Math.min(
                estimate.level().low() - range.low(),
                range.high() - estimate.level().high());
        double fastest = Math.max(
                Math.abs(estimate.drift().low()), Math.abs(estimate.drift().high()));
        if (room <= 0 || !estimate.fit().sound()) {
            return Optional.empty();
        }
        double days = fastest == 0 ? MOST_DAYS : Math.min(MOST_DAYS, SHARE * room / fastest);
        return days < 1 ? Optional.empty() : Optional.of((int) Math.floor(days));
    }

    private List<Testing.Cost> costs() {
        YearMonth month = YearMonth.from(history.asOf());
        List<Testing.Cost> costs = new ArrayList<>();
        rows.forEach((parameter, row) -> row.price()
                .ifPresent(
                        price -> costs.add(new Testing.Cost(parameter, count(parameter, month), price, row.cell()))));
        return costs;
    }

    private int count(Parameter parameter, YearMonth month) {
        return history.tanks().stream()
                .flatMap(t -> t.findSeries(parameter).stream())
                .mapToInt(s -> (int) taken(s).stream()
                        .filter(p -> YearMonth.from(p.reading().date()).equals(month))
                        .map(p -> p.reading().at().place())
                        .distinct()
                        .count())
                .sum();
    }

    private List<Testing.Kit> kits() {
        List<Testing.Kit> kits = new ArrayList<>();
        rows.forEach((parameter, row) -> row.expires()
                .ifPresent(day -> kits.add(
                        new Testing.Kit(parameter, day, ChronoUnit.DAYS.between(history.asOf(), day), row.cell()))));
        kits.sort(Comparator.comparing(Testing.Kit::expires));
        return kits;
    }
}
