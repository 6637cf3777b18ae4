package soundings.reference;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Constant;
import soundings.chemistry.Elements;
import soundings.chemistry.Equation;
import soundings.chemistry.Formula;
import soundings.chemistry.Parameter;
import soundings.chemistry.Part;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.Source;
import soundings.chemistry.TargetRange;

/** The fact tables beside this class's package in the resources. Everything is checked as it is read; a mistake names file and line. */
public final class ReferenceTables {
    private static final List<String> PARAMETERS = List.of(
            "id", "name", "symbol", "unit", "basis", "decimals", "plausible_low", "plausible_high", "kind", "source");

    private final Function<String, Reader> open;
    private final Map<String, Source> sources;

    private ReferenceTables(Function<String, Reader> open) {
        this.open = open;
        this.sources = byId(readSources(), Source::key);
    }

    /** The tables that come with the program. */
    public static Reference load() {
        return load(ReferenceTables::packaged);
    }

    /** @param open gives the text of a table by its file name */
    public static Reference load(Function<String, Reader> open) {
        return new ReferenceTables(open).reference();
    }

    /** The text of a packaged table, UTF-8. */
    public static Reader packaged(String file) {
        InputStream bytes = ReferenceTables.class.getResourceAsStream(file);
        return new InputStreamReader(Objects.requireNonNull(bytes, file), StandardCharsets.UTF_8);
    }

    private Reference reference() {
        Elements elements = elements();
        Table parameterRows = table("parameters.csv", PARAMETERS).unique(r -> r.text("id"));
        Map<String, Parameter> parameters = byId(parameterRows.map(this::parameter), Parameter::id);
        Map<String, Formula> counted = counted(parameterRows);
        ScaleRows scaleRows = new ScaleRows(parameters, counted, elements, units());
        List<Scale> scales =
                scaleRows.scales(table("scales.csv", ScaleRows.COLUMNS).unique(ScaleRows::key));
        return new Reference(
                List.copyOf(parameters.values()),
                scales,
                new AliasRows(parameters, scales).aliases(this::table),
                targets(parameters),
                Stream.of("constants.csv", "estimate-defaults.csv", "care-rules.csv")
                        .flatMap(file -> constants(file).stream())
                        .toList(),
                List.copyOf(sources.values()),
                new SubstanceRows(parameters, elements, scales).substances(counted, this::table),
                table("equations.csv", List.of("id", "gives", "valid", "source"))
                        .unique(r -> r.text("id"))
                        .map(r -> new Equation(r.text("id"), r.text("gives"), r.text("valid"), r.text("source"))),
                table("parts.csv", List.of("id", "name", "general", "harm", "risk", "source"))
                        .unique(r -> r.text("id"))
                        .map(ReferenceTables::part));
    }

    private static Part part(Row row) {
        return new Part(
                row.text("id"),
                row.text("name"),
                row.yes("general"),
                row.constant("harm", Part.Harm.class),
                row.text("risk"),
                row.text("source"));
    }

    private Table table(String file, List<String> columns) {
        Table table = Table.read(file, open.apply(file), columns);
        if (columns.contains("source")) {
            table.rows().forEach(this::source);
        }
        return table;
    }

    private List<Source> readSources() {
        return Table.read(
                        "sources.csv",
                        open.apply("sources.csv"),
                        List.of("key", "citation", "locator", "common_practice"))
                .unique(r -> r.text("key"))
                .map(r -> new Source(
                        r.text("key"), r.text("citation"), r.textOrNone("locator"), r.yes("common_practice")));
    }

    private String source(Row row) {
        return row.oneOf("source", sources).key();
    }

    private Elements elements() {
        Table rows = table("elements.csv", List.of("symbol", "name", "weight", "source"))
                .unique(r -> r.text("symbol"));
        return new Elements(
                rows.rows().stream().collect(Collectors.toMap(r -> r.text("symbol"), r -> r.number("weight"))));
    }

    private Map<String, Unit> units() {
        return byId(table("units.csv", Unit.COLUMNS).unique(r -> r.text("id")).map(Unit::of), Unit::id);
    }

    private Parameter parameter(Row row) {
        double low = row.number("plausible_low");
        double high = row.number("plausible_high");
        if (!(low < high)) {
            throw row.broken("plausible_low must be below plausible_high");
        }
        return new Parameter(
                row.text("id"),
                row.text("name"),
                row.text("symbol"),
                row.text("unit"),
                row.count("decimals"),
                low,
                high,
                row.constant("kind", Parameter.Kind.class));
    }

    private static Map<String, Formula> counted(Table parameters) {
        return parameters.rows().stream()
                .filter(r -> !r.text("basis").equals("-"))
                .collect(Collectors.toMap(
                        r -> r.text("id"), r -> r.reading("basis", "a chemical formula", Formula::of)));
    }

    private List<TargetRange> targets(Map<String, Parameter> parameters) {
        return table("targets.csv", List.of("parameter", "low", "high", "source"))
                .unique(r -> r.text("parameter"))
                .map(r -> r.reading("parameter", "a range from low to high", id -> target(r, parameters)));
    }

    private static TargetRange target(Row row, Map<String, Parameter> parameters) {
        return new TargetRange(
                row.oneOf("parameter", parameters), row.number("low"), row.number("high"), row.text("source"));
    }

    private List<Constant> constants(String file) {
        return table(file, List.of("id", "value", "uncertainty", "unit", "range", "source"))
                .unique(r -> r.text("id"))
                .map(this::constant);
    }

    private Constant constant(Row row) {
        return new Constant(
                row.text("id"),
                row.number("value"),
                row.number("uncertainty"),
                row.text("unit"),
                row.textOrNone("range"),
                row.text("source"));
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> map = new LinkedHashMap<>();
        all.forEach(each -> map.put(id.apply(each), each));
        return map;
    }
}
