package soundings.setup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A range somebody wrote into a report, every part as written; parts may be empty.
 *
 * @param by who signed it
 * @param place the report and the cell
 */
public record WrittenRange(
        String tank,
        String test,
        String low,
        String high,
        String unit,
        String why,
        String by,
        Optional<LocalDate> on,
        String place) {}
