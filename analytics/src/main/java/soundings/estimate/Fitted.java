package soundings.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.log.Reading;

/**
 * A question with its answer: the spreads that matter, each with the belief it ends in.
 *
 * @param question with the stages as finally used: mistyped readings out, unexplained jumps and a likely late change in
 * @param best the likeliest spread
 * @param lately the spreads that matter, with what may have changed lately
 */
record Fitted(Question question, Spread best, Lately lately, List<Estimate.Doubt> doubts, List<Stage> jumps) {
    private static final double LIKELY = 0.5;

    static Fitted of(Question question) {
        List<Grid.Node> nodes = search(question);
        Grid.Node best = nodes.get(0);
        List<Stage> stages = Doubts.jumps(question.stages(), question.begin(best.spread()));
        List<Stage> jumps = stages.stream().filter(s -> s.jump() > 0).toList();
        Question jumped = question.with(stages);
        Lately lately =
                lately(jumped, jumps.isEmpty() ? List.of(best) : Grid.again(List.of(best), recent(jumped)::run));
        Question told = told(jumped, lately);
        List<Estimate.Doubt> doubts = Doubts.mistyped(told.lookBack(best.spread()), best.spread(), question.trust());
        if (told.equals(question) && doubts.isEmpty()) {
            return new Fitted(question, best.spread(), lately(question, nodes), doubts, jumps);
        }
        List<Estimate.Doubt> early =
                doubts.stream().filter(d -> !isLate(d, question)).toList();
        Question cleaned = jumped.with(without(stages, early));
        Question cleanedTold = told(cleaned, lately);
        List<Grid.Node> better = cleanedTold.equals(cleaned) && jumps.isEmpty()
                ? Grid.again(nodes, recent(cleaned)::run)
                : search(cleanedTold);
        return new Fitted(
                cleanedTold.with(without(cleanedTold.stages(), doubts)),
                better.get(0).spread(),
                lately(cleaned, better),
                doubts,
                jumps);
    }

    private static boolean isLate(Estimate.Doubt doubt, Question question) {
        return Sights.day(doubt.reading()) > Inflows.noon(question.end()) - Lately.DAYS;
    }

    private static Lately lately(Question question, List<Grid.Node> nodes) {
        return question.start().asksStep() ? Lately.unchanged(nodes) : Lately.of(recent(question), nodes);
    }

    private static Question told(Question question, Lately lately) {
        return lately.probability() > LIKELY
                ? lately.likeliest()
                        .map(l -> question.with(l.in(question.stages())))
                        .orElse(question)
                : question;
    }

    private static List<Grid.Node> search(Question question) {
        Question recent = recent(question);
        return Grid.search(recent.axes(), recent::spread, recent::run);
    }

    private static Question recent(Question question) {
        return question.start().asksStep() ? question : question.recent();
    }

    private static List<Stage> without(List<Stage> stages, List<Estimate.Doubt> doubts) {
        Set<Reading> out = Collections.newSetFromMap(new IdentityHashMap<>());
        doubts.forEach(d -> out.add(d.reading()));
        List<Stage> kept = new ArrayList<>();
        for (Stage stage : stages) {
            kept.add(stage.withSights(stage.sights().stream()
                    .filter(s -> !out.contains(s.reading()))
                    .toList()));
        }
        return kept;
    }

    /** A late change, where it is likelier than not. */
    Optional<Estimate.Changed> changed() {
        return lately.probability() > LIKELY
                ? lately.likeliest().map(l -> l.told(question.stages(), lately.probability()))
                : Optional.empty();
    }

    List<Grid.Node> nodes() {
        return lately.nodes();
    }

    /** Those of at least that weight, weights adding to one; the best alone where none has it. */
    Map<Spread, Double> spreads(double weight) {
        Map<Spread, Double> all = new LinkedHashMap<>();
        nodes().forEach(n -> all.merge(n.spread(), n.weight(), Double::sum));
        all.values().removeIf(w -> w < weight);
        double sum = all.values().stream().mapToDouble(w -> w).sum();
        all.replaceAll((spread, w) -> w / sum);
        return all.isEmpty() ? Map.of(best, 1.0) : all;
    }
}
