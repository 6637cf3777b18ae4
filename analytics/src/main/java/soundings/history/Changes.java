package soundings.history;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import soundings.log.AsWritten;
import soundings.log.Issue;
import soundings.log.WaterChange;

/** Water changes with share and litres both, as far as the tank's volume is known; one written twice counts once. */
final class Changes {
    private Changes() {}

    static List<Change> of(List<WaterChange> written, OptionalDouble tankLitres, List<Issue> issues) {
        List<Change> changes = new ArrayList<>();
        Map<List<Object>, AsWritten> seen = new HashMap<>();
        for (WaterChange change : written) {
            AsWritten first = seen.putIfAbsent(List.of(change.date(), change.fraction(), change.litres()), change.at());
            if (first != null) {
                issues.add(new HistoryIssues.WrittenTwice(change.at(), "water change", first.place()));
            } else {
                changes.add(completed(change, tankLitres, issues));
            }
        }
        return changes;
    }

    private static Change completed(WaterChange change, OptionalDouble tankLitres, List<Issue> issues) {
        OptionalDouble fraction = change.fraction();
        OptionalDouble litres = change.litres();
        if (tankLitres.isPresent() && fraction.isEmpty() && litres.isPresent()) {
            fraction = OptionalDouble.of(litres.getAsDouble() / tankLitres.getAsDouble());
        }
        if (tankLitres.isPresent() && litres.isEmpty() && fraction.isPresent()) {
            litres = OptionalDouble.of(fraction.getAsDouble() * tankLitres.getAsDouble());
        }
        if (fraction.isPresent() && !(fraction.getAsDouble() >= 0 && fraction.getAsDouble() <= 1)) {
            issues.add(new HistoryIssues.MoreThanTheTank(change.at()));
            fraction = OptionalDouble.empty();
        }
        return new Change(change.date(), fraction, litres, change.at());
    }
}
