package soundings.notebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.Block;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;
import soundings.template.Printed;

/**
 * Markdown to sections. {@code #} is the title, the paragraph after it the subtitle; {@code ##} to {@code ####} begin
 * sections, {@code {#id}} at a heading's end names it; a quotation is a finding, one that begins with a strong
 * "Caution" is a caution. HTML in Markdown is text like any other.
 */
final class MarkdownReading {
    private static final Parser PARSER = Parser.builder().build();
    private static final Pattern NAMED = Pattern.compile("^(.*?)\\s*\\{#([A-Za-z][A-Za-z0-9_-]*)\\}\\s*$");

    private final IntFunction<List<Item>> items;
    private final List<Section> sections = new ArrayList<>();
    private final Set<String> ids = new HashSet<>();
    private final List<Item> gathered = new ArrayList<>();
    private final List<Prose.Block> prose = new ArrayList<>();
    private String title = "";
    private String subtitle = "";
    private String id = "start";
    private String heading = "";
    private int depth = 2;

    private MarkdownReading(IntFunction<List<Item>> items) {
        this.items = items;
    }

    /** @param items what stands at the n-th place a template left for an item */
    static Notebook of(String markdown, IntFunction<List<Item>> items) {
        MarkdownReading reading = new MarkdownReading(items);
        reading.blocks(PARSER.parse(markdown));
        reading.close();
        return new Notebook(reading.title, reading.subtitle, reading.sections);
    }

    private void blocks(Node parent) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            block(node);
        }
    }

    private void block(Node node) {
        if (node instanceof Heading head) {
            heading(head);
        } else if (node instanceof Paragraph paragraph) {
            paragraph(paragraph);
        } else if (node instanceof BlockQuote quote) {
            quote(quote);
        } else if (node instanceof BulletList || node instanceof OrderedList) {
            list(node, node instanceof BulletList ? Prose.Kind.BULLET : Prose.Kind.NUMBERED);
        } else {
            literal(node);
        }
    }

    private void heading(Heading head) {
        String words = Inlines.text(head);
        if (head.getLevel() == 1) {
            title = words;
            return;
        }
        close();
        Matcher named = NAMED.matcher(words);
        boolean explicit = named.matches();
        heading = explicit ? named.group(1) : words;
        id = unique(explicit ? named.group(2) : Ids.slug(words));
        depth = Math.min(4, head.getLevel());
    }

    private String unique(String wanted) {
        String free = wanted;
        for (int n = 2; !ids.add(free.toLowerCase(Locale.ROOT)); n++) {
            free = wanted + "-" + n;
        }
        return free;
    }

    private void paragraph(Paragraph paragraph) {
        String text = Inlines.text(paragraph);
        int call = Printed.findCall(text);
        if (call >= 0) {
            endProse();
            gathered.addAll(items.apply(call));
        } else if (!title.isEmpty()
                && subtitle.isEmpty()
                && heading.isEmpty()
                && gathered.isEmpty()
                && prose.isEmpty()) {
            subtitle = text;
        } else {
            prose.add(new Prose.Block(Prose.Kind.PARAGRAPH, Inlines.of(paragraph)));
        }
    }

    private void quote(BlockQuote quote) {
        for (Node inner = quote.getFirstChild(); inner != null; inner = inner.getNext()) {
            List<Prose.Span> spans = Inlines.of(inner);
            boolean caution = !spans.isEmpty()
                    && spans.get(0).weight() == Prose.Weight.STRONG
                    && spans.get(0).text().startsWith("Caution");
            prose.add(new Prose.Block(caution ? Prose.Kind.CAUTION : Prose.Kind.FINDING, spans));
        }
    }

    private void list(Node list, Prose.Kind kind) {
        for (Node entry = list.getFirstChild(); entry != null; entry = entry.getNext()) {
            for (Node inner = entry.getFirstChild(); inner != null; inner = inner.getNext()) {
                if (inner instanceof Paragraph) {
                    prose.add(new Prose.Block(kind, Inlines.of(inner)));
                } else {
                    block(inner);
                }
            }
        }
    }

    private void literal(Node node) {
        String text = "";
        if (node instanceof FencedCodeBlock code) {
            text = code.getLiteral();
        } else if (node instanceof IndentedCodeBlock code) {
            text = code.getLiteral();
        } else if (node instanceof HtmlBlock html) {
            text = html.getLiteral();
        } else if (node instanceof Block) {
            blocks(node);
        }
        if (!text.isBlank()) {
            prose.add(new Prose.Block(
                    Prose.Kind.PARAGRAPH, List.of(new Prose.Span(text.strip(), Prose.Weight.LITERAL, ""))));
        }
    }

    private void endProse() {
        if (!prose.isEmpty()) {
            gathered.add(new Prose(prose, List.of()));
            prose.clear();
        }
    }

    private void close() {
        endProse();
        if (!heading.isEmpty() || !gathered.isEmpty()) {
            sections.add(new Section(id, heading, depth, gathered));
        }
        gathered.clear();
    }
}
