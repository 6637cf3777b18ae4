package soundings.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.estimate.Estimates;
import soundings.estimate.EventEffects;
import soundings.estimate.EventEffects.EventEffect;
import soundings.history.History;
import soundings.history.TankHistory;
import soundings.log.Remark;

/** What new carbon, other lights, a new bottle or another kit did to the use, as far as the tests tell. */
final class Events {
    private static final Map<String, String> TOLD = Map.of(
            "carbon", "new carbon",
            "phosphateRemover", "new phosphate remover",
            "light", "the change of light",
            "bottle", "the new bottle",
            "kit", "the new kit");
    /** Long enough ago for tests since, recent enough to be news. */
    private static final int LATEST_DAYS = 7;

    private static final int EARLIEST_DAYS = 75;
    private static final int MOST = 3;

    private Events() {}

    /** Something that happened; {@code about}: the one test it concerns, empty: all. */
    private record Event(String kind, LocalDate on, Optional<Parameter> about, String place) {}

    /** One question put to the readings. */
    private record Asked(TankHistory tank, Event event, Parameter parameter) {}

    static List<Insight> of(History history, Estimates estimates, Reference reference) {
        List<Asked> asked = new ArrayList<>();
        for (TankHistory tank : history.tanks()) {
            for (Event event : lately(tank, history)) {
                tested(tank, event, estimates).forEach(p -> asked.add(new Asked(tank, event, p)));
            }
        }
        List<Answered> answered = asked.parallelStream()
                .map(a -> new Answered(
                        a.tank(),
                        a.event(),
                        EventEffects.of(
                                history,
                                reference,
                                a.tank(),
                                a.parameter(),
                                a.event().on())))
                .toList();
        Stream<Insight> measured = answered.stream()
                .filter(a -> a.effect().step().isPresent())
                .map(a -> insight(a.tank(), a.event(), a.effect(), reference));
        return Stream.concat(measured, untold(answered)).toList();
    }

    /** What the readings answer. */
    private record Answered(TankHistory tank, Event event, EventEffect effect) {}

    /** The tests of which there are too few on one side of an event, together. */
    private static Stream<Insight> untold(List<Answered> answered) {
        Map<Event, List<Answered>> byEvent = answered.stream()
                .filter(a -> a.effect().step().isEmpty())
                .collect(Collectors.groupingBy(Answered::event, LinkedHashMap::new, Collectors.toList()));
        return byEvent.entrySet().stream().map(e -> untold(e.getKey(), e.getValue()));
    }

    private static Insight untold(Event event, List<Answered> answered) {
        String tests =
                answered.stream().map(a -> Phrases.name(a.effect().parameter())).collect(Collectors.joining(", "));
        return new Insight(
                answered.get(0).tank().tank(),
                Insight.Kind.EVENT,
                label(event),
                Optional.empty(),
                "",
                "whether the use of " + tests + " changed cannot be told: of tests before and after " + event.on() + " "
                        + EventEffects.FEWEST + " each are needed",
                event.place().isEmpty() ? List.of() : List.of(event.place()));
    }

    /** The last of each kind, the latest first. */
    private static List<Event> lately(TankHistory tank, History history) {
        Stream<Event> noted = tank.remarks().stream()
                .filter(r -> TOLD.containsKey(r.kind()) && !r.kind().equals("kit"))
                .map(Events::noted);
        Stream<Event> kits = history.setup().kits().stream()
                .flatMap(k -> k.from().stream().map(f -> new Event("kit", f, Optional.of(k.parameter()), "")));
        LocalDate asOf = history.asOf();
        Set<String> seen = new HashSet<>();
        return Stream.concat(noted, kits)
                .filter(e ->
                        !e.on().isBefore(asOf.minusDays(EARLIEST_DAYS)) && !e.on().isAfter(asOf.minusDays(LATEST_DAYS)))
                .sorted(Comparator.comparing(Event::on).reversed())
                .filter(e -> seen.add(e.kind() + e.about().map(Parameter::id).orElse("")))
                .limit(MOST)
                .toList();
    }

    private static Event noted(Remark remark) {
        return new Event(
                remark.kind(), remark.date(), Optional.empty(), remark.at().place());
    }

    private static List<Parameter> tested(TankHistory tank, Event event, Estimates estimates) {
        return estimates.outcomes().stream()
                .filter(o -> o.tank().equals(tank.tank()))
                .filter(o -> o.match(e -> e.use().isPresent(), n -> false))
                .map(o -> o.parameter())
                .filter(p -> p.kind() == Parameter.Kind.ION || p.kind() == Parameter.Kind.NUTRIENT)
                .filter(p -> event.about().map(p::equals).orElse(true))
                .toList();
    }

    private static Insight insight(TankHistory tank, Event event, EventEffect effect, Reference reference) {
        Parameter parameter = effect.parameter();
        Scale scale = tank.scale(parameter, reference);
        return new Insight(
                effect.tank(),
                Insight.Kind.EVENT,
                Phrases.name(parameter) + ": " + label(event),
                effect.step().map(s -> scale.change(s, 0)),
                Phrases.unit(scale).strip() + " a day",
                says(event, effect),
                event.place().isEmpty() ? List.of() : List.of(event.place()));
    }

    private static String label(Event event) {
        return "change of the use since " + TOLD.getOrDefault(event.kind(), event.kind());
    }

    private static String says(Event event, EventEffect effect) {
        String kit = event.kind().equals("kit") ? "; another kit changes what is read, not what is used" : "";
        String since = "since " + event.on() + " ";
        if (!effect.clear()) {
            return since + "it cannot be told whether the use changed: " + effect.because() + kit;
        }
        boolean more = effect.step().map(s -> s.mid() > 0).orElse(false);
        return String.format(
                Locale.ROOT,
                "%s%s is used than before: %s; what else changed in those weeks is not told apart%s",
                since,
                more ? "more" : "less",
                effect.because(),
                kit);
    }
}
