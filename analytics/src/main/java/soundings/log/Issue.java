package soundings.log;

import java.util.Optional;
import soundings.sheet.Region;

/** Something that could not be read or used as it stands: where, what was seen, what was done. One record per kind. */
public interface Issue {
    /** The kind's name in results files, such as {@code unreadableAmount}. */
    default String kind() {
        String name = getClass().getSimpleName();
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    Severity severity();

    Optional<AsWritten> where();

    /** The cells of {@link #where}'s sheet that this issue accounts for besides that one cell; empty for none. */
    default Optional<Region> covers() {
        return Optional.empty();
    }

    /** One sentence for the keeper, without the place. */
    String message();

    /** How much it matters. */
    enum Severity {
        /** For information: nothing was lost. */
        NOTE,
        /** A cell was set aside or something was assumed. */
        WARNING,
        /** A part of the log could not be used at all. */
        SERIOUS
    }
}
