package soundings.notebook;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import soundings.advice.Action;
import soundings.advice.Advice;
import soundings.advice.DayPlan;
import soundings.advice.Insight;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.advice.Supply;
import soundings.advice.Verdict;
import soundings.chemistry.Constant;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.Source;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.NotEnough;
import soundings.estimate.Outcome;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.History;
import soundings.history.Point;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.history.Use;
import soundings.log.AsWritten;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.Inferred;
import soundings.log.Issue;
import soundings.log.Log;
import soundings.log.Reading;
import soundings.log.Remark;
import soundings.quantity.Amount;
import soundings.quantity.Interval;
import soundings.setup.Setup;
import soundings.sheet.CellRef;

/**
 * Findings made by hand, to develop and test reports against: a school's marine club with three tanks. Invented data;
 * cell texts hold whatever could break a page.
 */
public final class MarineClub {
    public static final LocalDate AS_OF = LocalDate.of(2026, 10, 31);
    public static final String NASTY = "<script>alert('x')</script> *bold* [link](http://x.example) | # & {#id} ${1+1}";

    public static final Parameter ALKALINITY =
            new Parameter("alkalinity", "Alkalinity", "Alk", "dKH", 1, 2, 25, Parameter.Kind.ION);
    public static final Parameter CALCIUM =
            new Parameter("calcium", "Calcium", "Ca", "mg/L", 0, 200, 800, Parameter.Kind.ION);
    public static final Parameter MAGNESIUM =
            new Parameter("magnesium", "Magnesium", "Mg", "mg/L", 0, 600, 2000, Parameter.Kind.ION);
    public static final Parameter PHOSPHATE =
            new Parameter("phosphate", "Phosphate", "PO4", "mg/L", 3, 0, 10, Parameter.Kind.NUTRIENT);
    public static final Parameter NITRATE =
            new Parameter("nitrate", "Nitrate", "NO3", "mg/L", 1, 0, 200, Parameter.Kind.NUTRIENT);
    public static final Parameter SALINITY =
            new Parameter("salinity", "Salinity", "S", "psu", 1, 5, 60, Parameter.Kind.CONDITION);
    public static final Parameter PH = new Parameter("ph", "pH", "pH", "ph", 2, 6, 10, Parameter.Kind.CONDITION);
    public static final Parameter TEMPERATURE =
            new Parameter("temperature", "Temperature", "T", "Cel", 1, 5, 40, Parameter.Kind.CONDITION);
    private static final List<Parameter> ALL =
            List.of(ALKALINITY, CALCIUM, MAGNESIUM, PHOSPHATE, NITRATE, SALINITY, PH, TEMPERATURE);
    private static final Map<String, double[]> RANGES = Map.of(
            "alkalinity", new double[] {7.5, 9.0},
            "calcium", new double[] {400, 450},
            "magnesium", new double[] {1280, 1380},
            "phosphate", new double[] {0.02, 0.1},
            "nitrate", new double[] {2, 10},
            "salinity", new double[] {34, 36},
            "ph", new double[] {7.9, 8.4},
            "temperature", new double[] {24, 27});

    private MarineClub() {}

    public static Findings findings() {
        return findings(300);
    }

    /** @param days how far back the log goes */
    public static Findings findings(int days) {
        Random random = new Random(7);
        List<TankHistory> tanks = new ArrayList<>();
        List<Outcome> outcomes = new ArrayList<>();
        List<Judgement> judgements = new ArrayList<>();
        int column = 1;
        for (String name : List.of("Display", "Frag tank", "Quarantine")) {
            List<Series> series = new ArrayList<>();
            for (Parameter parameter : ALL) {
                Series made = series(name, parameter, days, column++, random);
                series.add(made);
                outcomes.add(outcome(name, made));
                judgements.add(judgement(name, parameter));
            }
            tanks.add(tank(name, series));
        }
        History history = new History(AS_OF, tanks, setup(), List.of());
        Log log = new Log(List.of("Display", "Frag tank", "Quarantine"), List.of(), blocks(), List.of(), issues());
        return new Findings(
                new Provenance(
                        "Marine club log.xlsx",
                        "0f".repeat(32),
                        "Marine club log-setup.xlsx",
                        "--month 2026-10",
                        "1.0.0"),
                YearMonth.of(2026, 10),
                reference(),
                log,
                history,
                new Estimates(outcomes),
                new Advice(judgements, recommendations(), actions(), supplies(), plans(), insights()));
    }

    private static double[] range(Parameter parameter) {
        return java.util.Objects.requireNonNull(RANGES.get(parameter.id()));
    }

    private static AsWritten at(int row, int column, String text) {
        return new AsWritten("Tests", new CellRef(row, column), text);
    }

    private static Scale scale(Parameter parameter) {
        return new Scale(
                parameter,
                parameter.unit(),
                parameter.unit(),
                "",
                DoubleUnaryOperator.identity(),
                DoubleUnaryOperator.identity());
    }

    private static Series series(String tank, Parameter parameter, int days, int column, Random random) {
        double[] range = range(parameter);
        double width = range[1] - range[0];
        int every = parameter.equals(ALKALINITY) && tank.equals("Display") ? 1 : 7;
        List<Point> points = new ArrayList<>();
        int row = 4;
        for (int back = tank.equals("Quarantine") ? 20 : days; back >= 0; back -= every) {
            double value = level(tank, parameter, days - back) + random.nextGaussian() * width * 0.08;
            boolean mistyped = back == 14 && parameter.equals(ALKALINITY);
            double shown = mistyped ? value * 10 : value;
            Amount amount =
                    parameter.equals(PHOSPHATE) && value < 0.02 ? new Amount.Below(0.02) : new Amount.Exact(shown);
            String text = Figures.amount(amount, parameter.decimals());
            Reading reading = new Reading(
                    tank,
                    AS_OF.minusDays(back),
                    Optional.empty(),
                    parameter,
                    amount,
                    scale(parameter),
                    Set.of(),
                    "",
                    false,
                    "",
                    at(row++, column, text));
            points.add(
                    new Point(reading, mistyped ? Use.OUTLIER : Use.USED, mistyped ? "ten times its neighbours" : ""));
        }
        return Series.asWritten(scale(parameter), points);
    }

    private static double level(String tank, Parameter parameter, int day) {
        double[] range = range(parameter);
        double mid = (range[0] + range[1]) / 2;
        double width = range[1] - range[0];
        double slope = parameter.equals(ALKALINITY) ? -0.002 : parameter.equals(MAGNESIUM) ? 0.0012 : 0;
        double shift = parameter.equals(PHOSPHATE) ? -0.35 : tank.equals("Frag tank") ? 0.3 : 0;
        return mid + width * (shift + slope * Math.max(0, day - 150) + 0.1 * Math.sin(day / 23.0));
    }

    private static Outcome outcome(String tank, Series series) {
        Parameter parameter = series.parameter();
        List<Point> used = series.used();
        if (tank.equals("Quarantine") && !parameter.equals(SALINITY)) {
            return new NotEnough(
                    tank,
                    parameter,
                    used.size(),
                    20,
                    "only " + used.size() + " readings in 20 days",
                    "two more readings a week apart");
        }
        double width = range(parameter)[1] - range(parameter)[0];
        List<Estimate.Day> track = new ArrayList<>();
        int days = (int)
                java.time.temporal.ChronoUnit.DAYS.between(used.get(0).reading().date(), AS_OF);
        for (int back = days; back >= 0; back--) {
            track.add(new Estimate.Day(
                    AS_OF.minusDays(back), Interval.normal(level(tank, parameter, days - back), width * 0.05)));
        }
        Interval level = track.get(track.size() - 1).level();
        Interval drift = Interval.normal(parameter.equals(ALKALINITY) ? -0.012 : 0.0004 * width, 0.002 * width);
        List<Estimate.Day> ahead = new ArrayList<>();
        for (int day = 0; day <= 30; day++) {
            ahead.add(new Estimate.Day(
                    AS_OF.plusDays(day),
                    Interval.normal(level.mid() + day * drift.mid(), width * (0.05 + 0.006 * day))));
        }
        return new Estimate(
                new Estimate.Basis(tank, parameter, AS_OF, used.size(), days),
                new Estimate.Figures(
                        level,
                        parameter.balances()
                                ? Optional.of(Interval.normal(0.9 * width, 0.06 * width))
                                : Optional.empty(),
                        drift,
                        parameter.equals(ALKALINITY) ? 1.3 : 0,
                        Optional.empty()),
                new Estimate.Course(track, ahead, Optional.empty()),
                new Estimate.Fit(0.08 * width, 0, 0, 0, 0.05 * width, 0.06 * width, 0, 7, true));
    }

    private static Judgement judgement(String tank, Parameter parameter) {
        boolean quarantine = tank.equals("Quarantine") && !parameter.equals(SALINITY);
        Verdict verdict = quarantine
                ? Verdict.CANNOT_TELL
                : parameter.equals(ALKALINITY)
                        ? Verdict.UNDER_DOSED
                        : parameter.equals(MAGNESIUM)
                                ? Verdict.RISING
                                : parameter.equals(PHOSPHATE) ? Verdict.LOW : Verdict.STEADY;
        double[] range = range(parameter);
        return new Judgement(
                tank,
                parameter,
                verdict,
                quarantine ? 0.5 : 0.91,
                quarantine ? "too few readings" : "the level has moved by less than its uncertainty in 30 days",
                Optional.of(new TargetRange(parameter, range[0], range[1], "setup")));
    }

    private static TankHistory tank(String name, List<Series> series) {
        List<Change> changes = new ArrayList<>();
        for (int back = 112; back >= 0; back -= 14) {
            changes.add(new Change(
                    AS_OF.minusDays(back), OptionalDouble.of(0.1), OptionalDouble.of(45), at(40 + back, 30, "10 %")));
        }
        DoseCourse carbonate = new DoseCourse(
                "Carbonate solution",
                List.of(additive()),
                List.of(
                        new DoseCourse.Step(
                                AS_OF.minusDays(200), Optional.of(AS_OF.minusDays(50)), 52, at(2, 20, "52 ml")),
                        new DoseCourse.Step(
                                AS_OF.minusDays(50), Optional.of(AS_OF.minusDays(20)), 60, at(3, 20, "60 ml")),
                        new DoseCourse.Step(AS_OF.minusDays(20), Optional.empty(), 65, at(4, 20, "65 ml"))),
                List.of());
        List<Remark> remarks = List.of(
                new Remark(name, AS_OF.minusDays(9), "carbon", "fresh carbon, " + NASTY, at(60, 31, NASTY)),
                new Remark(
                        name, AS_OF.minusDays(3), "note", "skimmer neck cleaned", at(61, 31, "skimmer neck cleaned")));
        return new TankHistory(
                name,
                OptionalDouble.of(name.equals("Display") ? 450 : 120),
                series,
                name.equals("Quarantine") ? List.of() : List.of(carbonate),
                changes,
                remarks);
    }

    private static Setup.Additive additive() {
        return new Setup.Additive(
                "Carbonate solution",
                List.of("alk"),
                ALKALINITY,
                OptionalDouble.of(9.0),
                "",
                OptionalDouble.of(1),
                "Additives!A2");
    }

    private static Setup setup() {
        return new Setup(
                List.of(),
                List.of(),
                List.of(),
                List.of(additive()),
                List.of(new Setup.Kit(
                        ALKALINITY,
                        "drop kit",
                        OptionalDouble.of(0.1),
                        OptionalDouble.of(0.15),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())),
                List.of(),
                List.of(),
                Map.of(),
                List.of());
    }

    private static List<BlockReading> blocks() {
        return List.of(new BlockReading(
                "Tests",
                "A3:X310",
                "a row a day",
                0.97,
                "dates run down",
                List.of(
                        new ColumnReading(
                                "Date",
                                "A3",
                                "date",
                                "",
                                "",
                                Set.of(Inferred.DATE_ORDER),
                                0.98,
                                List.of("3/1/26", "4/1/26"),
                                300,
                                Optional.of(AS_OF.minusDays(300)),
                                Optional.of(AS_OF)),
                        new ColumnReading(
                                "KH",
                                "B3",
                                "alkalinity",
                                "dKH",
                                "Display",
                                Set.of(Inferred.UNIT),
                                0.55,
                                List.of("8.2", NASTY),
                                300,
                                Optional.of(AS_OF.minusDays(300)),
                                Optional.of(AS_OF)))));
    }

    private static List<Issue> issues() {
        return List.of(
                new Odd(
                        Issue.Severity.WARNING,
                        Optional.of(at(18, 2, "8,2 or 8.4?")),
                        "two numbers in one cell; set aside"),
                new Odd(Issue.Severity.SERIOUS, Optional.of(at(25, 5, NASTY)), "expected a number, got " + NASTY),
                new Odd(Issue.Severity.NOTE, Optional.empty(), "2 pictures were not read"));
    }

    private record Odd(Issue.Severity severity, Optional<AsWritten> where, String message) implements Issue {}

    private static List<Recommendation> recommendations() {
        return List.of(
                new Recommendation(
                        "Display",
                        ALKALINITY,
                        "Carbonate solution",
                        OptionalDouble.of(65),
                        Optional.of(new Interval(69, 65.5, 72.6)),
                        Optional.of(new Recommendation.Correction(90, 3, 90)),
                        List.of(
                                "the tank uses 1.38 dKH a day and the dose puts in 1.30",
                                "left alone, alkalinity leaves its range within 30 days in 8 of 10 cases"),
                        Optional.empty(),
                        List.of(
                                new Recommendation.WorkingLine("use", "use a day", 1.38, "dKH", "", "Tests!B5:B305"),
                                new Recommendation.WorkingLine("litres", "water in the tank", 450, "L", "", "Tanks!B2"),
                                new Recommendation.WorkingLine(
                                        "strength", "rise of 1 mL in 1 L", 9.0, "dKH", "", "Additives!A2"),
                                new Recommendation.WorkingLine(
                                        "dose",
                                        "dose that holds the level",
                                        69,
                                        "mL/d",
                                        "use * litres / strength",
                                        "")),
                        List.of("Tests!B5:B305", "Tanks!B2", "Additives!A2"),
                        Optional.of(outlook()),
                        Optional.empty()),
                new Recommendation(
                        "Frag tank",
                        ALKALINITY,
                        "Carbonate solution",
                        OptionalDouble.of(65),
                        Optional.empty(),
                        Optional.empty(),
                        List.of(),
                        Optional.of(new Recommendation.Withheld(
                                Recommendation.Reason.VOLUME_UNKNOWN,
                                "the tank's water volume is not known",
                                "write the litres of the frag tank into the setup workbook, sheet Tanks")),
                        List.of(),
                        List.of("Tests!J5:J47")));
    }

    private static List<Action> actions() {
        return List.of(
                new Action(
                        Action.Urgency.NOW,
                        "Quarantine",
                        Optional.of(SALINITY),
                        "Test salinity again today",
                        List.of("one reading fell by 3 psu in a day"),
                        0.97,
                        "Change salinity by little steps; ask a vet if animals lie on their side",
                        List.of("Tests!W9")),
                new Action(
                        Action.Urgency.SOON,
                        "Display",
                        Optional.of(ALKALINITY),
                        "Dose 69 mL of Carbonate solution a day in place of 65",
                        List.of(
                                "the tank uses 1.38 dKH a day and the dose puts in 1.30",
                                "left alone, alkalinity leaves its range within 30 days in 8 of 10 cases"),
                        0.91,
                        "",
                        List.of("Tests!B5:B305", "Tanks!B2", "Additives!A2")),
                new Action(
                        Action.Urgency.HANDY,
                        "Frag tank",
                        Optional.of(ALKALINITY),
                        "Write the litres of the frag tank into the setup workbook, sheet Tanks",
                        List.of("no dose of Carbonate solution is proposed: the tank's water volume is not known"),
                        1,
                        "",
                        List.of("Tests!J5:J47")));
    }

    private static List<Supply> supplies() {
        return List.of(new Supply(
                "Display",
                "Carbonate solution",
                65,
                OptionalDouble.empty(),
                0,
                OptionalDouble.of(12),
                OptionalDouble.of(5.42),
                OptionalDouble.of(0.94),
                OptionalDouble.of(5000),
                OptionalDouble.of(1830),
                Optional.of(AS_OF.plusDays(29)),
                Optional.empty(),
                Optional.of(AS_OF.plusDays(22)),
                "Pumps!A2"));
    }

    private static List<DayPlan> plans() {
        return List.of(new DayPlan(
                "Display",
                List.of(
                        new DayPlan.Dose(LocalTime.of(0, 30), "Carbonate solution", 5.42, 5.42),
                        new DayPlan.Dose(LocalTime.of(2, 30), "Carbonate solution", 5.42, 5.42)),
                1440));
    }

    private static List<Insight> insights() {
        return List.of(new Insight(
                "Display",
                Insight.Kind.CALCIFICATION,
                "calcium used for each dKH",
                Optional.of(new Interval(7.3, 6.1, 8.6)),
                "mg/L",
                "close to the 7.15 of growing skeletons: the use is growth",
                List.of("Tests!B5:C305")));
    }

    private static Recommendation.Outlook outlook() {
        List<Estimate.Day> followed = new ArrayList<>();
        for (int day = 0; day <= 30; day++) {
            followed.add(
                    new Estimate.Day(AS_OF.plusDays(day), Interval.normal(7.87 + 0.004 * day, 0.08 + 0.009 * day)));
        }
        return new Recommendation.Outlook(List.of(), followed, 0.8, 0.05);
    }

    private static Reference reference() {
        return new Reference(
                ALL,
                ALL.stream().map(MarineClub::scale).toList(),
                List.of(),
                List.of(),
                List.of(
                        new Constant("calcium_per_dkh", 7.146, 0.001, "mg/L", "all", "calcification"),
                        new Constant("days_ahead", 30, 0, "d", "", "practice")),
                List.of(
                        new Source(
                                "calcification",
                                "Molar masses of the elements; one calcium for two alkalinity",
                                "",
                                false),
                        new Source("practice", "", "", true)));
    }
}
