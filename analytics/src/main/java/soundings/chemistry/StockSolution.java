package soundings.chemistry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A solution to dose, as strong as its recipe, label or assay says. Its name plays no part.
 *
 * @param written the recipe as written
 * @param risePerMl by parameter id: canonical units by which 1 mL raises 1 L of water
 * @param complete whether everything dissolved is known (a recipe by weight) or only what was claimed (a label, an assay)
 * @param cautions how to handle it, in words
 * @param assumptions what had to be assumed to read it
 */
public record StockSolution(
        String written,
        Map<String, Double> risePerMl,
        boolean complete,
        List<String> cautions,
        List<String> assumptions) {
    public StockSolution {
        risePerMl = Map.copyOf(risePerMl);
        cautions = List.copyOf(new LinkedHashSet<>(cautions));
        assumptions = List.copyOf(new LinkedHashSet<>(assumptions));
    }

    /** Canonical units by which 1 mL raises 1 L; empty where the solution is not known to change the parameter. */
    public OptionalDouble risePerMlInOneLitre(Parameter parameter) {
        Double rise = risePerMl.get(parameter.id());
        return rise == null ? OptionalDouble.empty() : OptionalDouble.of(rise);
    }

    /** Canonical units by which so many mL raise so many litres; 0 where it does not. */
    public double rise(Parameter parameter, double millilitres, double litres) {
        return risePerMlInOneLitre(parameter).orElse(0) * millilitres / litres;
    }

    /** How many mL of this do what 1 mL of the other does; empty where either does not change the parameter the same way. */
    public OptionalDouble millilitresEqualToOneOf(StockSolution other, Parameter parameter) {
        double ratio = other.rise(parameter, 1, 1) / rise(parameter, 1, 1);
        return ratio > 0 && Double.isFinite(ratio) ? OptionalDouble.of(ratio) : OptionalDouble.empty();
    }

    /** mL that raise so many litres by so many canonical units; empty where it cannot. */
    public OptionalDouble millilitresToRaise(Parameter parameter, double by, double litres) {
        double millilitres = by * litres / rise(parameter, 1, 1);
        return Double.isFinite(millilitres) && millilitres >= 0
                ? OptionalDouble.of(millilitres)
                : OptionalDouble.empty();
    }
}
