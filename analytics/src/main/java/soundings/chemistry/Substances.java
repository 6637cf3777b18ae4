package soundings.chemistry;

import java.util.List;
import java.util.Map;

/**
 * What matter is made of.
 *
 * @param counted the formula each parameter's canonical unit counts, by parameter id
 */
public record Substances(
        Elements elements,
        Map<String, Formula> counted,
        List<Salt> salts,
        List<SeaSpecies> seaSalt,
        List<TraceFigure> traces) {
    public static final Substances NONE =
            new Substances(new Elements(Map.of()), Map.of(), List.of(), List.of(), List.of());

    public Substances {
        counted = Map.copyOf(counted);
        salts = List.copyOf(salts);
        seaSalt = List.copyOf(seaSalt);
        traces = List.copyOf(traces);
    }

    /** g/mol of what the parameter's canonical unit counts. @throws IllegalArgumentException where it counts no substance */
    public double countedMass(String parameterId) {
        Formula formula = counted.get(parameterId);
        if (formula == null) {
            throw new IllegalArgumentException(parameterId + " counts no substance");
        }
        return formula.molarMass(elements);
    }
}
