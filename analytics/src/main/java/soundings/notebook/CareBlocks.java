package soundings.notebook;

import java.util.List;

/** Paragraphs, list entries and cautions of the care items. */
final class CareBlocks {
    private CareBlocks() {}

    static Prose.Block block(Prose.Kind kind, String text) {
        return new Prose.Block(kind, List.of(Prose.Span.plain(text)));
    }

    static Prose prose(Prose.Block... blocks) {
        return new Prose(List.of(blocks), List.of());
    }
}
