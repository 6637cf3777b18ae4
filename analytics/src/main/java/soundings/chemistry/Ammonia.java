package soundings.chemistry;

/** How much of total ammonia is un-ionised (NH3), the poisonous part. Temperature degC, salinity practical; pK for mol/kg of water. */
public final class Ammonia {
    private Ammonia() {}

    /** Share of NH3, 0 to 1, from a pH on any scale, brought to the total one; Clegg & Whitfield 1995. */
    public static double unionisedShare(double ph, PhScale scale, double celsius, double salinity) {
        double total = scale.toTotal(ph, salinity, celsius);
        return share(total, pKTotal_CW95(celsius, salinity));
    }

    /** {@code 1 / (1 + 10^(pK - pH))}. */
    public static double share(double ph, double pK) {
        return 1 / (1 + Math.pow(10, pK - ph));
    }

    /** pK on the total scale; Clegg & Whitfield 1995. Valid 0 to 40, -2 to 40 degC. */
    public static double pKTotal_CW95(double celsius, double salinity) {
        double t = celsius + 273.15;
        double s = salinity;
        double rootT = Math.sqrt(t);
        return pKFresh_CW95(t)
                + (0.04203362 - 11.24742 / t) * Math.pow(s, 0.25)
                + (-13.6416 + 1.176949 * rootT - 0.02860785 * t + 545.4834 / t) * Math.sqrt(s)
                + (-0.1462507 + 0.0090226468 * rootT - 0.0001471361 * t + 10.5425 / t) * Math.pow(s, 1.5)
                + (0.004669309 - 0.0001691742 * rootT - 0.5677934 / t) * s * s
                + (-2.354039e-5 + 0.009698623 / t) * Math.pow(s, 2.5);
    }

    /** pK on the free scale; Clegg & Whitfield 1995. */
    public static double pKFree_CW95(double celsius, double salinity) {
        double t = celsius + 273.15;
        double s = salinity;
        return pKFresh_CW95(t)
                + (0.0500616 - 9.412696 / t - 2.029559e-7 * t * t) * Math.sqrt(s)
                + (-0.0142372 + 1.46041e-5 * t + 3.730005 / t) * s
                + (7.14045e-5 - 0.0229021 / t) * s * s
                + (-5.521278e-7 + 1.95413e-4 / t) * s * s * s;
    }

    private static double pKFresh_CW95(double kelvin) {
        return 9.244605 - 2729.33 * (1 / 298.15 - 1 / kelvin);
    }

    /** pK; Bell et al. 2007 with the corrigendum of 2008. */
    public static double pK_B07(double celsius, double salinity) {
        return 10.0423 - 0.0315536 * celsius + 0.003071 * salinity;
    }
}
