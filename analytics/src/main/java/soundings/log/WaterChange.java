package soundings.log;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A water change as written: a share of the tank (0 to 1), litres, or both; the history works out the missing one. */
public record WaterChange(String tank, LocalDate date, OptionalDouble fraction, OptionalDouble litres, AsWritten at)
        implements LogEntry {
    @Override
    public <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark) {
        return waterChange.apply(this);
    }
}
