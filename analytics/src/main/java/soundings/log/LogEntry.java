package soundings.log;

import java.time.LocalDate;
import java.util.function.Function;

/** One thing the keeper wrote down. */
public sealed interface LogEntry permits Reading, DoseRate, OneOffDose, WaterChange, Remark {
    String tank();

    LocalDate date();

    AsWritten at();

    <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark);
}
