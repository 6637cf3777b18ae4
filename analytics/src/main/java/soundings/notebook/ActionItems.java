package soundings.notebook;

import java.util.List;
import soundings.advice.Action;

/** What to do this month, as the advice puts it. */
final class ActionItems {
    private ActionItems() {}

    static List<Item> all(View view) {
        List<ActionList.Entry> entries = view.findings().advice().actions().stream()
                .map(action -> entry(view, action))
                .toList();
        return List.of(new ActionList("actions", "What to do", entries, List.of()));
    }

    private static ActionList.Entry entry(View view, Action action) {
        String target = action.parameter()
                .filter(p -> view.has(action.tank(), p))
                .map(p -> view.testId(action.tank(), p))
                .orElse("");
        return new ActionList.Entry(
                when(action.urgency()),
                action.tank(),
                Text.clause(Figures.capital(action.what())),
                action.why().stream().map(Text::sentence).toList(),
                action.sure() >= 1 ? "" : Figures.sure(action.sure()),
                Text.sentence(action.caution()),
                target,
                action.restsOn());
    }

    private static ActionList.When when(Action.Urgency urgency) {
        return switch (urgency) {
            case NOW -> ActionList.When.NOW;
            case SOON -> ActionList.When.SOON;
            case MONTH -> ActionList.When.MONTH;
            case HANDY -> ActionList.When.HANDY;
        };
    }
}
