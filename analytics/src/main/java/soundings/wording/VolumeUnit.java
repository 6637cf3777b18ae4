package soundings.wording;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Volumes;

/** What a volume, or a share of a tank, is counted in. */
public enum VolumeUnit {
    MILLILITRE(0.001),
    LITRE(1),
    CUBIC_METRE(1000),
    US_GALLON(Volumes.US_GALLON),
    IMPERIAL_GALLON(Volumes.IMPERIAL_GALLON),
    /** {@code gal} alone: the keeper's preference says which. */
    GALLON(Double.NaN),
    /** Needs the keeper's bucket size. */
    BUCKET(Double.NaN),
    /** A share of the tank's volume in hundredths. */
    PERCENT(Double.NaN),
    /** No unit stands there. */
    UNWRITTEN(Double.NaN);

    private static final Map<String, VolumeUnit> WORDS = Map.ofEntries(
            Map.entry("ml", MILLILITRE),
            Map.entry("mls", MILLILITRE),
            Map.entry("cc", MILLILITRE),
            Map.entry("milliliter", MILLILITRE),
            Map.entry("milliliters", MILLILITRE),
            Map.entry("millilitre", MILLILITRE),
            Map.entry("millilitres", MILLILITRE),
            Map.entry("l", LITRE),
            Map.entry("lt", LITRE),
            Map.entry("ltr", LITRE),
            Map.entry("ltrs", LITRE),
            Map.entry("liter", LITRE),
            Map.entry("liters", LITRE),
            Map.entry("litre", LITRE),
            Map.entry("litres", LITRE),
            Map.entry("litern", LITRE),
            Map.entry("litro", LITRE),
            Map.entry("litros", LITRE),
            Map.entry("litri", LITRE),
            Map.entry("m3", CUBIC_METRE),
            Map.entry("m\u00b3", CUBIC_METRE),
            Map.entry("usg", US_GALLON),
            Map.entry("gal", GALLON),
            Map.entry("gals", GALLON),
            Map.entry("gallon", GALLON),
            Map.entry("gallons", GALLON),
            Map.entry("gallonen", GALLON),
            Map.entry("bucket", BUCKET),
            Map.entry("buckets", BUCKET),
            Map.entry("eimer", BUCKET),
            Map.entry("emmer", BUCKET),
            Map.entry("emmers", BUCKET),
            Map.entry("seau", BUCKET),
            Map.entry("seaux", BUCKET),
            Map.entry("cubo", BUCKET),
            Map.entry("cubos", BUCKET),
            Map.entry("%", PERCENT),
            Map.entry("percent", PERCENT),
            Map.entry("pct", PERCENT),
            Map.entry("procent", PERCENT),
            Map.entry("prozent", PERCENT));

    private final double litres;

    VolumeUnit(double litres) {
        this.litres = litres;
    }

    /** Litres in one; empty where that is not known from the word alone. */
    public OptionalDouble litres() {
        return Double.isNaN(litres) ? OptionalDouble.empty() : OptionalDouble.of(litres);
    }

    /** The unit a text stands for, spaces, dots and brackets left aside: {@code US gal}, {@code gal (imp.)}, {@code %}. */
    public static Optional<VolumeUnit> of(String written) {
        String unit = Vocabulary.squeezed(Plain.of(written));
        Optional<VolumeUnit> alone = Optional.ofNullable(WORDS.get(unit));
        return alone.or(() -> gallon(unit, US_GALLON, "us", "usa", "american"))
                .or(() -> gallon(unit, IMPERIAL_GALLON, "uk", "br", "imp", "imperial"));
    }

    private static Optional<VolumeUnit> gallon(String unit, VolumeUnit which, String... countries) {
        for (String country : countries) {
            boolean before = unit.startsWith(country) && WORDS.get(unit.substring(country.length())) == GALLON;
            boolean behind =
                    unit.endsWith(country) && WORDS.get(unit.substring(0, unit.length() - country.length())) == GALLON;
            if (before || behind) {
                return Optional.of(which);
            }
        }
        return Optional.empty();
    }
}
