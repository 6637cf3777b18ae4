package soundings.results;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import soundings.advice.Judgement;
import soundings.estimate.Estimate;
import soundings.findings.Findings;
import soundings.history.DoseCourse;
import soundings.history.Point;
import soundings.history.TankHistory;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.Reading;
import soundings.quantity.Amount;
import soundings.setup.Setup;

/** Writes the results file of {@code results.schema.json}; the same findings always give the same bytes. */
public final class ResultsJson {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator out;
    private final Findings findings;
    private final Map<Reading, String> doubts;

    private ResultsJson(JsonGenerator out, Findings findings) {
        this.out = out;
        this.findings = findings;
        this.doubts = findings.estimates().doubts().stream()
                .collect(Collectors.toMap(Estimate.Doubt::reading, Estimate.Doubt::because, (a, b) -> a));
    }

    /** @throws UncheckedIOException when the stream does not take it */
    public static void write(Findings findings, OutputStream stream) {
        try (JsonGenerator out = JSON.createGenerator(stream)) {
            out.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            out.setPrettyPrinter(new DefaultPrettyPrinter());
            new ResultsJson(out, findings).all();
        } catch (IOException e) {
            throw new UncheckedIOException("could not write the results file", e);
        }
    }

    private void all() throws IOException {
        out.writeStartObject();
        out.writeStringField("format", "soundings-results");
        out.writeNumberField("version", 1);
        head();
        list("tanks", findings.history().tanks(), this::tank);
        list("readings", everyPoint(), this::reading);
        list("doses", everyDose(), this::dose);
        list("oneOffDoses", everyOneOff(), this::oneOff);
        list("waterChanges", everyChange(), this::change);
        list("events", everyRemark(), this::event);
        list("issues", findings.issues(), this::issue);
        new EstimateRows(out, verdicts()).write(findings.estimates());
        new RecommendationRows(out).write(findings.advice().recommendations());
        new CareRows(new Fields(out)).write(findings.care());
        new UpkeepRows(new Fields(out), findings.history().asOf()).write(findings.upkeep());
        out.writeEndObject();
    }

    private void head() throws IOException {
        out.writeObjectFieldStart("workbook");
        out.writeStringField("file", findings.provenance().file());
        out.writeStringField("sha256", findings.provenance().sha256());
        out.writeEndObject();
        out.writeObjectFieldStart("period");
        out.writeStringField("from", findings.month().atDay(1).toString());
        out.writeStringField("to", findings.history().asOf().toString());
        out.writeEndObject();
    }

    private void tank(TankHistory tank) throws IOException {
        out.writeStartObject();
        out.writeStringField("name", tank.tank());
        if (tank.litres().isPresent()) {
            out.writeNumberField("litres", tank.litres().getAsDouble());
        }
        out.writeEndObject();
    }

    private List<Point> everyPoint() {
        return findings.history().tanks().stream()
                .flatMap(t -> t.series().stream())
                .flatMap(s -> s.points().stream())
                .toList();
    }

    private void reading(Point point) throws IOException {
        Reading reading = point.reading();
        out.writeStartObject();
        out.writeStringField("tank", reading.tank());
        out.writeStringField("parameter", reading.parameter().id());
        out.writeStringField("date", reading.date().toString());
        if (reading.time().isPresent()) {
            out.writeStringField("time", reading.time().get().toString());
        }
        amount(reading.amount(), reading.parameter().unit());
        Optional<String> doubt = Optional.ofNullable(doubts.get(reading));
        out.writeStringField(
                "use", doubt.isPresent() ? "outlier" : point.use().name().toLowerCase(Locale.ROOT));
        String because = doubt.orElse(point.because());
        if (!because.isEmpty()) {
            out.writeStringField("because", because);
        }
        out.writeArrayFieldStart("inferred");
        for (String inferred :
                reading.inferred().stream().map(i -> camel(i.name())).sorted().toList()) {
            out.writeString(inferred);
        }
        out.writeEndArray();
        out.writeStringField("method", reading.method().isEmpty() ? "home" : reading.method());
        place(reading.at());
        out.writeStringField("text", reading.at().text());
        out.writeEndObject();
    }

    private void amount(Amount amount, String unit) throws IOException {
        Limits limits = amount.match(
                e -> new Limits("exact", e.value(), e.value(), e.value()),
                b -> new Limits("below", null, null, b.limit()),
                a -> new Limits("above", null, a.limit(), null),
                b -> new Limits("between", null, b.low(), b.high()));
        number("value", limits.value());
        out.writeStringField("unit", unit);
        out.writeStringField("limit", limits.limit());
        number("low", limits.low());
        number("high", limits.high());
    }

    private record Limits(
            String limit,
            @org.jspecify.annotations.Nullable Double value,
            @org.jspecify.annotations.Nullable Double low,
            @org.jspecify.annotations.Nullable Double high) {}

    private void number(String name, @org.jspecify.annotations.Nullable Double value) throws IOException {
        if (value == null) {
            out.writeNullField(name);
        } else {
            out.writeNumberField(name, value);
        }
    }

    private void place(AsWritten at) throws IOException {
        out.writeStringField("sheet", at.sheet());
        out.writeStringField("cell", at.cell().toString());
    }

    private record DoseRow(String tank, DoseCourse course, DoseCourse.Step step) {}

    private List<DoseRow> everyDose() {
        return findings.history().tanks().stream()
                .flatMap(t -> t.doses().stream().flatMap(c -> c.steps().stream().map(s -> new DoseRow(t.tank(), c, s))))
                .toList();
    }

    private void dose(DoseRow row) throws IOException {
        out.writeStartObject();
        out.writeStringField("tank", row.tank());
        out.writeStringField("additive", row.course().name());
        out.writeStringField("parameter", parameters(row.course()));
        out.writeStringField("from", row.step().from().toString());
        if (row.step().until().isPresent()) {
            out.writeStringField("to", row.step().until().get().toString());
        } else {
            out.writeNullField("to");
        }
        out.writeNumberField("mlPerDay", row.step().mlPerDay());
        place(row.step().at());
        out.writeEndObject();
    }

    /** The parameters an additive is known to raise, the first as the contract's one name, several joined by a space. */
    private static String parameters(DoseCourse course) {
        return course.additive().stream()
                .map(Setup.Additive::parameter)
                .map(p -> p.id())
                .distinct()
                .collect(Collectors.joining(" "));
    }

    private record OneOffRow(String tank, DoseCourse course, DoseCourse.OneOff oneOff) {}

    private List<OneOffRow> everyOneOff() {
        return findings.history().tanks().stream()
                .flatMap(t ->
                        t.doses().stream().flatMap(c -> c.oneOffs().stream().map(o -> new OneOffRow(t.tank(), c, o))))
                .toList();
    }

    private void oneOff(OneOffRow row) throws IOException {
        out.writeStartObject();
        out.writeStringField("tank", row.tank());
        out.writeStringField("additive", row.course().name());
        out.writeStringField("parameter", parameters(row.course()));
        out.writeStringField("date", row.oneOff().on().toString());
        out.writeNumberField("ml", row.oneOff().ml());
        place(row.oneOff().at());
        out.writeEndObject();
    }

    private record Held<T>(String tank, T what) {}

    private <T> List<Held<T>> held(Function<TankHistory, List<T>> of) {
        return findings.history().tanks().stream()
                .flatMap(t -> of.apply(t).stream().map(w -> new Held<>(t.tank(), w)))
                .toList();
    }

    private List<Held<soundings.history.Change>> everyChange() {
        return held(TankHistory::changes);
    }

    private void change(Held<soundings.history.Change> row) throws IOException {
        out.writeStartObject();
        out.writeStringField("tank", row.tank());
        out.writeStringField("date", row.what().on().toString());
        number(
                "fraction",
                row.what().fraction().isPresent() ? row.what().fraction().getAsDouble() : null);
        number("litres", row.what().litres().isPresent() ? row.what().litres().getAsDouble() : null);
        place(row.what().at());
        out.writeEndObject();
    }

    private List<Held<soundings.log.Remark>> everyRemark() {
        return held(TankHistory::remarks);
    }

    private void event(Held<soundings.log.Remark> row) throws IOException {
        out.writeStartObject();
        out.writeStringField("tank", row.tank());
        out.writeStringField("date", row.what().date().toString());
        out.writeStringField("kind", row.what().kind());
        out.writeStringField("text", row.what().text());
        place(row.what().at());
        out.writeEndObject();
    }

    private void issue(Issue issue) throws IOException {
        out.writeStartObject();
        out.writeStringField("kind", issue.kind());
        out.writeStringField("severity", issue.severity().name().toLowerCase(Locale.ROOT));
        if (issue.where().isPresent()) {
            place(issue.where().get());
            out.writeStringField("text", issue.where().get().text());
        } else {
            out.writeNullField("sheet");
            out.writeNullField("cell");
            out.writeStringField("text", "");
        }
        out.writeStringField("message", issue.message());
        out.writeEndObject();
    }

    private Map<String, Judgement> verdicts() {
        Map<String, Judgement> verdicts = new TreeMap<>();
        findings.advice()
                .judgements()
                .forEach(j -> verdicts.put(j.tank() + "\n" + j.parameter().id(), j));
        return verdicts;
    }

    private interface Row<T> {
        void write(T value) throws IOException;
    }

    private <T> void list(String name, List<T> values, Row<T> row) throws IOException {
        out.writeArrayFieldStart(name);
        for (T value : values) {
            row.write(value);
        }
        out.writeEndArray();
    }

    /** {@code DATE_ORDER} as {@code dateOrder}. */
    static String camel(String constant) {
        StringBuilder camel = new StringBuilder();
        boolean up = false;
        for (char c : constant.toLowerCase(Locale.ROOT).toCharArray()) {
            if (c == '_') {
                up = true;
            } else {
                camel.append(up ? Character.toUpperCase(c) : c);
                up = false;
            }
        }
        return camel.toString();
    }
}
