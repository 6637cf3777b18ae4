package soundings.advice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.estimate.Estimates;
import soundings.history.History;
import soundings.history.Series;
import soundings.history.TankHistory;
import soundings.setup.Setup;

/** From estimates to what to do: verdicts, doses or typed refusals, pumps, and the order to do things in. */
public final class Advising {
    private Advising() {}

    public static Advice of(History history, Estimates estimates, Reference reference) {
        List<Judgement> judgements = new ArrayList<>();
        List<Recommendation> recommendations = new ArrayList<>();
        for (TankHistory tank : history.tanks()) {
            for (Parameter parameter : parameters(tank, reference)) {
                Matter matter = new Matter(history, tank, parameter, estimates, reference);
                Judgement judgement = Judging.of(matter);
                if (tank.findSeries(parameter).isPresent()) {
                    judgements.add(judgement);
                }
                Dosing.of(matter, judgement).ifPresent(recommendations::add);
            }
        }
        return new Advice(judgements, recommendations);
    }

    /** Tested or dosed, in the reference's order. */
    private static List<Parameter> parameters(TankHistory tank, Reference reference) {
        Set<Parameter> met = new LinkedHashSet<>();
        Stream.concat(
                        tank.series().stream().map(Series::parameter),
                        tank.doses().stream()
                                .flatMap(d -> d.additive().stream())
                                .map(Setup.Additive::parameter))
                .forEach(met::add);
        return reference.parameters().stream().filter(met::contains).toList();
    }
}
