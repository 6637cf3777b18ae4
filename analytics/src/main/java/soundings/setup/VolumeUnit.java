package soundings.setup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Names;

/**
 * Units a tank or a container is measured in. Gallons are exact by definition: NIST SP 811 (2008) appendix B.8 (US), Weights and
 * Measures Act 1985 schedule 1 (imperial).
 */
@SuppressWarnings("ImmutableEnumChecker")
enum VolumeUnit {
    LITRE(1, "l", "litre", "litres", "liter", "liters", "ltr"),
    MILLILITRE(0.001, "ml", "millilitre", "millilitres", "milliliter", "milliliters"),
    CUBIC_METRE(1000, "m3"),
    US_GALLON(3.785411784, "us gal", "us gallon", "us gallons", "gal us", "gal (us)", "gal_us", "[gal_us]", "usg"),
    IMPERIAL_GALLON(
            4.54609,
            "imp gal",
            "imp. gal",
            "imperial gal",
            "imperial gallon",
            "imperial gallons",
            "uk gal",
            "uk gallon",
            "uk gallons",
            "gal (imp)",
            "gal (uk)",
            "[gal_br]");

    /** A gallon without its country. */
    private static final List<String> SOME_GALLON = List.of("gal", "gals", "gallon", "gallons");

    private final double litres;
    /** Each between bars. */
    private final String spellings;

    VolumeUnit(double litres, String... spellings) {
        this.litres = litres;
        this.spellings = "|" + String.join("|", spellings) + "|";
    }

    double litres(double amount) {
        return amount * litres;
    }

    static Optional<VolumeUnit> find(String written) {
        String folded = plain(written);
        return Arrays.stream(values())
                .filter(u -> u.spellings.contains("|" + folded + "|"))
                .findFirst();
    }

    /** Whether it may be either gallon. */
    static boolean someGallon(String written) {
        return SOME_GALLON.contains(plain(written));
    }

    private static String plain(String written) {
        return Names.fold(written).replace("u.s.", "us").replace("u.k.", "uk").replaceAll("(gal|l|ml)\\.$", "$1");
    }
}
