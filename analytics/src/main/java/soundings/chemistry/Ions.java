package soundings.chemistry;

/** Ions compared at one salinity, so that dilution is not mistaken for use. */
public final class Ions {
    /** The salinity of Standard Seawater. */
    public static final double STANDARD = 35;

    private static final double CELSIUS = 25;

    private Ions() {}

    /**
     * What a concentration (mg/L, dKH or any amount a litre) would read were the water brought to S = 35 by adding or taking pure water:
     * amounts a kilogram go with S, and litres follow by the density (EOS-80 at 25 degC). Meant for {@link Parameter.Kind#ION} and traces.
     */
    public static double atStandardSalinity(double perLitre, double salinity) {
        double perKilogram = perLitre / Seawater.kilogramsPerLitre(salinity, CELSIUS);
        return perKilogram * STANDARD / salinity * Seawater.kilogramsPerLitre(STANDARD, CELSIUS);
    }
}
