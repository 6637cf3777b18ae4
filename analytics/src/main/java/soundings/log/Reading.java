package soundings.log;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.quantity.Amount;

/**
 * One test result.
 *
 * @param amount in the parameter's canonical unit
 * @param scale the scale it was written in
 * @param method kit or laboratory as named in the log, empty where none is
 * @param approximate written with {@code ~} or {@code ?}
 * @param refused why layout already knows it must not be used (struck out, hidden), empty otherwise
 */
public record Reading(
        String tank,
        LocalDate date,
        Optional<LocalTime> time,
        Parameter parameter,
        Amount amount,
        Scale scale,
        Set<Inferred> inferred,
        String method,
        boolean approximate,
        String refused,
        AsWritten at)
        implements LogEntry {

    public Reading {
        inferred = Set.copyOf(inferred);
    }

    /** The same, not to be used. */
    public Reading refused(String why) {
        return new Reading(tank, date, time, parameter, amount, scale, inferred, method, approximate, why, at);
    }

    @Override
    public <R> R match(
            Function<Reading, R> reading,
            Function<DoseRate, R> doseRate,
            Function<OneOffDose, R> oneOffDose,
            Function<WaterChange, R> waterChange,
            Function<Remark, R> remark) {
        return reading.apply(this);
    }
}
