package soundings.reference;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import soundings.chemistry.Elements;
import soundings.chemistry.Formula;
import soundings.chemistry.Parameter;
import soundings.chemistry.Salt;
import soundings.chemistry.Scale;
import soundings.chemistry.SeaSpecies;
import soundings.chemistry.Substances;
import soundings.chemistry.TraceFigure;

/** The tables of salts, cautions, sea salt and traces. */
final class SubstanceRows {
    private final Map<String, Parameter> parameters;
    private final Elements elements;
    private final List<Scale> scales;

    SubstanceRows(Map<String, Parameter> parameters, Elements elements, List<Scale> scales) {
        this.parameters = parameters;
        this.elements = elements;
        this.scales = scales;
    }

    Substances substances(Map<String, Formula> counted, BiFunction<String, List<String>, Table> table) {
        Map<String, String> cautions =
                table.apply("cautions.csv", List.of("key", "text", "source")).unique(r -> r.text("key")).rows().stream()
                        .collect(Collectors.toMap(r -> r.text("key"), r -> r.text("text")));
        return new Substances(
                elements,
                counted,
                table.apply("salts.csv", List.of("formula", "names", "equivalents", "counts_for", "caution", "source"))
                        .unique(r -> r.text("formula"))
                        .map(r -> salt(r, cautions)),
                table.apply(
                                "seawater.csv",
                                List.of("species", "formula", "mass_fraction", "counts_for", "equivalents", "source"))
                        .unique(r -> r.text("species"))
                        .map(this::species),
                table.apply("traces.csv", List.of("parameter", "compilation", "low", "high", "unit", "source"))
                        .unique(r -> r.text("parameter") + " " + r.text("compilation"))
                        .map(this::trace));
    }

    private Salt salt(Row row, Map<String, String> cautions) {
        return new Salt(
                formula(row),
                row.words("names"),
                row.number("equivalents"),
                row.wordsOrNone("counts_for").stream()
                        .collect(Collectors.toMap(w -> parameterOf(row, w), w -> numberOf(row, w))),
                row.text("caution").equals("-") ? "" : row.oneOf("caution", cautions));
    }

    private Formula formula(Row row) {
        return row.reading("formula", "a formula of known elements", text -> {
            Formula formula = Formula.of(text);
            formula.molarMass(elements);
            return formula;
        });
    }

    private String parameterOf(Row row, String word) {
        String id = word.split(":", -1)[0];
        if (!parameters.containsKey(id)) {
            throw row.broken("no parameter '" + id + "'");
        }
        return id;
    }

    private static double numberOf(Row row, String word) {
        return row.reading(
                "counts_for", "parameter:number", text -> Double.valueOf(word.substring(word.indexOf(':') + 1)));
    }

    private SeaSpecies species(Row row) {
        List<String> counts = row.wordsOrNone("counts_for").stream()
                .map(w -> parameterOf(row, w))
                .toList();
        return new SeaSpecies(
                row.text("species"),
                formula(row),
                row.number("mass_fraction"),
                counts,
                row.number("equivalents"),
                row.text("source"));
    }

    private TraceFigure trace(Row row) {
        Parameter parameter = row.oneOf("parameter", parameters);
        Map<String, Scale> byId = scales.stream()
                .filter(s -> s.parameter().equals(parameter))
                .collect(Collectors.toMap(Scale::id, s -> s));
        Scale scale = row.oneOf("unit", byId);
        return new TraceFigure(
                parameter,
                row.text("compilation"),
                scale.canonical(row.number("low")),
                scale.canonical(row.number("high")),
                row.text("source"));
    }
}
