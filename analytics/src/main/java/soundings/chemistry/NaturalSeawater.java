package soundings.chemistry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.quantity.Interval;

/** What the sea holds, scaled with salinity, in the parameters' canonical units at 25 degC. */
public final class NaturalSeawater {
    private static final double REFERENCE_SALT_PER_PRACTICAL = 35.16504 / 35;
    private static final double CELSIUS = 25;

    private NaturalSeawater() {}

    /** Constituents in constant proportion (Reference Composition, Millero et al. 2008), alkalinity among them; empty for others. */
    public static OptionalDouble level(Parameter parameter, double salinity, Reference reference) {
        double mmolPerKg = reference.substances().seaSalt().stream()
                .mapToDouble(s -> counted(s, parameter) * mmolPerKilogram(s, salinity, reference))
                .sum();
        double mmolPerLitre = mmolPerKg * Seawater.kilogramsPerLitre(salinity, CELSIUS);
        return mmolPerLitre > 0
                ? OptionalDouble.of(inCanonicalUnit(mmolPerLitre, parameter, reference))
                : OptionalDouble.empty();
    }

    private static double counted(SeaSpecies species, Parameter parameter) {
        if (parameter.id().equals("alkalinity")) {
            return species.equivalents();
        }
        return species.countsFor().contains(parameter.id()) ? 1 : 0;
    }

    private static double mmolPerKilogram(SeaSpecies species, double salinity, Reference reference) {
        double gramsPerKilogram = species.massFraction() * REFERENCE_SALT_PER_PRACTICAL * salinity;
        return gramsPerKilogram
                * 1000
                / species.formula().molarMass(reference.substances().elements());
    }

    /** One mmol/L (or meq/L of alkalinity) in the parameter's unit, by the scale of that name. */
    private static double inCanonicalUnit(double mmolPerLitre, Parameter parameter, Reference reference) {
        return reference.findScale(parameter, "mmol/L").orElseThrow().canonical(mmolPerLitre);
    }

    /**
     * What compilations give for a trace at this salinity, from the lowest figure to the highest, with the middle between by ratio.
     * They disagree up to 50-fold, so this is never a target. Empty where none is known.
     */
    public static Optional<Interval> spread(Parameter parameter, double salinity, Reference reference) {
        List<TraceFigure> figures = figures(parameter, reference);
        if (figures.isEmpty()) {
            return Optional.empty();
        }
        double scale = salinity / Ions.STANDARD;
        double low = figures.stream().mapToDouble(TraceFigure::low).min().orElseThrow() * scale;
        double high = figures.stream().mapToDouble(TraceFigure::high).max().orElseThrow() * scale;
        return Optional.of(new Interval(Math.sqrt(low * high), low, high));
    }

    /** Each compilation's figure at S = 35. */
    public static List<TraceFigure> figures(Parameter parameter, Reference reference) {
        return reference.substances().traces().stream()
                .filter(t -> t.parameter().equals(parameter))
                .toList();
    }
}
