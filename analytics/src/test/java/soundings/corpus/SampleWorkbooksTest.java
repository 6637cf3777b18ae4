package soundings.corpus;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.Analysis;
import soundings.findings.Findings;
import soundings.findings.Provenance;
import soundings.history.Change;
import soundings.history.DoseCourse;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.setup.Settings;
import soundings.workbook.WorkbookReader;

/** Every sample workbook against the truth its generator wrote beside it. */
class SampleWorkbooksTest {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");

    /** One line of an expected file. */
    private record Fact(
            String kind,
            String tank,
            LocalDate date,
            String what,
            String limit,
            String value,
            String low,
            String high,
            String use,
            String sheet,
            String cell) {
        static Fact of(String line) {
            String[] f = line.split(",", -1);
            return new Fact(f[0], f[1], LocalDate.parse(f[2]), f[3], f[4], f[5], f[6], f[7], f[8], f[9], f[10]);
        }

        String place() {
            return sheet + "!" + cell;
        }
    }

    static Stream<String> samples() throws IOException {
        try (Stream<Path> files = Files.list(SAMPLES)) {
            return files
                    .map(p -> p.getFileName().toString())
                    .filter(n -> n.endsWith(".expected.csv"))
                    .map(n -> n.substring(0, n.length() - ".expected.csv".length()))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private static List<Fact> facts(String stem, String kind) throws IOException {
        return Files.readAllLines(SAMPLES.resolve(stem + ".expected.csv")).stream()
                .skip(1)
                .map(Fact::of)
                .filter(f -> f.kind().equals(kind))
                .toList();
    }

    private static Findings findings(String stem) {
        Path log = Stream.of(".xlsx", ".csv")
                .map(end -> SAMPLES.resolve(stem + end))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
        Path setup = SAMPLES.resolve(stem + "-setup.xlsx");
        return Analysis.of(
                WorkbookReader.read(log, Optional.empty()),
                Optional.of(WorkbookReader.read(setup, Optional.empty())),
                new Provenance(log.getFileName().toString(), "", "", "", ""),
                ReferenceTables.load(),
                new Settings(LocalDate.of(2026, 11, 2), Optional.empty()));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_reading_of_the_truth_is_found_at_its_cell_with_its_value(String stem) throws IOException {
        List<Point> points = points(findings(stem));

        List<String> wrong = new ArrayList<>();
        for (Fact fact : facts(stem, "reading")) {
            boolean right = points.stream().anyMatch(p -> matches(p, fact));
            if (!right) {
                wrong.add(fact.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void nothing_is_used_that_the_truth_does_not_hold(String stem) throws IOException {
        List<Fact> facts = facts(stem, "reading");

        List<String> silent = points(findings(stem)).stream()
                .filter(Point::used)
                .filter(p -> facts.stream().noneMatch(f -> f.use().equals("used") && matches(p, f)))
                .map(p -> p.reading().at().place() + " "
                        + p.reading().parameter().id() + " " + p.reading().amount())
                .toList();

        assertThat(silent).isEmpty();
    }

    private static List<Point> points(Findings findings) {
        return findings.history().tanks().stream()
                .flatMap(t -> t.series().stream())
                .flatMap(s -> s.points().stream())
                .toList();
    }

    private static boolean matches(Point point, Fact fact) {
        var reading = point.reading();
        boolean same = reading.tank().equals(fact.tank())
                && reading.date().equals(fact.date())
                && reading.parameter().id().equals(fact.what())
                && reading.at().place().equals(fact.place());
        if (!same || !fact.use().equals("used")) {
            return same && !point.used();
        }
        return point.used()
                && reading.amount()
                        .match(
                                e -> fact.limit().equals("exact") && close(e.value(), fact.value()),
                                b -> fact.limit().equals("below") && close(b.limit(), fact.high()),
                                a -> fact.limit().equals("above") && close(a.limit(), fact.low()),
                                b -> fact.limit().equals("between")
                                        && close(b.low(), fact.low())
                                        && close(b.high(), fact.high()));
    }

    private static boolean close(double got, String expected) {
        double value = Double.parseDouble(expected);
        return Math.abs(got - value) <= 2e-5 * Math.abs(value) + 1e-9;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void every_dose_and_water_change_is_found(String stem) throws IOException {
        List<TankHistory> tanks = findings(stem).history().tanks();

        List<String> missed = new ArrayList<>();
        for (Fact fact : facts(stem, "dose")) {
            boolean found = tank(tanks, fact).doses().stream()
                    .filter(c -> c.name().equals(fact.what()))
                    .flatMap(c -> c.steps().stream())
                    .anyMatch(s -> hits(s, fact));
            if (!found) {
                missed.add(fact.toString());
            }
        }
        for (Fact fact : facts(stem, "waterChange")) {
            boolean found = tank(tanks, fact).changes().stream().anyMatch(c -> hits(c, fact));
            if (!found) {
                missed.add(fact.toString());
            }
        }
        assertThat(missed).isEmpty();
    }

    private static boolean hits(DoseCourse.Step step, Fact fact) {
        return step.from().equals(fact.date()) && close(step.mlPerDay(), fact.value());
    }

    private static boolean hits(Change change, Fact fact) {
        return change.on().equals(fact.date())
                && change.fraction().isPresent()
                && close(change.fraction().getAsDouble(), fact.value());
    }

    private static TankHistory tank(List<TankHistory> tanks, Fact fact) {
        return tanks.stream()
                .filter(t -> t.tank().equals(fact.tank()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no tank " + fact.tank()));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void the_true_use_is_estimated_within_a_tenth_or_inside_its_interval(String stem) throws IOException {
        Findings findings = findings(stem);

        for (Fact fact : facts(stem, "use")) {
            Interval use = findings.estimates().outcomes().stream()
                    .filter(o ->
                            o.tank().equals(fact.tank()) && o.parameter().id().equals(fact.what()))
                    .flatMap(o -> o.match(e -> e.use(), n -> Optional.<Interval>empty()).stream())
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no estimate for " + fact));
            double truth = Double.parseDouble(fact.value());
            assertThat(use.low() <= truth && truth <= use.high() || Math.abs(use.mid() / truth - 1) < 0.1)
                    .as("%s: %s", fact, use)
                    .isTrue();
        }
    }
}
