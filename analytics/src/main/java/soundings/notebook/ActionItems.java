package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import soundings.advice.Judgement;
import soundings.advice.Recommendation;

/** What to do this month. */
final class ActionItems {
    private ActionItems() {}

    static List<Item> all(View view) {
        List<ActionList.Entry> entries = new ArrayList<>();
        for (Recommendation r : view.findings().advice().recommendations()) {
            if (r.withheld().isPresent()) {
                entries.add(withheld(view, r, r.withheld().get()));
            } else if (r.proposedMlPerDay().isPresent() || r.correction().isPresent()) {
                entries.add(dose(view, r));
            }
        }
        entries.sort(java.util.Comparator.comparing(ActionList.Entry::when));
        return List.of(new ActionList("actions", "What to do", entries, List.of()));
    }

    private static ActionList.Entry dose(View view, Recommendation r) {
        return new ActionList.Entry(
                r.correction().isPresent() ? ActionList.When.SOON : ActionList.When.MONTH,
                r.tank(),
                Sentences.order(r),
                r.why().stream().map(Text::sentence).toList(),
                sure(view, r),
                "",
                view.testId(r.tank(), r.parameter()),
                r.restsOn());
    }

    private static ActionList.Entry withheld(View view, Recommendation r, Recommendation.Withheld why) {
        return new ActionList.Entry(
                ActionList.When.HANDY,
                r.tank(),
                Text.clause(Figures.capital(why.wouldLift())),
                List.of(Text.sentence("No dose of " + name(r) + " is proposed: " + Text.clause(why.message()))),
                "",
                "",
                view.testId(r.tank(), r.parameter()),
                r.restsOn());
    }

    private static String name(Recommendation r) {
        return r.additive().isEmpty() ? Sentences.lower(r.parameter().name()) : r.additive();
    }

    private static String sure(View view, Recommendation r) {
        return view.judgement(r.tank(), r.parameter())
                .map(Judgement::probability)
                .map(Figures::sure)
                .orElse("");
    }
}
