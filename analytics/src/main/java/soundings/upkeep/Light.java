package soundings.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The light at one place of a tank.
 *
 * @param place the keeper's word for it; empty where none is written
 * @param measured PAR, umol/m2/s, oldest first
 * @param low the PAR the keeper wants at least there, from the setup workbook; empty where not stated; {@code high} likewise
 * @param hours of light a day, from the setup workbook
 */
public record Light(
        String tank,
        String place,
        List<Measured> measured,
        OptionalDouble low,
        OptionalDouble high,
        OptionalDouble hours,
        Optional<String> cell) {
    public Light {
        measured = List.copyOf(measured);
    }

    /** One reading; {@code at} a place such as {@code Log!C14}. */
    public record Measured(LocalDate on, double par, String at) {}

    public Optional<Measured> last() {
        return measured.isEmpty() ? Optional.empty() : Optional.of(measured.get(measured.size() - 1));
    }

    /** The reading of an earlier day before the last one. */
    public Optional<Measured> before() {
        return last().flatMap(l ->
                measured.stream().filter(m -> m.on().isBefore(l.on())).reduce((a, b) -> b));
    }

    /** Daily light integral, mol/m2 a day, of the last reading, the lamps at one strength all day. */
    public OptionalDouble perDay() {
        return last().map(m -> perDay(m.par())).orElse(OptionalDouble.empty());
    }

    public OptionalDouble perDayLow() {
        return low.isPresent() ? perDay(low.getAsDouble()) : low;
    }

    public OptionalDouble perDayHigh() {
        return high.isPresent() ? perDay(high.getAsDouble()) : high;
    }

    private OptionalDouble perDay(double par) {
        return hours.isPresent()
                ? OptionalDouble.of(soundings.chemistry.Light.perDay(par, hours.getAsDouble()))
                : OptionalDouble.empty();
    }

    public Standing standing() {
        if (measured.isEmpty()) {
            return Standing.NOT_MEASURED;
        }
        double par = measured.get(measured.size() - 1).par();
        if (low.isPresent() && par < low.getAsDouble()) {
            return Standing.BELOW;
        }
        if (high.isPresent() && par > high.getAsDouble()) {
            return Standing.ABOVE;
        }
        return low.isPresent() || high.isPresent() ? Standing.WITHIN : Standing.NO_RANGE;
    }

    /** The last reading against the range stated in numbers. */
    public enum Standing {
        BELOW("below its range"),
        ABOVE("above its range"),
        WITHIN("within its range"),
        NO_RANGE("no range is stated"),
        NOT_MEASURED("not measured");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    public List<String> restsOn() {
        return last().map(m -> List.of(m.at())).orElse(List.of());
    }
}
