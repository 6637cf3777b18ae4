package soundings.chemistry;

import java.util.List;
import java.util.Map;

/** Units of volume: the exact factors of NIST SP 811 (2008), appendix B.8, and what a recipe may be written in. */
public final class Volumes {
    /** Litres; 231 cubic inches. */
    public static final double US_GALLON = 3.785411784;

    /** Litres. */
    public static final double IMPERIAL_GALLON = 4.54609;

    /** mL; a hundred and twenty-eighth of the gallon. */
    private static final double US_FLUID_OUNCE = 1000 * US_GALLON / 128;

    private static final Map<String, Double> MILLILITRES = Map.ofEntries(
            Map.entry("ml", 1.0),
            Map.entry("cc", 1.0),
            Map.entry("millilitre", 1.0),
            Map.entry("milliliter", 1.0),
            Map.entry("millilitres", 1.0),
            Map.entry("milliliters", 1.0),
            Map.entry("cl", 10.0),
            Map.entry("dl", 100.0),
            Map.entry("l", 1000.0),
            Map.entry("litre", 1000.0),
            Map.entry("liter", 1000.0),
            Map.entry("litres", 1000.0),
            Map.entry("liters", 1000.0),
            Map.entry("us gal", 1000 * US_GALLON),
            Map.entry("us gallon", 1000 * US_GALLON),
            Map.entry("us gallons", 1000 * US_GALLON),
            Map.entry("gal", 1000 * US_GALLON),
            Map.entry("gallon", 1000 * US_GALLON),
            Map.entry("gallons", 1000 * US_GALLON),
            Map.entry("imp gal", 1000 * IMPERIAL_GALLON),
            Map.entry("imperial gallon", 1000 * IMPERIAL_GALLON),
            Map.entry("imperial gallons", 1000 * IMPERIAL_GALLON),
            Map.entry("us fl oz", US_FLUID_OUNCE),
            Map.entry("fl oz", US_FLUID_OUNCE));

    private Volumes() {}

    static boolean isVolume(String unit) {
        return MILLILITRES.containsKey(key(unit));
    }

    static double millilitres(String unit, List<String> assumptions) {
        String key = key(unit);
        Double one = MILLILITRES.get(key);
        if (one == null) {
            throw new Unreadable("'" + unit.strip() + "' is not a volume; mL, L, US gal and imp gal are");
        }
        if (key.startsWith("gal") || key.equals("fl oz")) {
            assumptions.add("'" + unit.strip() + "' taken as the US one");
        }
        return one;
    }

    private static String key(String unit) {
        return Names.fold(unit).replace(".", "");
    }
}
