package soundings.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        List<Matter> matters = matters(history, estimates, reference);
        List<Judgement> judgements = new ArrayList<>();
        List<Recommendation> doses = new ArrayList<>();
        for (Matter matter : matters) {
            Dosing.Asked asked = Dosing.asked(matter);
            Judgement judgement = Judging.of(matter, asked.sum());
            if (matter.tank().findSeries(matter.parameter()).isPresent()) {
                judgements.add(judgement);
            }
            Dosing.of(matter, asked, judgement).ifPresent(doses::add);
        }
        List<Supply> supplies = Supplies.of(history, doses, reference);
        return new Advice(
                judgements,
                doses,
                Actions.of(history, matters, judgements, doses, supplies),
                supplies,
                DayPlans.of(history, supplies),
                Stream.concat(insights(matters).stream(), Events.of(history, estimates, reference).stream())
                        .toList());
    }

    /** The doses alone, for what was advised at an earlier day. */
    public static Advice dosesOf(History history, Estimates estimates, Reference reference) {
        List<Recommendation> doses = matters(history, estimates, reference).stream()
                .flatMap(m -> dose(m).stream())
                .toList();
        return new Advice(List.of(), doses);
    }

    private static Optional<Recommendation> dose(Matter matter) {
        Dosing.Asked asked = Dosing.asked(matter);
        return Dosing.of(matter, asked, Judging.of(matter, asked.sum()));
    }

    private static List<Matter> matters(History history, Estimates estimates, Reference reference) {
        return history.tanks().stream()
                .flatMap(t ->
                        parameters(t, reference).stream().map(p -> new Matter(history, t, p, estimates, reference)))
                .toList();
    }

    private static List<Insight> insights(List<Matter> matters) {
        Map<String, Matter> oneOfEach = new LinkedHashMap<>();
        matters.forEach(m -> oneOfEach.putIfAbsent(m.tank().tank(), m));
        return oneOfEach.values().stream().flatMap(m -> Insights.of(m).stream()).toList();
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
        return reference.parameters().stream()
                .filter(met::contains)
                .filter(Parameter::isOfTheWater)
                .toList();
    }
}
