package soundings.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.estimate.Estimate;
import soundings.estimate.Estimates;
import soundings.estimate.Estimating;
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
import soundings.quantity.Interval;
import soundings.reference.ReferenceTables;
import soundings.setup.Setup;
import soundings.sheet.CellRef;

/**
 * Estimates on logs whose truth is known, past all reading of workbooks: a folder of cases, each with its truth.json.
 * Mistyped values go in as they were typed. Run: see the package.
 */
public final class CorpusBench {
    private static final Set<String> SCORED = Set.of("alkalinity", "calcium", "iodine");

    private final Reference reference = ReferenceTables.load();
    private final List<Double> errors = new ArrayList<>();
    private int inside;
    private int asked;

    private CorpusBench() {}

    public static void main(String[] args) throws IOException {
        CorpusBench bench = new CorpusBench();
        try (Stream<Path> cases = Files.list(Path.of(args[0]))) {
            for (Path each : cases.sorted().toList()) {
                bench.score(each);
            }
        }
        errorsOf(bench);
    }

    private static void errorsOf(CorpusBench bench) {
        List<Double> sorted = bench.errors.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "estimated %d/%d  coverage90 %.3f  median error %.4f  p90 %.4f%n",
                sorted.size(),
                bench.asked,
                (double) bench.inside / bench.asked,
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 9 / 10));
    }

    private void score(Path folder) throws IOException {
        JsonNode truth =
                new ObjectMapper().readTree(folder.resolve("truth.json").toFile());
        long before = System.nanoTime();
        Estimates estimates = Estimating.of(history(truth), reference);
        double ms = (System.nanoTime() - before) / 1e6;
        System.out.printf(Locale.ROOT, "%s %.0f ms%n", folder.getFileName(), ms);
        truth.get("tanks")
                .properties()
                .iterator()
                .forEachRemaining(tank -> tank.getValue()
                        .get("consumption_per_day")
                        .properties()
                        .iterator()
                        .forEachRemaining(p -> score(
                                estimates,
                                tank.getKey(),
                                p.getKey(),
                                p.getValue().asDouble())));
    }

    private void score(Estimates estimates, String tank, String id, double truth) {
        if (!SCORED.contains(id)) {
            return;
        }
        asked++;
        estimates
                .find(tank, reference.parameter(id))
                .ifPresent(o -> o.match(e -> score(e, truth), n -> say("%s %s: %s".formatted(tank, id, n.why()))));
    }

    private boolean score(Estimate e, double truth) {
        Interval use = e.use().orElseThrow();
        boolean in = use.low() <= truth && truth <= use.high();
        inside += in ? 1 : 0;
        errors.add(Math.abs(use.mid() - truth) / truth);
        return say(String.format(
                Locale.ROOT,
                "  %-10s %-10s true %8.5f  mid %8.5f [%8.5f %8.5f] %s err %5.3f z %5.2f width %5.2f out %d kit %.3g wander %.3g/%.3g %s",
                e.tank(),
                e.parameter().id(),
                truth,
                use.mid(),
                use.low(),
                use.high(),
                in ? "  " : "X ",
                Math.abs(use.mid() - truth) / truth,
                (use.mid() - truth) / e.fit().useSd(),
                (use.high() - use.low()) / truth,
                e.setAside().size(),
                e.fit().kitError(),
                e.fit().useWander() / truth,
                e.fit().levelWander(),
                e.caveats()));
    }

    private static boolean say(String line) {
        System.out.println(line);
        return true;
    }

    private History history(JsonNode truth) {
        List<TankHistory> tanks = new ArrayList<>();
        List<Setup.FreshMix> mixes = new ArrayList<>();
        truth.get("fresh_saltwater")
                .properties()
                .iterator()
                .forEachRemaining(m -> mixes.add(new Setup.FreshMix(
                        "", reference.parameter(m.getKey()), m.getValue().asDouble(), "")));
        truth.get("tanks").fieldNames().forEachRemaining(name -> tanks.add(tank(name, truth)));
        Setup setup =
                new Setup(List.of(), mixes, List.of(), List.of(), List.of(), List.of(), List.of(), Map.of(), List.of());
        return new History(LocalDate.parse(truth.get("end").asText()), tanks, setup, List.of());
    }

    private TankHistory tank(String name, JsonNode truth) {
        Map<Parameter, List<JsonNode>> byParameter = new LinkedHashMap<>();
        for (JsonNode r : truth.get("readings")) {
            if (r.get("tank").asText().equals(name)) {
                byParameter
                        .computeIfAbsent(reference.parameter(r.get("parameter").asText()), p -> new ArrayList<>())
                        .add(r);
            }
        }
        List<Series> series = new ArrayList<>();
        byParameter.forEach((p, rows) -> series.add(series(name, p, rows)));
        List<Change> changes = new ArrayList<>();
        for (JsonNode c : truth.get("water_changes")) {
            if (c.get("tank").asText().equals(name)) {
                changes.add(new Change(
                        LocalDate.parse(c.get("date").asText()),
                        OptionalDouble.of(c.get("fraction").asDouble()),
                        OptionalDouble.empty(),
                        AT));
            }
        }
        JsonNode tank = truth.get("tanks").get(name);
        OptionalDouble litres = OptionalDouble.of(tank.get("litres").asDouble());
        return new TankHistory(name, litres, series, doses(name, tank, truth), changes, List.of());
    }

    private static final AsWritten AT = new AsWritten("Log", new CellRef(0, 0), "");

    private List<DoseCourse> doses(String name, JsonNode tank, JsonNode truth) {
        Map<String, List<JsonNode>> byAdditive = new LinkedHashMap<>();
        for (JsonNode d : truth.get("doses")) {
            if (d.get("tank").asText().equals(name)) {
                byAdditive
                        .computeIfAbsent(d.get("additive").asText(), a -> new ArrayList<>())
                        .add(d);
            }
        }
        List<DoseCourse> courses = new ArrayList<>();
        byAdditive.forEach((additive, rows) -> courses.add(course(additive, rows, tank)));
        return courses;
    }

    private DoseCourse course(String additive, List<JsonNode> rows, JsonNode tank) {
        List<DoseCourse.Step> steps = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Optional<LocalDate> until = i + 1 < rows.size()
                    ? Optional.of(LocalDate.parse(rows.get(i + 1).get("start").asText()))
                    : Optional.empty();
            steps.add(new DoseCourse.Step(
                    LocalDate.parse(rows.get(i).get("start").asText()),
                    until,
                    rows.get(i).get("ml_per_day").asDouble(),
                    AT));
        }
        String id = rows.get(0).get("parameter").asText();
        double rise = tank.get("strength_per_ml_in_1L").get(id).asDouble();
        return new DoseCourse(
                additive,
                List.of(new Setup.Additive(
                        additive,
                        List.of(),
                        reference.parameter(id),
                        OptionalDouble.of(rise),
                        "",
                        OptionalDouble.empty(),
                        "")),
                steps,
                List.of());
    }

    private static double number(JsonNode row) {
        String text = row.get("text").asText().replace(',', '.').replaceAll("[^0-9.-]", "");
        return text.isEmpty() || text.chars().filter(c -> c == '.').count() > 1 ? Double.NaN : Double.parseDouble(text);
    }

    private static Series series(String tank, Parameter parameter, List<JsonNode> rows) {
        double factor = rows.stream()
                .filter(r -> r.get("value").isNumber() && number(r) > 0)
                .mapToDouble(r -> r.get("value").asDouble() / number(r))
                .sorted()
                .skip(rows.size() / 3)
                .findFirst()
                .orElse(1);
        Scale scale = new Scale(parameter, "written", "written", "", w -> w * factor, c -> c / factor);
        List<Point> points = new ArrayList<>();
        for (JsonNode r : rows) {
            amount(r, factor).ifPresent(a -> points.add(new Point(reading(tank, scale, r, a), Use.USED, "")));
        }
        return new Series(parameter, scale, points);
    }

    private static Reading reading(String tank, Scale scale, JsonNode r, Amount amount) {
        String text = r.get("text").asText();
        return new Reading(
                tank,
                LocalDate.parse(r.get("date").asText()),
                Optional.empty(),
                scale.parameter(),
                amount,
                scale,
                Set.of(),
                "",
                text.contains("~") || text.contains("?"),
                "",
                new AsWritten(
                        r.get("sheet").asText(),
                        CellRef.parse(r.get("cell").asText().replaceAll("[^A-Z0-9].*", "")),
                        text));
    }

    private static Optional<Amount> amount(JsonNode r, double factor) {
        String qualifier = r.get("qualifier").asText();
        if (qualifier.equals("below")) {
            return Optional.of(new Amount.Below(r.get("high").asDouble()));
        }
        if (qualifier.equals("between")) {
            return Optional.of(
                    new Amount.Between(r.get("low").asDouble(), r.get("high").asDouble()));
        }
        double value = r.get("value").isNumber() ? r.get("value").asDouble() : number(r) * factor;
        return Double.isFinite(value) ? Optional.of(new Amount.Exact(value)) : Optional.empty();
    }
}
