package soundings.history;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.log.Remark;

/** Everything known of one tank. */
public record TankHistory(
        String tank,
        OptionalDouble litres,
        List<Series> series,
        List<DoseCourse> doses,
        List<Change> changes,
        List<Remark> remarks) {
    public TankHistory {
        series = List.copyOf(series);
        doses = List.copyOf(doses);
        changes = List.copyOf(changes);
        remarks = List.copyOf(remarks);
    }

    public Optional<Series> findSeries(Parameter parameter) {
        return series.stream().filter(s -> s.parameter().equals(parameter)).findFirst();
    }

    /** What a test is shown in, as its keeper writes it; empty where it was never tested. */
    public Optional<Scale> findScale(Parameter parameter) {
        return findSeries(parameter).map(Series::scale);
    }

    /** What a test is shown in; the parameter's own unit where it was never tested. */
    public Scale scale(Parameter parameter, Reference reference) {
        return findScale(parameter).orElseGet(() -> reference.canonicalScale(parameter));
    }
}
