package soundings.chemistry;

/**
 * Equilibrium constants and conservative totals of one water, mol/kg of seawater, at one atmosphere. Published fits are named
 * {@code quantity_SOURCE} below; valid for S 19 to 43 and 2 to 35 degC (Lueker et al. 2000), outside they are extrapolated.
 *
 * @param k1 and k2 on the pH scale that {@code hPerFree} states, as kB, kW and kF; kS on the free scale
 * @param hPerFree the scale's hydrogen ions over the free ones: 1 + ST/KS on the total scale, 1 on the free scale
 * @param nutrients what phosphate and silicate hold of the alkalinity
 */
public record CarbonateConstants(
        double k0,
        double k1,
        double k2,
        double kB,
        double kW,
        double kS,
        double kF,
        double boron,
        double sulfate,
        double fluoride,
        double hPerFree,
        NutrientAcids nutrients) {

    /** Of water without phosphate and silicate. */
    public static CarbonateConstants at(double salinity, double celsius, Boron boron) {
        return at(salinity, celsius, boron, NutrientAcids.NONE);
    }

    /** On the total scale, as the 2007 guide to best practices recommends. */
    public static CarbonateConstants at(double salinity, double celsius, Boron boron, NutrientAcids nutrients) {
        double kS = kS_D90(salinity, celsius);
        double sulfate = sulfate_MR66(salinity);
        return new CarbonateConstants(
                k0_W74(salinity, celsius),
                k1_L00(salinity, celsius),
                k2_L00(salinity, celsius),
                kB_D90(salinity, celsius),
                kW_DSC07(salinity, celsius),
                kS,
                kF_PF87(salinity, celsius),
                boron.total(salinity),
                sulfate,
                fluoride_R65(salinity),
                1 + sulfate / kS,
                nutrients);
    }

    /** Solubility of CO2, mol/(kg atm); Weiss 1974. */
    public static double k0_W74(double salinity, double celsius) {
        double hundreds = kelvin(celsius) / 100;
        return Math.exp(-60.2409
                + 93.4517 / hundreds
                + 23.3585 * Math.log(hundreds)
                + salinity * (0.023517 - 0.023656 * hundreds + 0.0047036 * hundreds * hundreds));
    }

    /** First dissociation of carbonic acid, total scale; Lueker et al. 2000. */
    public static double k1_L00(double salinity, double celsius) {
        double t = kelvin(celsius);
        return Math.pow(
                10,
                -(3633.86 / t
                        - 61.2172
                        + 9.67770 * Math.log(t)
                        - 0.011555 * salinity
                        + 0.0001152 * salinity * salinity));
    }

    /** Second dissociation of carbonic acid, total scale; Lueker et al. 2000. */
    public static double k2_L00(double salinity, double celsius) {
        double t = kelvin(celsius);
        return Math.pow(
                10,
                -(471.78 / t + 25.9290 - 3.16967 * Math.log(t) - 0.01781 * salinity + 0.0001122 * salinity * salinity));
    }

    /** Boric acid, total scale; Dickson 1990. */
    public static double kB_D90(double salinity, double celsius) {
        double t = kelvin(celsius);
        double s = salinity;
        double root = Math.sqrt(s);
        double perT = -8966.90 - 2890.53 * root - 77.942 * s + 1.728 * s * root - 0.0996 * s * s;
        double perLog = -24.4344 - 25.085 * root - 0.2474 * s;
        return Math.exp(
                perT / t + 148.0248 + 137.1942 * root + 1.62142 * s + perLog * Math.log(t) + 0.053105 * root * t);
    }

    /** Water, total scale; Dickson, Sabine & Christian 2007 (Millero 1995). */
    public static double kW_DSC07(double salinity, double celsius) {
        double t = kelvin(celsius);
        double logT = Math.log(t);
        return Math.exp(148.9652
                - 13847.26 / t
                - 23.6521 * logT
                + (118.67 / t - 5.977 + 1.0495 * logT) * Math.sqrt(salinity)
                - 0.01615 * salinity);
    }

    /** Hydrogen sulfate, free scale; Dickson 1990. */
    public static double kS_D90(double salinity, double celsius) {
        double t = kelvin(celsius);
        double logT = Math.log(t);
        double i = 19.924 * salinity / (1000 - 1.005 * salinity);
        double root = Math.sqrt(i);
        return Math.exp(-4276.1 / t
                + 141.328
                - 23.093 * logT
                + (-13856 / t + 324.57 - 47.986 * logT) * root
                + (35474 / t - 771.54 + 114.723 * logT) * i
                - 2698 / t * i * root
                + 1776 / t * i * i
                + Math.log(1 - 0.001005 * salinity));
    }

    /** Hydrogen fluoride, total scale; Perez & Fraga 1987. */
    public static double kF_PF87(double salinity, double celsius) {
        return Math.exp(874 / kelvin(celsius) - 9.68 + 0.111 * Math.sqrt(salinity));
    }

    /** Hydrogen fluoride, free scale; Dickson & Riley 1979. Used for the step between the total and the seawater scale alone. */
    public static double kF_DR79(double salinity, double celsius) {
        double i = 19.924 * salinity / (1000 - 1.005 * salinity);
        return Math.exp(1590.2 / kelvin(celsius) - 12.641 + 1.525 * Math.sqrt(i)) * (1 - 0.001005 * salinity);
    }

    /** Stoichiometric solubility of aragonite, (mol/kg)2; Mucci 1983. */
    public static double aragonite_M83(double salinity, double celsius) {
        double t = kelvin(celsius);
        double root = Math.sqrt(salinity);
        return Math.pow(
                10,
                -171.945
                        - 0.077993 * t
                        + 2903.293 / t
                        + 71.595 * Math.log10(t)
                        + (-0.068393 + 0.0017276 * t + 88.135 / t) * root
                        - 0.10018 * salinity
                        + 0.0059415 * salinity * root);
    }

    /** Stoichiometric solubility of calcite, (mol/kg)2; Mucci 1983. */
    public static double calcite_M83(double salinity, double celsius) {
        double t = kelvin(celsius);
        double root = Math.sqrt(salinity);
        return Math.pow(
                10,
                -171.9065
                        - 0.077993 * t
                        + 2839.319 / t
                        + 71.595 * Math.log10(t)
                        + (-0.77712 + 0.0028426 * t + 178.34 / t) * root
                        - 0.07711 * salinity
                        + 0.0041249 * salinity * root);
    }

    /** mol/kg; Morris & Riley 1966. */
    public static double sulfate_MR66(double salinity) {
        return 0.14 / 96.062 * salinity / 1.80655;
    }

    /** mol/kg; Riley 1965. */
    public static double fluoride_R65(double salinity) {
        return 0.000067 / 18.998 * salinity / 1.80655;
    }

    /** mol/kg in natural seawater; Riley & Tongudai 1967. */
    public static double calcium_RT67(double salinity) {
        return 0.02128 / 40.087 * salinity / 1.80655;
    }

    /** fCO2 over pCO2 at one atmosphere of moist air; Weiss 1974 virial equation. */
    public static double fugacityFactor_W74(double celsius) {
        double t = kelvin(celsius);
        double b = -1636.75 + 12.0408 * t - 0.0327957 * t * t + 3.16528e-5 * t * t * t;
        return Math.exp((b + 2 * (57.7 - 0.118 * t)) / (82.05746 * t));
    }

    private static double kelvin(double celsius) {
        return celsius + 273.15;
    }
}
