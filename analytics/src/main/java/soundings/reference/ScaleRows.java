package soundings.reference;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import soundings.chemistry.Elements;
import soundings.chemistry.Formula;
import soundings.chemistry.Parameter;
import soundings.chemistry.Relation;
import soundings.chemistry.Scale;

/** Turns rows of {@code scales.csv} into scales. Factors come from units and atomic weights, so that none is typed in by hand. */
final class ScaleRows {
    static final List<String> COLUMNS =
            List.of("parameter", "id", "label", "unit", "basis", "counts", "usual", "assumption", "source");
    private static final String RELATION = "relation:";
    private static final String ALL = "*";

    private final Map<String, Parameter> parameters;
    private final Map<String, Formula> counted;
    private final Elements elements;
    private final Map<String, Unit> units;

    ScaleRows(
            Map<String, Parameter> parameters,
            Map<String, Formula> counted,
            Elements elements,
            Map<String, Unit> units) {
        this.parameters = parameters;
        this.counted = counted;
        this.elements = elements;
        this.units = units;
    }

    static String key(Row row) {
        return row.text("parameter") + " " + row.text("id");
    }

    /** For each parameter the canonical scale first, then its own, then those all share; {@code *} rows are for parameters in such a unit. */
    List<Scale> scales(Table table) {
        List<Row> rows = table.rows();
        rows.stream().filter(r -> !r.text("parameter").equals(ALL)).forEach(r -> r.oneOf("parameter", parameters));
        return parameters.values().stream().flatMap(p -> scales(p, rows)).toList();
    }

    private Stream<Scale> scales(Parameter parameter, List<Row> rows) {
        List<Row> own = rowsFor(parameter.id(), rows);
        List<Row> shared = rowsFor(ALL, rows);
        boolean shares = shared.stream().anyMatch(r -> r.text("id").equals(parameter.unit()));
        return Stream.concat(own.stream(), shares ? shared.stream() : Stream.of())
                .map(r -> scale(parameter, r))
                .sorted(Comparator.comparing(s -> !s.id().equals(parameter.unit())));
    }

    private static List<Row> rowsFor(String parameter, List<Row> rows) {
        return rows.stream().filter(r -> r.text("parameter").equals(parameter)).toList();
    }

    private Scale scale(Parameter parameter, Row row) {
        return row.text("unit").startsWith(RELATION) ? curved(parameter, row) : straight(parameter, row);
    }

    private static Scale curved(Parameter parameter, Row row) {
        String[] words = row.text("unit").substring(RELATION.length()).split(" ");
        List<Double> at = row.reading("unit", "relation:NAME and numbers", u -> numbersAfterName(words));
        if (!Relation.NAMED.containsKey(words[0])) {
            throw row.broken("no relation '" + words[0] + "'; there are " + Relation.NAMED.keySet());
        }
        Relation relation = Relation.NAMED.get(words[0]).apply(at);
        return scale(parameter, row, row.textOrNone("assumption"), relation);
    }

    private static List<Double> numbersAfterName(String[] words) {
        return Arrays.stream(words).skip(1).map(Double::valueOf).toList();
    }

    /** {@code canonical = ((written - offset) x factor + offset')}, with the substance's ratio in the factor. */
    private Scale straight(Parameter parameter, Row row) {
        Unit unit = row.oneOf("unit", units);
        Unit canonical = canonicalUnit(parameter, row);
        double factor = unit.factor() / canonical.factor() * substanceRatio(parameter, row, unit);
        double offset = unit.offset();
        String own = row.textOrNone("assumption");
        return scale(
                parameter,
                row,
                own.isEmpty() ? unit.assumption() : own,
                new Relation(w -> (w - offset) * factor, c -> c / factor + offset));
    }

    private Unit canonicalUnit(Parameter parameter, Row row) {
        Unit unit = units.get(parameter.unit());
        if (unit == null || unit.offset() != 0) {
            throw row.broken("the canonical unit '" + parameter.unit() + "' is not in units.csv or has an offset");
        }
        return unit;
    }

    /** Canonical mass units per base unit of the written scale; 1 where no substance is counted. */
    private double substanceRatio(Parameter parameter, Row row, Unit unit) {
        if (!unit.counts()) {
            return 1;
        }
        if (!counted.containsKey(parameter.id())) {
            throw row.broken(parameter.id() + " has no basis to count");
        }
        double own = counted.get(parameter.id()).molarMass(elements);
        double counts = row.number("counts") * own;
        return unit.dimension() == Unit.Dimension.amount ? counts : counts / basisMass(row, own);
    }

    private double basisMass(Row row, double own) {
        return row.text("basis").equals("=")
                ? own
                : row.reading("basis", "a chemical formula", f -> Formula.of(f).molarMass(elements));
    }

    private static Scale scale(Parameter parameter, Row row, String assumption, Relation relation) {
        return new Scale(
                parameter,
                row.text("id"),
                row.text("label"),
                assumption,
                row.yes("usual"),
                relation.toCanonical(),
                relation.fromCanonical());
    }
}
