package soundings.chemistry;

import java.util.Locale;
import java.util.stream.Stream;

/** What a pH counts. The same water reads up to 0.15 differently, so a pH without its scale is worth ±0.1 at best. */
public enum PhScale {
    /** Free hydrogen ions and those on sulfate; the scale of the published constants. */
    TOTAL("total scale"),
    FREE("free scale"),
    /** Total and those on fluoride. */
    SEAWATER("seawater scale"),
    /**
     * A glass electrode set in low-ionic-strength buffers, as hand-held meters are. The step to the total scale (0.137 at S = 35 and 25 degC)
     * is a convention for an average electrode (Takahashi et al. 1982); single electrodes differ by some 0.05.
     */
    NBS("NBS buffers");

    private final String label;

    PhScale(String label) {
        this.label = label;
    }

    /** What a keeper says of it; hand-held meters are set in low-ionic-strength buffers, so nothing said is those. */
    public static PhScale called(String said) {
        String name = Names.fold(said);
        return Stream.of(values())
                .filter(s -> name.startsWith(s.name().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(NBS);
    }

    public String label() {
        return label;
    }

    /** The pH on the total scale of the same water. */
    public double toTotal(double ph, double salinity, double celsius) {
        return ph - aboveTotal(salinity, celsius);
    }

    /** How much this scale reads above the total one. */
    public double aboveTotal(double salinity, double celsius) {
        CarbonateConstants k = CarbonateConstants.at(salinity, celsius, Boron.U74);
        double fluoride = k.fluoride() / CarbonateConstants.kF_DR79(salinity, celsius);
        double seawater = -Math.log10(1 + fluoride / k.hPerFree());
        return switch (this) {
            case TOTAL -> 0;
            case FREE -> Math.log10(k.hPerFree());
            case SEAWATER -> seawater;
            case NBS -> seawater - Math.log10(activityFactor_TWB82(salinity, celsius));
        };
    }

    /** Apparent activity factor fH of an NBS-calibrated electrode; Takahashi et al. 1982 (GEOSECS). */
    private static double activityFactor_TWB82(double salinity, double celsius) {
        double kelvin = celsius + 273.15;
        return 1.2948 - 0.002036 * kelvin + (0.0004607 - 0.000001475 * kelvin) * salinity * salinity;
    }
}
