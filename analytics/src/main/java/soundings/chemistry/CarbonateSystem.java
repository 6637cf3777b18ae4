package soundings.chemistry;

import java.util.function.DoubleUnaryOperator;

/**
 * Dissolved carbonate of one water, worked out from its total alkalinity and one more thing known. Borate, hydroxide, sulfate, fluoride,
 * phosphate and silicate count in the alkalinity (Dickson 1981); the last two as far as they are known.
 *
 * @param ph on the scale of the constants: total, unless they were given otherwise
 * @param dic dissolved inorganic carbon; this and the next three in mol/kg
 * @param pCo2 microatmospheres
 */
public record CarbonateSystem(double ph, double dic, double bicarbonate, double carbonate, double co2, double pCo2) {
    private static final double HIGHEST_PH = 13;
    private static final double LOWEST_PH = 1;

    /** @param alkalinity mol/kg */
    public static CarbonateSystem ofAlkalinityAndPh(
            double alkalinity, double ph, double celsius, CarbonateConstants k) {
        double h = Math.pow(10, -ph);
        double carbonateAlkalinity = alkalinity - otherAlkalinity(h, k);
        double bicarbonateShare = k.k1() * h / (k.k1() * h + 2 * k.k1() * k.k2());
        double bicarbonate = carbonateAlkalinity * bicarbonateShare;
        return of(ph, bicarbonate, celsius, k);
    }

    /** @param dic mol/kg */
    public static CarbonateSystem ofAlkalinityAndDic(
            double alkalinity, double dic, double celsius, CarbonateConstants k) {
        double ph = phOf(h -> dic * chargePerCarbon(h, k) + otherAlkalinity(h, k) - alkalinity);
        return of(ph, dic * bicarbonateShare(ph, k), celsius, k);
    }

    /** @param pCo2 microatmospheres */
    public static CarbonateSystem ofAlkalinityAndPco2(
            double alkalinity, double pCo2, double celsius, CarbonateConstants k) {
        double co2 = pCo2 * 1e-6 * CarbonateConstants.fugacityFactor_W74(celsius) * k.k0();
        double ph = phOf(h -> co2 * k.k1() / h * (1 + 2 * k.k2() / h) + otherAlkalinity(h, k) - alkalinity);
        return of(ph, co2 * k.k1() / Math.pow(10, -ph), celsius, k);
    }

    /** Borate, hydroxide, phosphate and silicate less free hydrogen, hydrogen sulfate and hydrogen fluoride, mol/kg. */
    private static double otherAlkalinity(double h, CarbonateConstants k) {
        double free = h / k.hPerFree();
        return k.boron() * k.kB() / (k.kB() + h)
                + k.kW() / h
                + k.nutrients().alkalinity(h)
                - free
                - k.sulfate() * free / (k.kS() + free)
                - k.fluoride() * h / (k.kF() + h);
    }

    private static double chargePerCarbon(double h, CarbonateConstants k) {
        double k12 = k.k1() * k.k2();
        return (k.k1() * h + 2 * k12) / (h * h + k.k1() * h + k12);
    }

    private static double bicarbonateShare(double ph, CarbonateConstants k) {
        double h = Math.pow(10, -ph);
        return k.k1() * h / (h * h + k.k1() * h + k.k1() * k.k2());
    }

    /** Alkalinity falls as hydrogen rises, so that there is one answer. */
    private static double phOf(DoubleUnaryOperator missAtHydrogen) {
        return Roots.zero(ph -> missAtHydrogen.applyAsDouble(Math.pow(10, -ph)), LOWEST_PH, HIGHEST_PH);
    }

    private static CarbonateSystem of(double ph, double bicarbonate, double celsius, CarbonateConstants k) {
        double h = Math.pow(10, -ph);
        double carbonate = bicarbonate * k.k2() / h;
        double co2 = bicarbonate * h / k.k1();
        double pCo2 = co2 / k.k0() / CarbonateConstants.fugacityFactor_W74(celsius) * 1e6;
        return new CarbonateSystem(ph, bicarbonate + carbonate + co2, bicarbonate, carbonate, co2, pCo2);
    }

    /** Saturation of aragonite, what corals build; 1 neither dissolves nor grows. Calcium in mol/kg. */
    public double aragoniteSaturation(double calcium, double salinity, double celsius) {
        return calcium * carbonate / CarbonateConstants.aragonite_M83(salinity, celsius);
    }

    /** Saturation of calcite, what coralline algae and molluscs build. Calcium in mol/kg. */
    public double calciteSaturation(double calcium, double salinity, double celsius) {
        return calcium * carbonate / CarbonateConstants.calcite_M83(salinity, celsius);
    }
}
