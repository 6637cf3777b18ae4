package soundings.log;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How one column (or row, or named test of a diary) of a block was read.
 *
 * @param header as written; {@code headerCell} its address, empty for a diary's names
 * @param meaning a parameter id or a role: date, tank, dose, waterChange, note, ignored
 * @param unit the scale's label or, for doses, the rate's unit; empty where none applies
 * @param sure 0 to 1
 * @param samples up to three cells as shown
 */
public record ColumnReading(
        String header,
        String headerCell,
        String meaning,
        String unit,
        String tank,
        Set<Inferred> inferred,
        double sure,
        List<String> samples,
        int cells,
        Optional<LocalDate> first,
        Optional<LocalDate> last) {
    public ColumnReading {
        inferred = Set.copyOf(inferred);
        samples = List.copyOf(samples);
    }
}
