package soundings.html;

import java.util.List;
import java.util.stream.Collectors;
import soundings.notebook.Prose;
import soundings.notebook.Prose.Kind;

/** Sentences. */
final class ProseHtml {
    private ProseHtml() {}

    static String of(Prose prose) {
        StringBuilder html = new StringBuilder();
        List<Prose.Block> blocks = prose.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            Prose.Block block = blocks.get(i);
            String list = list(block.kind());
            boolean first = i == 0 || blocks.get(i - 1).kind() != block.kind();
            boolean last = i == blocks.size() - 1 || blocks.get(i + 1).kind() != block.kind();
            html.append(!list.isEmpty() && first ? "<" + list + ">" : "");
            html.append(block(block));
            html.append(!list.isEmpty() && last ? "</" + list + ">" : "");
        }
        return Html.row(html.toString(), prose.restsOn());
    }

    private static String list(Kind kind) {
        return kind == Kind.BULLET ? "ul" : kind == Kind.NUMBERED ? "ol" : "";
    }

    private static String block(Prose.Block block) {
        String words = block.spans().stream().map(ProseHtml::span).collect(Collectors.joining());
        return switch (block.kind()) {
            case PARAGRAPH -> Html.element("p", "", words);
            case BULLET, NUMBERED -> Html.element("li", "", words);
            case FINDING -> Html.element("p", "finding", words);
            case CAUTION -> Html.element("p", "caution", words);
            case QUOTE -> "<blockquote><p>" + words + "</p></blockquote>";
        };
    }

    private static String span(Prose.Span span) {
        String words = Html.text(span.text());
        String set = switch (span.weight()) {
            case PLAIN -> words;
            case STRONG -> Html.element("strong", "", words);
            case EMPHASIS -> Html.element("em", "", words);
            case LITERAL -> Html.element("code", "", words);
        };
        return Html.link(span.target(), set);
    }
}
