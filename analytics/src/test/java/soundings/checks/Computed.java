package soundings.checks;

import static java.lang.Math.log;
import static java.lang.Math.log10;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import soundings.chemistry.Ammonia;
import soundings.chemistry.Boron;
import soundings.chemistry.Calcification;
import soundings.chemistry.CarbonateConstants;
import soundings.chemistry.CarbonateSystem;
import soundings.chemistry.Dilution;
import soundings.chemistry.Formula;
import soundings.chemistry.Light;
import soundings.chemistry.NaturalSeawater;
import soundings.chemistry.NutrientAcids;
import soundings.chemistry.Parameter;
import soundings.chemistry.PhScale;
import soundings.chemistry.RecipeReading;
import soundings.chemistry.Recipes;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.Seawater;
import soundings.chemistry.StockSolution;
import soundings.reference.ReferenceTables;

/** What the program computes under each function name of the check files. */
final class Computed {
    static final Reference REFERENCE = ReferenceTables.load();
    static final Map<String, ToDoubleFunction<Check>> FUNCTIONS = new TreeMap<>();

    private Computed() {}

    static {
        seawater();
        carbonate();
        ammonia();
        units();
        stoichiometry();
        light();
    }

    private static void put(String name, ToDoubleFunction<Check> function) {
        FUNCTIONS.put(name, function);
    }

    private static void seawater() {
        put("salinityFromRatio", c -> Seawater.salinity_PSS78(c.number(0), c.number(1), c.number(2)));
        put(
                "salinityFromConductivityAtPressure",
                c -> Seawater.salinity_PSS78(c.number(0) / 42.914, Seawater.ipts68(c.number(1)), c.number(2)));
        put("salinityFromConductivity", c -> Seawater.salinityFromConductivity_PSS78(c.number(0), c.number(1)));
        put("conductivity", c -> Seawater.conductivity_PSS78(c.number(0), c.number(1)));
        put("density68", c -> Seawater.density_EOS80(c.number(0), c.number(1)));
        put("density", c -> 1000 * Seawater.kilogramsPerLitre(c.number(0), c.number(1)));
        put("specificGravity", c -> Seawater.specificGravity_EOS80(c.number(0), c.number(1), c.number(2)));
        put(
                "salinityFromSpecificGravity",
                c -> Seawater.salinityFromSpecificGravity_EOS80(c.number(0), c.number(1), c.number(2)));
        put("refractiveIndex", c -> Seawater.refractiveIndex_MS90(c.number(0), c.number(1)));
        put("salinityFromRefractiveIndex", c -> Seawater.salinityFromRefractiveIndex_MS90(c.number(0), c.number(1)));
    }

    private static void carbonate() {
        put("lnK0", c -> log(CarbonateConstants.k0_W74(c.number(0), c.number(1))));
        put("K0times100", c -> 100 * CarbonateConstants.k0_W74(c.number(0), c.number(1)));
        put("log10K1", c -> log10(CarbonateConstants.k1_L00(c.number(0), c.number(1))));
        put("log10K2", c -> log10(CarbonateConstants.k2_L00(c.number(0), c.number(1))));
        put("lnKB", c -> log(CarbonateConstants.kB_D90(c.number(0), c.number(1))));
        put("lnKW", c -> log(CarbonateConstants.kW_DSC07(c.number(0), c.number(1))));
        put("lnKS", c -> log(CarbonateConstants.kS_D90(c.number(0), c.number(1))));
        put("lnKF", c -> log(CarbonateConstants.kF_PF87(c.number(0), c.number(1))));
        put("log10Aragonite", c -> log10(CarbonateConstants.aragonite_M83(c.number(0), c.number(1))));
        put("log10Calcite", c -> log10(CarbonateConstants.calcite_M83(c.number(0), c.number(1))));
        put("boronU74", c -> 1e6 * Boron.U74.total(c.number(0)));
        put("boronLKB10", c -> 1e6 * Boron.LKB10.total(c.number(0)));
        put("sulfate", c -> 1e6 * CarbonateConstants.sulfate_MR66(c.number(0)));
        put("fluoride", c -> 1e6 * CarbonateConstants.fluoride_R65(c.number(0)));
        put("calcium", c -> 1e6 * CarbonateConstants.calcium_RT67(c.number(0)));
        put("fugacityFactor", c -> CarbonateConstants.fugacityFactor_W74(c.number(0)));
        put("totalPerFree", c -> constants(c, 0, 1, Boron.U74).hPerFree());
        put("freeAboveTotal", c -> PhScale.FREE.aboveTotal(c.number(0), c.number(1)));
        put("seawaterBelowTotal", c -> -PhScale.SEAWATER.aboveTotal(c.number(0), c.number(1)));
        put("nbsAboveTotal", c -> PhScale.NBS.aboveTotal(c.number(0), c.number(1)));
        put("lnK1P", c -> log(NutrientAcids.k1P_DSC07(c.number(0), c.number(1))));
        put("lnK2P", c -> log(NutrientAcids.k2P_DSC07(c.number(0), c.number(1))));
        put("lnK3P", c -> log(NutrientAcids.k3P_DSC07(c.number(0), c.number(1))));
        put("lnKSi", c -> log(NutrientAcids.kSi_DSC07(c.number(0), c.number(1))));
        put("titrationPh", c -> titrationPh(c.number(0), 0));
        put("titrationPhWithPhosphate", c -> titrationPh(c.number(0), 10e-6));
        for (String second : new String[] {"pH", "DIC", "pCO2"}) {
            String given = " of alkalinity and " + second;
            put("ph" + given, c -> system(c, second).ph());
            put("dic" + given, c -> 1e6 * system(c, second).dic());
            put("pCo2" + given, c -> system(c, second).pCo2());
            put("bicarbonate" + given, c -> 1e6 * system(c, second).bicarbonate());
            put("carbonate" + given, c -> 1e6 * system(c, second).carbonate());
            put("co2" + given, c -> 1e6 * system(c, second).co2());
            put(
                    "aragonite" + given,
                    c -> system(c, second)
                            .aragoniteSaturation(
                                    CarbonateConstants.calcium_RT67(c.number(2)), c.number(2), c.number(3)));
            put(
                    "calcite" + given,
                    c -> system(c, second)
                            .calciteSaturation(CarbonateConstants.calcium_RT67(c.number(2)), c.number(2), c.number(3)));
        }
    }

    private static CarbonateConstants constants(Check c, int salinity, int celsius, Boron boron) {
        return CarbonateConstants.at(c.number(salinity), c.number(celsius), boron);
    }

    private static CarbonateSystem system(Check c, String second) {
        CarbonateConstants k = constants(c, 2, 3, Boron.valueOf(c.text(4)));
        double alkalinity = c.number(0) * 1e-6;
        double given = c.number(1);
        double celsius = c.number(3);
        return switch (second) {
            case "pH" -> CarbonateSystem.ofAlkalinityAndPh(alkalinity, given, celsius, k);
            case "DIC" -> CarbonateSystem.ofAlkalinityAndDic(alkalinity, given * 1e-6, celsius, k);
            default -> CarbonateSystem.ofAlkalinityAndPco2(alkalinity, given, celsius, k);
        };
    }

    /** Dickson 1981: 200 g of sample, constants on the free scale, every total thinned by the acid. */
    private static double titrationPh(double grams, double phosphate) {
        double thin = 0.2 / (0.2 + grams / 1000);
        CarbonateConstants k = new CarbonateConstants(
                1,
                1e-6,
                8.2e-16 / 1e-6,
                1.78e-9,
                4.32e-14,
                1 / 12.3,
                1 / 408.0,
                420e-6 * thin,
                28240e-6 * thin,
                70e-6 * thin,
                1,
                new NutrientAcids(phosphate * thin, 0, 1 / 56.8, 8e-7, 1.32e-15 / 8e-7, 1));
        double alkalinity = (0.2 * 2450e-6 - 0.3 * grams / 1000) / (0.2 + grams / 1000);
        return CarbonateSystem.ofAlkalinityAndDic(alkalinity, 2200e-6 * thin, 25, k)
                .ph();
    }

    private static void ammonia() {
        put("shareTotal_CW95", c -> Ammonia.share(c.number(0), Ammonia.pKTotal_CW95(c.number(1), c.number(2))));
        put("shareFree_CW95", c -> Ammonia.share(c.number(0), Ammonia.pKFree_CW95(c.number(1), c.number(2))));
        put("share_B07", c -> Ammonia.share(c.number(0), Ammonia.pK_B07(c.number(1), c.number(2))));
        put("pKTotal_CW95", c -> Ammonia.pKTotal_CW95(c.number(0), c.number(1)));
        put("pKFree_CW95", c -> Ammonia.pKFree_CW95(c.number(0), c.number(1)));
        put("pK_B07", c -> Ammonia.pK_B07(c.number(0), c.number(1)));
    }

    private static void units() {
        put("canonical", c -> scale(c, 1).canonical(c.number(2)));
        put("written", c -> scale(c, 1).written(c.number(2)));
        put("between", c -> scale(c, 2).written(scale(c, 1).canonical(c.number(3))));
        put("constant", c -> REFERENCE.findConstant(c.text(0)).orElseThrow().value());
    }

    private static Scale scale(Check c, int unit) {
        return REFERENCE.findScale(REFERENCE.parameter(c.text(0)), c.text(unit)).orElseThrow();
    }

    private static void stoichiometry() {
        put(
                "molarMass",
                c -> Formula.of(c.text(0)).molarMass(REFERENCE.substances().elements()));
        put(
                "massFraction",
                c -> Formula.of(c.text(0))
                        .massFraction(c.text(1), REFERENCE.substances().elements()));
        put(
                "milliequivalentsPerGram",
                c -> inMeq(solution(c.text(0) + " 1 g in 1 L").rise(alkalinity(), 1000, 1)));
        put("riseIn100LitresOf", c -> solution(c.text(0) + " in 1 L").rise(parameter(c, 1), 1000, 100));
        put("strength mg/mL", c -> solution(c.text(0)).rise(parameter(c, 1), 1, 1));
        put(
                "millilitresToRaise",
                c -> solution(c.text(0))
                        .millilitresToRaise(parameter(c, 1), c.number(2), c.number(3))
                        .orElseThrow());
        put("calciumPerDkh", c -> Calcification.calciumPerDkh());
        put("calciumPerMeq", c -> Calcification.calciumPerDkh() / inMeq(1));
        put("dkhPer10Calcium", c -> 10 / Calcification.calciumPerDkh());
        put("calciumPerDkhWithMagnesium", c -> Calcification.calciumPerDkh(c.number(0)));
        put("magnesiumPerDkh", c -> Calcification.magnesiumPerDkh(c.number(0)));
        put("strontiumPerDkh", c -> Calcification.strontiumPerDkh(c.number(0)));
        put(
                "naturalLevel",
                c -> NaturalSeawater.level(parameter(c, 0), c.number(1), REFERENCE)
                        .orElseThrow());
    }

    private static double inMeq(double dkh) {
        return REFERENCE.findScale(alkalinity(), "meq/L").orElseThrow().written(dkh);
    }

    private static Parameter alkalinity() {
        return REFERENCE.parameter("alkalinity");
    }

    private static Parameter parameter(Check c, int input) {
        return REFERENCE.parameter(c.text(input));
    }

    private static StockSolution solution(String recipe) {
        return Recipes.read(recipe, REFERENCE).match(RecipeReading.Understood::solution, n -> {
            throw new AssertionError(n.why());
        });
    }

    private static void light() {
        put("lightPerDay", c -> Light.perDay(c.number(0), c.number(1)));
        put("lightPerDayHalfSine", c -> Light.perDayHalfSine(c.number(0), c.number(1)));
        put("lightPerDayRamped", c -> Light.perDayRamped(c.number(0), c.number(1), c.number(2), c.number(3)));
        put("afterChange", c -> Dilution.afterChange(c.number(0), c.number(1), c.number(2)));
        put("afterChanges", c -> Dilution.afterChanges(c.number(0), c.number(1), c.number(2), (int) c.number(3)));
        put("changesToLeave", c -> Dilution.changesToLeave(c.number(0), c.number(1)));
        put("leftAfterStream", c -> Dilution.leftAfterStream(c.number(0), c.number(1)));
        put("steadyBeforeChange", c -> Dilution.steadyBeforeChange(c.number(0), c.number(1)));
        put("giveAgain", c -> Dilution.giveAgain(c.number(0), c.number(1), c.number(2)));
    }
}
