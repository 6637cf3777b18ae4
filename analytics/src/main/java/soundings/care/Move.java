package soundings.care;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.log.AsWritten;
import soundings.log.Reading;

/**
 * An animal that is to be moved, or was, with the two tanks side by side.
 *
 * @param on the day; for one planned without a date, the report's
 * @param hours over which to bring it across, the longest any difference asks for; empty where nothing differs too much
 * @param place where it stands
 */
public record Move(
        String animal,
        String from,
        String to,
        LocalDate on,
        boolean planned,
        List<Side> sides,
        List<Medicine> medicines,
        OptionalDouble hours,
        String place) {
    public Move {
        sides = List.copyOf(sides);
        medicines = List.copyOf(medicines);
    }

    /** What can be said of one test in the two tanks. */
    public enum Standing {
        ALIKE,
        /** Differs by more than an animal is moved over at once. */
        APART,
        /** Not tested in one of them, or in neither. */
        UNTESTED,
        /** The last tests lie too far from the day of the move or from each other. */
        STALE
    }

    /**
     * One test in the two tanks.
     *
     * @param difference how much more the tank it goes to has, canonical unit
     * @param most the largest difference to move over at once
     */
    public record Side(
            Parameter parameter,
            Optional<Reading> from,
            Optional<Reading> to,
            OptionalDouble difference,
            double most,
            OptionalDouble hours,
            Standing standing) {
        public List<AsWritten> cells() {
            return java.util.stream.Stream.of(from, to)
                    .flatMap(Optional::stream)
                    .map(Reading::at)
                    .toList();
        }
    }

    /** A medicine in one of the two waters; the level is empty where it cannot be reckoned. */
    public record Medicine(String tank, String name, OptionalDouble mgPerLitre) {}
}
