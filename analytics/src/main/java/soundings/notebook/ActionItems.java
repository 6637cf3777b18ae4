package soundings.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import soundings.advice.Action;
import soundings.advice.Judgement;

/** What to do this month, as the advice puts it. */
final class ActionItems {
    /** A sentence shorter than this is quicker read again than looked up. */
    private static final int WORTH_LOOKING_UP = 110;
    /** A caution has a frame of its own, and takes more room. */
    private static final int CAUTION = 60;

    private ActionItems() {}

    static List<Item> all(View view) {
        return List.of(
                new ActionList("actions", "What to do", withoutRepeats(entries(view)), instead(view), List.of()));
    }

    private static List<ActionList.Entry> entries(View view) {
        Unsaid unsaid = Unsaid.of(view);
        List<ActionList.Entry> told = view.findings().advice().actions().stream()
                .filter(action -> !unsaid.covers(action))
                .map(action -> entry(view, action))
                .toList();
        List<ActionList.Entry> first =
                unsaid.isFirst() ? unsaid.entry().stream().toList() : List.of();
        List<ActionList.Entry> last =
                unsaid.isFirst() ? List.of() : unsaid.entry().stream().toList();
        return Stream.of(
                        told.stream().filter(e -> e.when() == ActionList.When.NOW),
                        Unread.entry(view).stream(),
                        first.stream(),
                        told.stream().filter(e -> e.when() != ActionList.When.NOW),
                        last.stream())
                .flatMap(s -> s)
                .toList();
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
                action.steps().stream().map(Text::sentence).toList(),
                action.why().stream().map(Text::sentence).toList(),
                action.sure() >= 1 ? "" : Figures.sure(action.sure()),
                Text.sentence(action.caution()),
                target,
                action.restsOn());
    }

    /** A long sentence is said once; where it holds again, the place it stands at is named. */
    private static List<ActionList.Entry> withoutRepeats(List<ActionList.Entry> entries) {
        Map<String, Integer> saidUnder = new LinkedHashMap<>();
        List<ActionList.Entry> once = new ArrayList<>();
        for (ActionList.Entry entry : entries) {
            TreeSet<Integer> elsewhere = new TreeSet<>();
            List<String> reasons = new ArrayList<>();
            for (String reason : entry.reasons()) {
                int under = under(saidUnder, reason, WORTH_LOOKING_UP, once.size() + 1);
                if (under > once.size()) {
                    reasons.add(reason);
                } else {
                    elsewhere.add(under);
                }
            }
            if (!elsewhere.isEmpty()) {
                reasons.add("The rest as under "
                        + Figures.list(elsewhere.stream().map(String::valueOf).toList()) + ".");
            }
            int caution = under(saidUnder, entry.caution(), CAUTION, once.size() + 1);
            once.add(
                    entry.with(reasons, caution > once.size() ? entry.caution() : ActionList.AS_UNDER + caution + "."));
        }
        return once;
    }

    private static int under(Map<String, Integer> saidUnder, String sentence, int least, int here) {
        return sentence.length() < least ? here : saidUnder.computeIfAbsent(sentence, s -> here);
    }

    /** Said where there is nothing to do: the tests that are off all the same, and those nothing can be said of. */
    private static String instead(View view) {
        List<Judgement> all = view.findings().advice().judgements();
        String watched = off(view, all);
        List<Judgement> open =
                all.stream().filter(j -> view.tone(j) == Tone.UNSURE).toList();
        if (all.size() == open.size()) {
            return "Nothing can be told yet: no test has enough readings.";
        }
        if (watched.isEmpty() && open.isEmpty()) {
            return "Nothing needs doing: go on as you are.";
        }
        return "Nothing needs doing now."
                + (watched.isEmpty() ? "" : " To watch: " + watched + ".")
                + (open.isEmpty()
                        ? ""
                        : " Of " + Figures.count(open.size(), "test", "tests") + " nothing can be told yet.");
    }

    private static String off(View view, List<Judgement> all) {
        List<String> tanks = view.tanks().stream()
                .map(tank -> {
                    List<Judgement> own = all.stream()
                            .filter(j -> j.tank().equals(tank.tank()))
                            .toList();
                    String named = Sentences.named(view, own, Tone.WATCH);
                    boolean several = view.tanks().size() > 1;
                    return named.isEmpty() || !several ? named : named + " in " + View.name(tank);
                })
                .filter(s -> !s.isEmpty())
                .toList();
        return String.join("; ", tanks);
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
