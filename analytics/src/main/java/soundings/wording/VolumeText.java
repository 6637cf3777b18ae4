package soundings.wording;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The volume of a tank, told beside its name: {@code Lagoon 300 L}, {@code display, 80 US gal}. */
public record VolumeText(double number, VolumeUnit unit, int from, int to) {
    private static final Pattern VOLUME = Pattern.compile(
            "(?<![\\p{L}0-9.,])([0-9]{1,5}(?:[.,][0-9]{1,2})?) ?-?((?:us|uk|imp\\.?) )?(\\p{L}+)(?![\\p{L}0-9])");

    /** The one volume a text names; empty where it names none, several, or one in some time. */
    public static Optional<VolumeText> in(String text) {
        String plain = Plain.of(text);
        List<VolumeText> all = VOLUME.matcher(plain)
                .results()
                .flatMap(m -> of(m, plain).stream())
                .toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    private static Optional<VolumeText> of(MatchResult match, String plain) {
        String country = match.group(2) == null ? "" : match.group(2);
        OptionalDouble number = Numerals.with(match.group(1), DecimalMark.POINT);
        Optional<VolumeUnit> unit = VolumeUnit.of(country + match.group(3)).filter(VolumeText::large);
        String behind = plain.substring(match.end()).stripLeading();
        boolean rated = behind.startsWith("/") || behind.startsWith("per ") || behind.startsWith("a ");
        return unit.filter(u -> number.isPresent() && !rated)
                .map(u -> new VolumeText(number.orElse(0), u, match.start(), match.end()));
    }

    private static boolean large(VolumeUnit unit) {
        return unit == VolumeUnit.LITRE
                || unit == VolumeUnit.GALLON
                || unit == VolumeUnit.US_GALLON
                || unit == VolumeUnit.IMPERIAL_GALLON;
    }

    /** The text without the volume it names. */
    public static String without(String text) {
        return in(text).map(v -> text.substring(0, v.from()) + " " + text.substring(v.to()))
                .orElse(text);
    }
}
