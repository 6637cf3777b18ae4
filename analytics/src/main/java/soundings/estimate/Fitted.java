package soundings.estimate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import soundings.log.Reading;

/**
 * A question with its answer: the spreads that matter, each with the belief it ends in.
 *
 * @param question with the stages as finally used: mistyped readings out, unexplained jumps in
 */
record Fitted(Question question, List<Grid.Node> nodes, List<Estimate.Doubt> doubts, List<Stage> jumps) {

    static Fitted of(Question question) {
        List<Grid.Node> nodes = search(question);
        Spread best = nodes.get(0).spread();
        List<Stage> stages = Doubts.jumps(question.stages(), question.begin(best));
        List<Stage> jumps = stages.stream().filter(s -> s.jump() > 0).toList();
        Question jumped = question.with(stages);
        List<Estimate.Doubt> doubts = Doubts.mistyped(jumped.lookBack(best), best, question.trust());
        if (jumps.isEmpty() && doubts.isEmpty()) {
            return new Fitted(question, nodes, doubts, jumps);
        }
        Question cleaned = jumped.with(without(stages, doubts));
        List<Grid.Node> better = jumps.isEmpty() ? Grid.again(nodes, recent(cleaned)::run) : search(cleaned);
        return new Fitted(cleaned, better, doubts, jumps);
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

    Grid.Node best() {
        return nodes.get(0);
    }
}
