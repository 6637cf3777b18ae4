package soundings.log;

import java.time.LocalDate;
import java.util.function.Function;

/** Anything else the keeper wrote; {@code kind} is an event alias's meaning ({@code carbon}, {@code light}, {@code loss} ...) or {@code note}. */
public record Remark(String tank, LocalDate date, String kind, String text, AsWritten at) implements LogEntry {
    @Override
    public <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark) {
        return remark.apply(this);
    }
}
