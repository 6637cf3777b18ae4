package soundings.chemistry;

import java.util.List;
import java.util.Map;

/** Volumes of a recipe in mL; exact factors of NIST SP 811. */
final class Volumes {
    private static final double US_GALLON = 3785.411784;
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
            Map.entry("us gal", US_GALLON),
            Map.entry("us gallon", US_GALLON),
            Map.entry("us gallons", US_GALLON),
            Map.entry("gal", US_GALLON),
            Map.entry("gallon", US_GALLON),
            Map.entry("gallons", US_GALLON),
            Map.entry("imp gal", 4546.09),
            Map.entry("imperial gallon", 4546.09),
            Map.entry("imperial gallons", 4546.09),
            Map.entry("us fl oz", 29.5735295625),
            Map.entry("fl oz", 29.5735295625));

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
