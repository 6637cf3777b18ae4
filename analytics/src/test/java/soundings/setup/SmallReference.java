package soundings.setup;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import soundings.chemistry.Alias;
import soundings.chemistry.Constant;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;

/** A few parameters and scales for tests that must not move when a table of facts is edited. */
public final class SmallReference {
    public static final Parameter ALKALINITY =
            new Parameter("alkalinity", "Alkalinity", "KH", "dKH", 1, 1, 25, Parameter.Kind.ION);
    public static final Parameter CALCIUM =
            new Parameter("calcium", "Calcium", "Ca", "mg/L", 0, 200, 800, Parameter.Kind.ION);
    public static final Parameter MAGNESIUM =
            new Parameter("magnesium", "Magnesium", "Mg", "mg/L", 0, 600, 2200, Parameter.Kind.ION);
    public static final Parameter IODINE =
            new Parameter("iodine", "Iodine", "I", "mg/L", 3, 0, 1, Parameter.Kind.TRACE);
    public static final Parameter NITRATE =
            new Parameter("nitrate", "Nitrate", "NO3", "mg/L", 1, 0, 200, Parameter.Kind.NUTRIENT);
    public static final Parameter PHOSPHATE =
            new Parameter("phosphate", "Phosphate", "PO4", "mg/L", 3, 0, 5, Parameter.Kind.NUTRIENT);
    public static final Parameter AMMONIA =
            new Parameter("ammonia", "Ammonia", "NH3", "mg/L", 2, 0, 10, Parameter.Kind.TOXIN);
    public static final Parameter SALINITY =
            new Parameter("salinity", "Salinity", "S", "psu", 1, 20, 45, Parameter.Kind.CONDITION);
    public static final Parameter TEMPERATURE =
            new Parameter("temperature", "Temperature", "T", "Cel", 1, 10, 36, Parameter.Kind.CONDITION);
    public static final Parameter PH = new Parameter("ph", "pH", "pH", "pH", 2, 6.5, 9.5, Parameter.Kind.CONDITION);

    private static final List<Parameter> PARAMETERS =
            List.of(ALKALINITY, CALCIUM, MAGNESIUM, IODINE, NITRATE, PHOSPHATE, AMMONIA, SALINITY, TEMPERATURE, PH);

    private SmallReference() {}

    public static Reference load() {
        return new Reference(
                PARAMETERS,
                List.of(
                        canonical(ALKALINITY),
                        linear(ALKALINITY, "meq/L", 2.80385),
                        linear(ALKALINITY, "mg/L CaCO3", 0.0560288),
                        canonical(CALCIUM),
                        canonical(MAGNESIUM),
                        canonical(IODINE),
                        linear(IODINE, "ug/L", 0.001),
                        canonical(NITRATE),
                        canonical(PHOSPHATE),
                        linear(PHOSPHATE, "mg/L P", 3.06612),
                        canonical(AMMONIA),
                        canonical(SALINITY),
                        canonical(TEMPERATURE),
                        scale(TEMPERATURE, "[degF]", f -> (f - 32) / 1.8, c -> c * 1.8 + 32),
                        canonical(PH)),
                List.of(
                        new Alias("kh", Alias.Kind.PARAMETER, "alkalinity", ""),
                        new Alias("alk", Alias.Kind.PARAMETER, "alkalinity", ""),
                        new Alias("ca", Alias.Kind.PARAMETER, "calcium", ""),
                        new Alias("ppm", Alias.Kind.UNIT, "mg/L", ""),
                        new Alias("\u00b0f", Alias.Kind.UNIT, "[degF]", "")),
                List.of(
                        new TargetRange(ALKALINITY, 7, 9, "practice"),
                        new TargetRange(CALCIUM, 400, 450, "practice"),
                        new TargetRange(MAGNESIUM, 1250, 1400, "practice"),
                        new TargetRange(IODINE, 0.04, 0.08, "practice"),
                        new TargetRange(NITRATE, 1, 15, "practice"),
                        new TargetRange(PHOSPHATE, 0.02, 0.1, "practice"),
                        new TargetRange(AMMONIA, 0, 0.05, "practice"),
                        new TargetRange(SALINITY, 33, 36, "practice"),
                        new TargetRange(TEMPERATURE, 23, 27, "practice")),
                List.of(
                        new Constant("max_rise_per_day_alkalinity", 1, 0, "dKH", "", "practice"),
                        new Constant("max_fall_per_day_share", 0.1, 0, "1", "", "practice")),
                List.of());
    }

    private static Scale canonical(Parameter parameter) {
        return linear(parameter, parameter.unit(), 1);
    }

    private static Scale linear(Parameter parameter, String id, double factor) {
        return scale(parameter, id, w -> w * factor, c -> c / factor);
    }

    private static Scale scale(Parameter parameter, String id, DoubleUnaryOperator to, DoubleUnaryOperator from) {
        return new Scale(parameter, id, id, "", to, from);
    }
}
