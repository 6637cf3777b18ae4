package soundings.log;

import java.time.LocalDate;
import java.util.function.Function;

/** A single dose by hand, besides any rate. */
public record OneOffDose(String tank, LocalDate date, String additive, double ml, AsWritten at) implements LogEntry {
    @Override
    public <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark) {
        return oneOffDose.apply(this);
    }
}
