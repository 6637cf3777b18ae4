package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import soundings.advice.Recommendation;
import soundings.chemistry.Scale;

/** How a proposed dose was worked out, or why none is proposed. */
final class WorkingItems {
    private WorkingItems() {}

    static List<Item> working(View view, View.Test test) {
        List<Item> items = new ArrayList<>();
        for (Recommendation r : view.recommendations(test.tankName(), test.parameter())) {
            items.add(new Prose(said(r, test.scale()), List.of()));
            if (!r.working().isEmpty()) {
                items.add(shown(view, r, test.scale()));
            }
        }
        return items;
    }

    private static List<Prose.Block> said(Recommendation r, Scale scale) {
        List<Prose.Block> blocks = new ArrayList<>();
        r.withheld()
                .ifPresent(w -> blocks.add(block(
                        Prose.Kind.PARAGRAPH,
                        "No dose is proposed: " + Text.sentence(Text.clause(w.message())) + " "
                                + Text.sentence(w.wouldLift()))));
        String order = Sentences.order(r, scale);
        if (r.withheld().isEmpty() && !order.isEmpty()) {
            blocks.add(new Prose.Block(
                    Prose.Kind.PARAGRAPH, List.of(new Prose.Span(order + ".", Prose.Weight.STRONG, ""))));
        }
        r.why().forEach(why -> blocks.add(block(Prose.Kind.BULLET, Text.sentence(why))));
        return blocks;
    }

    private static Prose.Block block(Prose.Kind kind, String text) {
        return new Prose.Block(kind, List.of(Prose.Span.plain(text)));
    }

    private static WorkingItem shown(View view, Recommendation r, Scale scale) {
        List<WorkingItem.Line> lines = r.working().stream()
                .map(l -> new WorkingItem.Line(
                        l.id(), l.label(), l.value(), decimals(l.value()), l.unit(), l.formula(), l.from()))
                .toList();
        String id = view.testId(r.tank(), r.parameter()) + "-working"
                + (r.additive().isEmpty() ? "" : "-" + Ids.slug(r.additive()));
        String of = r.additive().isEmpty() ? Sentences.lower(r.parameter().name()) : r.additive();
        return new WorkingItem(
                id, "How the dose of " + of + " was worked out", Sentences.order(r, scale), lines, r.restsOn());
    }

    /** Four significant digits, so that a reader with a pocket calculator comes to the same figure. */
    static int decimals(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e6) {
            return 0;
        }
        return Math.max(0, Math.min(6, 3 - (int) Math.floor(Math.log10(Math.abs(value)))));
    }
}
