package soundings.layout;

import java.util.Locale;
import java.util.OptionalDouble;
import soundings.wording.VolumeUnit;

/** Volumes of doses and water changes in litres, as far as the keeper's preferences settle gallons and buckets. */
final class VolumeUnits {
    private VolumeUnits() {}

    static OptionalDouble litres(VolumeUnit unit, Context context) {
        if (unit == VolumeUnit.BUCKET) {
            return context.preference("bucket litres").map(VolumeUnits::number).orElseGet(() -> told(context));
        }
        return gallon(unit, context).litres();
    }

    /** What the log itself tells of the bucket. */
    private static OptionalDouble told(Context context) {
        return context.words()
                .bucket()
                .map(b -> gallon(b.unit(), context).litres().stream()
                        .map(l -> l * b.number())
                        .findFirst())
                .orElse(OptionalDouble.empty());
    }

    /** A gallon is the US one unless the preferences speak of an imperial or UK one. */
    private static VolumeUnit gallon(VolumeUnit unit, Context context) {
        String told = context.preference("gallon")
                .or(() -> context.preference("volume unit"))
                .orElse("")
                .toLowerCase(Locale.ROOT);
        boolean imperial = told.contains("imp") || told.contains("uk");
        return unit != VolumeUnit.GALLON ? unit : imperial ? VolumeUnit.IMPERIAL_GALLON : VolumeUnit.US_GALLON;
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text.replace(',', '.').replaceAll("[^0-9.]", "")));
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
