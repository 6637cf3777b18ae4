package soundings.chemistry;

/**
 * Phosphoric and silicic acid in one water: the little that phosphate and silicate hold of its alkalinity.
 *
 * @param phosphate in all, mol/kg of seawater, and so silicate
 * @param k1P and the others mol/kg, on the pH scale of the {@link CarbonateConstants} they stand in
 */
public record NutrientAcids(double phosphate, double silicate, double k1P, double k2P, double k3P, double kSi) {
    /** Of water that holds neither. */
    public static final NutrientAcids NONE = new NutrientAcids(0, 0, 1, 1, 1, 1);

    /** On the total scale. */
    public static NutrientAcids at(double salinity, double celsius, double phosphate, double silicate) {
        return new NutrientAcids(
                phosphate,
                silicate,
                k1P_DSC07(salinity, celsius),
                k2P_DSC07(salinity, celsius),
                k3P_DSC07(salinity, celsius),
                kSi_DSC07(salinity, celsius));
    }

    /** {@code [HPO4] + 2 [PO4] - [H3PO4] + [SiO(OH)3]}, mol/kg; Dickson 1981. */
    double alkalinity(double h) {
        double first = k1P * h * h;
        double second = k1P * k2P * h;
        double third = k1P * k2P * k3P;
        double all = h * h * h + first + second + third;
        return phosphate * (second + 2 * third - h * h * h) / all + silicate * kSi / (kSi + h);
    }

    /** First dissociation of phosphoric acid, total scale; Dickson, Sabine & Christian 2007 (Millero 1995). */
    public static double k1P_DSC07(double salinity, double celsius) {
        double t = celsius + 273.15;
        return Math.exp(-4576.752 / t
                + 115.525
                - 18.453 * Math.log(t)
                + (-106.736 / t + 0.69171) * Math.sqrt(salinity)
                + (-0.65643 / t - 0.01844) * salinity);
    }

    /** Second dissociation of phosphoric acid, total scale; Dickson, Sabine & Christian 2007 (Millero 1995). */
    public static double k2P_DSC07(double salinity, double celsius) {
        double t = celsius + 273.15;
        return Math.exp(-8814.715 / t
                + 172.0883
                - 27.927 * Math.log(t)
                + (-160.340 / t + 1.3566) * Math.sqrt(salinity)
                + (0.37335 / t - 0.05778) * salinity);
    }

    /** Third dissociation of phosphoric acid, total scale; Dickson, Sabine & Christian 2007 (Millero 1995). */
    public static double k3P_DSC07(double salinity, double celsius) {
        double t = celsius + 273.15;
        return Math.exp(-3070.75 / t
                - 18.141
                + (17.27039 / t + 2.81197) * Math.sqrt(salinity)
                + (-44.99486 / t - 0.09984) * salinity);
    }

    /** Silicic acid, total scale; Dickson, Sabine & Christian 2007 (Millero 1995). */
    public static double kSi_DSC07(double salinity, double celsius) {
        double t = celsius + 273.15;
        double i = 19.924 * salinity / (1000 - 1.005 * salinity);
        return Math.exp(-8904.2 / t
                + 117.385
                - 19.334 * Math.log(t)
                + (-458.79 / t + 3.5913) * Math.sqrt(i)
                + (188.74 / t - 1.5998) * i
                + (-12.1652 / t + 0.07871) * i * i
                + Math.log(1 - 0.001005 * salinity));
    }
}
