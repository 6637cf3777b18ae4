package soundings.chemistry;

import java.util.List;
import soundings.quantity.Finite;

/**
 * What dosing leaves behind when animals have taken what they use: sodium, chloride and sulfate, and the salinity those add.
 *
 * @param sodium mg/L, as chloride and sulfate
 * @param salinity psu, by the mass of the three in a kilogram of seawater at S = 35 and 25 degC
 * @param notCounted solutions known only by label or assay, whose other ions nobody knows
 */
public record Creep(double sodium, double chloride, double sulfate, double salinity, List<String> notCounted) {
    private static final double REFERENCE_SALT_PER_PRACTICAL = 35.16504 / 35;

    public Creep {
        sodium = Finite.checked(sodium);
        chloride = Finite.checked(chloride);
        sulfate = Finite.checked(sulfate);
        salinity = Finite.checked(salinity);
        notCounted = List.copyOf(notCounted);
    }

    /** So many mL of a solution. */
    public record Dosed(StockSolution solution, double millilitres) {}

    public static Creep of(List<Dosed> doses, double tankLitres, Reference reference) {
        double sodium = rise("sodium", doses, tankLitres, reference);
        double chloride = rise("chloride", doses, tankLitres, reference);
        double sulfate = rise("sulfate", doses, tankLitres, reference);
        double kilogramsPerLitre = Seawater.kilogramsPerLitre(Ions.STANDARD, 25);
        double salinity = (sodium + chloride + sulfate) / 1000 / kilogramsPerLitre / REFERENCE_SALT_PER_PRACTICAL;
        List<String> notCounted = doses.stream()
                .map(Dosed::solution)
                .filter(s -> !s.complete())
                .map(StockSolution::written)
                .toList();
        return new Creep(sodium, chloride, sulfate, salinity, notCounted);
    }

    private static double rise(String parameter, List<Dosed> doses, double litres, Reference reference) {
        Parameter of = reference.parameter(parameter);
        return doses.stream()
                .filter(d -> d.solution().complete())
                .mapToDouble(d -> d.solution().rise(of, d.millilitres(), litres))
                .sum();
    }
}
