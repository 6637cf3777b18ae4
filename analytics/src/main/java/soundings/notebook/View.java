package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.estimate.Outcome;
import soundings.findings.Findings;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.log.Remark;
import soundings.quantity.Interval;
import soundings.setup.Setup;

/** The findings, looked up the way a report asks for them. */
record View(Findings findings, Map<String, String> tankIds) {
    static View of(Findings findings) {
        Map<String, String> ids = new LinkedHashMap<>();
        for (TankHistory tank : findings.history().tanks()) {
            String wanted = "tank-" + Ids.slug(tank.tank());
            ids.put(tank.tank(), ids.containsValue(wanted) ? wanted + "-" + (ids.size() + 1) : wanted);
        }
        return new View(findings, ids);
    }

    /** The tanks there were: one whose first word in the log is of a later month is none of this report's. */
    List<TankHistory> tanks() {
        return findings.history().tanks().stream().filter(this::hadBegun).toList();
    }

    private boolean hadBegun(TankHistory tank) {
        List<LocalDate> days = Stream.of(
                        tank.series().stream()
                                .flatMap(s -> s.points().stream())
                                .map(p -> p.reading().date()),
                        tank.doses().stream().flatMap(d -> d.steps().stream()).map(DoseCourse.Step::from),
                        tank.doses().stream().flatMap(d -> d.oneOffs().stream()).map(DoseCourse.OneOff::on),
                        tank.changes().stream().map(Change::on),
                        tank.remarks().stream().map(Remark::date))
                .flatMap(all -> all)
                .toList();
        return days.isEmpty() || days.stream().anyMatch(day -> !day.isAfter(asOf()));
    }

    LocalDate asOf() {
        return findings.history().asOf();
    }

    /** A tank's name as headings show it; a log with one tank need not name it. */
    static String name(TankHistory tank) {
        return tank.tank().isEmpty() ? "The tank" : tank.tank();
    }

    String tankId(String tank) {
        return tankIds.getOrDefault(tank, "tank-" + Ids.slug(tank));
    }

    String testId(String tank, Parameter parameter) {
        return tankId(tank) + "-" + Ids.slug(parameter.id());
    }

    /** @throws IllegalArgumentException naming the tanks */
    TankHistory tank(String name) {
        return tanks().stream()
                .filter(t -> t.tank().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no tank '" + name + "'; there are "
                        + String.join(
                                ", ", tanks().stream().map(TankHistory::tank).toList())));
    }

    /** @throws IllegalArgumentException naming the tests */
    Series series(String tank, String parameterId) {
        List<Series> all = tank(tank).series();
        return all.stream()
                .filter(s -> s.parameter().id().equals(parameterId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no test '" + parameterId + "' in tank '" + tank
                        + "'; there are "
                        + String.join(
                                ", ", all.stream().map(s -> s.parameter().id()).toList())));
    }

    /** What a tank's test is shown in: as its keeper writes it. */
    Scale scale(String tank, Parameter parameter) {
        return tanks().stream()
                .filter(t -> t.tank().equals(tank))
                .flatMap(t -> t.findScale(parameter).stream())
                .findFirst()
                .orElseGet(() -> findings.reference().canonicalScale(parameter));
    }

    /** What a test is shown in where it is told of no one tank: the scale all tanks share, else the canonical one. */
    Scale scale(Parameter parameter) {
        List<Scale> scales = tests().stream()
                .filter(t -> t.parameter().equals(parameter))
                .map(Test::scale)
                .toList();
        return scales.stream().map(Scale::id).distinct().count() == 1
                ? scales.get(0)
                : findings.reference().canonicalScale(parameter);
    }

    /** Whether the report has a part on this test, for links to lead to. */
    boolean has(String tank, Parameter parameter) {
        return tanks().stream()
                .filter(t -> t.tank().equals(tank))
                .anyMatch(t -> t.findSeries(parameter).isPresent());
    }

    Optional<Outcome> outcome(String tank, Parameter parameter) {
        return findings.estimates().find(tank, parameter);
    }

    Optional<Estimate> estimate(String tank, Parameter parameter) {
        return outcome(tank, parameter).flatMap(o -> o.match(Optional::of, n -> Optional.empty()));
    }

    /** The use, where it is known. */
    static Optional<Interval> use(Estimate estimate) {
        return estimate.use();
    }

    Optional<Judgement> judgement(String tank, Parameter parameter) {
        return findings.advice().judgements().stream()
                .filter(j -> j.tank().equals(tank) && j.parameter().equals(parameter))
                .findFirst();
    }

    /** Whether what to do says something of this test. */
    boolean isActed(Judgement judgement) {
        return findings.advice().actions().stream()
                .anyMatch(a ->
                        a.tank().equals(judgement.tank()) && a.parameter().equals(Optional.of(judgement.parameter())));
    }

    Tone tone(Judgement judgement) {
        return Tones.of(judgement.verdict(), isActed(judgement));
    }

    List<Recommendation> recommendations(String tank, Parameter parameter) {
        return findings.advice().recommendations().stream()
                .filter(r -> r.tank().equals(tank) && r.parameter().equals(parameter))
                .toList();
    }

    /** The range a test is judged by: the judgement's own, else the keeper's, else the reference's. */
    Optional<TargetRange> target(String tank, Parameter parameter) {
        return judgement(tank, parameter)
                .flatMap(Judgement::target)
                .or(() -> findings.history().setup().findTarget(tank, parameter).map(Setup.Target::range))
                .or(() -> findings.reference().findTarget(parameter));
    }

    /** Every tank and test of its water in the log's order. */
    List<Test> tests() {
        List<Test> tests = new ArrayList<>();
        for (TankHistory tank : tanks()) {
            tank.series().stream()
                    .filter(series -> series.parameter().isOfTheWater())
                    .forEach(series -> tests.add(new Test(tank, series)));
        }
        return tests;
    }

    /** One test of one tank. */
    record Test(TankHistory tank, Series series) {
        String tankName() {
            return tank.tank();
        }

        Parameter parameter() {
            return series.parameter();
        }

        Scale scale() {
            return series.scale();
        }
    }
}
