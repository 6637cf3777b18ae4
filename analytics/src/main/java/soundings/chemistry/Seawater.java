package soundings.chemistry;

/** Physical relations of seawater at the pressure of one atmosphere. Salinity practical (PSS-78), temperature degC on ITS-90 unless said. */
public final class Seawater {
    private static final double[] PSS_A = {0.0080, -0.1692, 25.3851, 14.0941, -7.0261, 2.7081};
    private static final double[] PSS_B = {0.0005, -0.0056, -0.0066, -0.0375, 0.0636, -0.0144};
    private static final double[] PSS_C = {0.6766097, 2.00564e-2, 1.104259e-4, -6.9698e-7, 1.0031e-9};
    private static final double[] RHO_W = {999.842594, 6.793952e-2, -9.095290e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9
    };
    private static final double[] RHO_B = {8.24493e-1, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9};
    private static final double[] RHO_C = {-5.72466e-3, 1.0227e-4, -1.6546e-6};
    private static final double RHO_D = 4.8314e-4;
    private static final double CONDUCTIVITY_35_15 = 42.914;
    private static final double SODIUM_D_MICROMETRES = 0.58926;

    private Seawater() {}

    /** IPTS-68 from ITS-90, degC; Saunders 1990 as used with UNESCO 44. */
    public static double ipts68(double celsius) {
        return 1.00024 * celsius;
    }

    /**
     * Practical salinity from the conductivity ratio R = C(S,t,p)/C(35,15,0); UNESCO 44 pp. 6-8. Valid 2 to 42, -2 to 35 degC.
     *
     * @param celsius68 degC on IPTS-68
     * @param decibars pressure above the atmosphere
     */
    public static double salinity_PSS78(double conductivityRatio, double celsius68, double decibars) {
        double t = celsius68;
        double rp = 1
                + decibars
                        * (2.070e-5 + decibars * (-6.370e-10 + decibars * 3.989e-15))
                        / (1 + 3.426e-2 * t + 4.464e-4 * t * t + (0.4215 - 3.107e-3 * t) * conductivityRatio);
        return salinityAtRt_PSS78(conductivityRatio / (rp * polynomial(PSS_C, t)), t);
    }

    private static double salinityAtRt_PSS78(double rt, double celsius68) {
        double root = Math.sqrt(Math.max(rt, 0));
        double warmer = (celsius68 - 15) / (1 + 0.0162 * (celsius68 - 15));
        return polynomial(PSS_A, root) + warmer * polynomial(PSS_B, root);
    }

    /** Practical salinity from conductivity in mS/cm measured at, or compensated to, a temperature. */
    public static double salinityFromConductivity_PSS78(double millisiemensPerCm, double celsius) {
        return salinity_PSS78(millisiemensPerCm / CONDUCTIVITY_35_15, ipts68(celsius), 0);
    }

    /** mS/cm, the inverse of {@link #salinityFromConductivity_PSS78}. */
    public static double conductivity_PSS78(double salinity, double celsius) {
        return Roots.inverse(c -> salinityFromConductivity_PSS78(c, celsius), salinity, 0, 200);
    }

    /** kg/m3, EOS-80 at one atmosphere; UNESCO 44 p. 17. Valid 0 to 42, -2 to 40 degC. */
    public static double density_EOS80(double salinity, double celsius68) {
        double s = salinity;
        return polynomial(RHO_W, celsius68)
                + polynomial(RHO_B, celsius68) * s
                + polynomial(RHO_C, celsius68) * s * Math.sqrt(Math.max(s, 0))
                + RHO_D * s * s;
    }

    /** kg/L at a temperature on ITS-90. */
    public static double kilogramsPerLitre(double salinity, double celsius) {
        return density_EOS80(salinity, ipts68(celsius)) / 1000;
    }

    /** Density of the sample at its temperature over that of pure water at the reference temperature; EOS-80. */
    public static double specificGravity_EOS80(double salinity, double celsius, double referenceCelsius) {
        return density_EOS80(salinity, ipts68(celsius)) / density_EOS80(0, ipts68(referenceCelsius));
    }

    /** The inverse of {@link #specificGravity_EOS80}; a straight line below 0 and above 60. */
    public static double salinityFromSpecificGravity_EOS80(double gravity, double celsius, double referenceCelsius) {
        return Roots.inverse(s -> specificGravity_EOS80(s, celsius, referenceCelsius), gravity, 0, 60);
    }

    /**
     * Refractive index against air at the sodium D line (589.26 nm), one atmosphere; Millard & Seaver 1990. Valid 0 to 40, 0 to 30 degC.
     * The T3L coefficient is -1.705881e-9, which gives their Table 2 to 0.5 ppm (a transcription with e-10 misses it by 14 ppm).
     */
    public static double refractiveIndex_MS90(double salinity, double celsius) {
        return refractiveIndex_MS90(salinity, celsius, SODIUM_D_MICROMETRES);
    }

    /** @param micrometres wavelength in air, 0.5 to 0.7 */
    public static double refractiveIndex_MS90(double salinity, double celsius, double micrometres) {
        double t = celsius;
        double l = micrometres;
        double l2 = l * l;
        double water = 1.3280657
                - 4.5536802e-3 * l2
                + 2.5471707e-3 / l2
                + 7.501966e-6 / (l2 * l2)
                + 2.802632e-6 / (l2 * l2 * l2)
                + t * (-5.2883907e-6 + t * (-3.0738272e-6 + t * (3.0124687e-8 - t * 2.0883178e-10)))
                + t * l * (1.0508621e-5 + t * (2.1282248e-7 - t * 1.705881e-9));
        double salt = 1.9029121e-4
                + 2.4239607e-6 / l2
                - 7.3960297e-7 * t
                + 8.9818478e-9 * t * t
                + 1.2078804e-10 * t * t * t
                - 3.589495e-7 * t * l;
        return water + salinity * salt;
    }

    /** The inverse of {@link #refractiveIndex_MS90(double, double)}, exact: the index is linear in salinity. */
    public static double salinityFromRefractiveIndex_MS90(double index, double celsius) {
        double fresh = refractiveIndex_MS90(0, celsius);
        return (index - fresh) / (refractiveIndex_MS90(1, celsius) - fresh);
    }

    /** Grams of salt (read as practical salinity) in a litre at a temperature. */
    public static double gramsPerLitre(double salinity, double celsius) {
        return salinity * kilogramsPerLitre(salinity, celsius);
    }

    /** The inverse of {@link #gramsPerLitre}. */
    public static double salinityFromGramsPerLitre(double gramsPerLitre, double celsius) {
        return Roots.inverse(s -> gramsPerLitre(s, celsius), gramsPerLitre, 0, 60);
    }

    private static double polynomial(double[] coefficients, double x) {
        double value = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            value = value * x + coefficients[i];
        }
        return value;
    }
}
