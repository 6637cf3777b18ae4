package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** A paragraph's words with their weights; links lead to places of the report, an address elsewhere is printed as text. */
final class Inlines {
    private final List<Prose.Span> spans = new ArrayList<>();

    private Inlines() {}

    static List<Prose.Span> of(Node parent) {
        Inlines inlines = new Inlines();
        inlines.children(parent, Prose.Weight.PLAIN, "");
        return List.copyOf(inlines.spans);
    }

    static String text(Node parent) {
        return String.join("", of(parent).stream().map(Prose.Span::text).toList());
    }

    private void children(Node parent, Prose.Weight weight, String target) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            inline(node, weight, target);
        }
    }

    private void inline(Node node, Prose.Weight weight, String target) {
        if (node instanceof Text text) {
            add(text.getLiteral(), weight, target);
        } else if (node instanceof StrongEmphasis) {
            children(node, Prose.Weight.STRONG, target);
        } else if (node instanceof Emphasis) {
            children(node, weight == Prose.Weight.PLAIN ? Prose.Weight.EMPHASIS : weight, target);
        } else if (node instanceof Link link) {
            link(link, weight);
        } else {
            other(node, weight, target);
        }
    }

    private void other(Node node, Prose.Weight weight, String target) {
        if (node instanceof Code code) {
            add(code.getLiteral(), Prose.Weight.LITERAL, target);
        } else if (node instanceof HtmlInline html) {
            add(html.getLiteral(), weight, target);
        } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
            add(" ", weight, target);
        } else {
            children(node, weight, target);
        }
    }

    private void link(Link link, Prose.Weight weight) {
        String to = link.getDestination();
        if (to.startsWith("#")) {
            children(link, weight, to.substring(1));
        } else {
            children(link, weight, "");
            add(" (" + to + ")", weight, "");
        }
    }

    private void add(String text, Prose.Weight weight, String target) {
        int last = spans.size() - 1;
        boolean same = last >= 0
                && spans.get(last).weight() == weight
                && spans.get(last).target().equals(target);
        if (same) {
            spans.set(last, new Prose.Span(spans.get(last).text() + text, weight, target));
        } else {
            spans.add(new Prose.Span(text, weight, target));
        }
    }
}
