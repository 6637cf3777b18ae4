package soundings.advice;

import java.util.List;
import java.util.Optional;
import soundings.quantity.Interval;

/**
 * Something that follows from several tests of one tank together.
 *
 * @param value with its 90 % interval where one is known
 * @param unit empty for a bare number
 * @param says the finding in a sentence
 */
public record Insight(
        String tank,
        Kind kind,
        String label,
        Optional<Interval> value,
        String unit,
        String says,
        List<String> restsOn) {
    public Insight {
        restsOn = List.copyOf(restsOn);
    }

    /** What it is about. */
    public enum Kind {
        /** Calcium used for each dKH used: growth, or something else. */
        CALCIFICATION,
        /** Whether aragonite, what corals build, dissolves or forms. */
        ARAGONITE,
        /** Carbon dioxide, from alkalinity and pH. */
        CARBON_DIOXIDE,
        /** The poisonous share of ammonia. */
        FREE_AMMONIA,
        /** An ion brought to S = 35, so that dilution is not mistaken for use. */
        AT_STANDARD_SALINITY,
        /** What doses leave behind: sodium, chloride, sulfate. */
        SALT_OF_DOSES,
        /** The change of a use since something the keeper did. */
        EVENT
    }
}
