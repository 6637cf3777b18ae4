package soundings.log;

import java.time.LocalDate;
import java.util.function.Function;

/** From {@code date} on, this additive goes in at this rate, until the next rate of the same additive; zero stops it. */
public record DoseRate(String tank, LocalDate date, String additive, double mlPerDay, AsWritten at)
        implements LogEntry {
    @Override
    public <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark) {
        return doseRate.apply(this);
    }
}
