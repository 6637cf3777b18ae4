package soundings.chemistry;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;

/**
 * A curved scale of salinity and its inverse. {@link #NAMED} lists those a row of {@code scales.csv} may use; numbers after the name
 * are degrees Celsius (for conductivity: degrees, then scale units in a mS/cm).
 */
public record Relation(DoubleUnaryOperator toCanonical, DoubleUnaryOperator fromCanonical) {
    public static final Map<String, Function<List<Double>, Relation>> NAMED = Map.of(
            "specificGravity", at -> specificGravity(at.get(0), at.get(1)),
            "density", at -> density(at.get(0)),
            "conductivity", at -> conductivity(at.get(0), at.get(1)),
            "refractiveIndex", at -> refractiveIndex(at.get(0)),
            "gramsPerLitre", at -> gramsPerLitre(at.get(0)));

    private static Relation specificGravity(double celsius, double reference) {
        return new Relation(
                g -> Seawater.salinityFromSpecificGravity_EOS80(g, celsius, reference),
                s -> Seawater.specificGravity_EOS80(s, celsius, reference));
    }

    private static Relation density(double celsius) {
        return new Relation(
                d -> Roots.inverse(s -> Seawater.kilogramsPerLitre(s, celsius), d, 0, 60),
                s -> Seawater.kilogramsPerLitre(s, celsius));
    }

    private static Relation conductivity(double celsius, double unitsPerMillisiemens) {
        return new Relation(
                c -> Seawater.salinityFromConductivity_PSS78(c / unitsPerMillisiemens, celsius),
                s -> Seawater.conductivity_PSS78(s, celsius) * unitsPerMillisiemens);
    }

    private static Relation refractiveIndex(double celsius) {
        return new Relation(
                n -> Seawater.salinityFromRefractiveIndex_MS90(n, celsius),
                s -> Seawater.refractiveIndex_MS90(s, celsius));
    }

    private static Relation gramsPerLitre(double celsius) {
        return new Relation(
                g -> Seawater.salinityFromGramsPerLitre(g, celsius), s -> Seawater.gramsPerLitre(s, celsius));
    }
}
