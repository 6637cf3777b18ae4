package soundings.notebook;

import java.util.List;
import java.util.function.Function;

/** Sentences: blocks of marked-up words. All text is plain text, whatever characters it holds. */
public record Prose(List<Block> blocks, List<String> restsOn) implements Item {
    public Prose {
        blocks = List.copyOf(blocks);
        restsOn = List.copyOf(restsOn);
    }

    @Override
    public <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions) {
        return prose.apply(this);
    }

    /** A paragraph or a list entry. */
    public record Block(Kind kind, List<Span> spans) {
        public Block {
            spans = List.copyOf(spans);
        }

        public String text() {
            return String.join("", spans.stream().map(Span::text).toList());
        }
    }

    /** What a block is to its reader. */
    public enum Kind {
        PARAGRAPH,
        BULLET,
        NUMBERED,
        /** The sentence to take away if only one is read. */
        FINDING,
        /** Harm is possible: read before acting. */
        CAUTION,
        /** Words of the keeper, word for word. */
        QUOTE
    }

    /** Words in one style; {@code target} is the id of a section or an item, empty where the words lead nowhere. */
    public record Span(String text, Weight weight, String target) {
        public static Span plain(String text) {
            return new Span(text, Weight.PLAIN, "");
        }
    }

    /** How words are set. */
    public enum Weight {
        PLAIN,
        STRONG,
        EMPHASIS,
        /** As written in a cell or typed on a keyboard. */
        LITERAL
    }
}
