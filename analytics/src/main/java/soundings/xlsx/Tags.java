package soundings.xlsx;

import java.util.ArrayDeque;
import java.util.Deque;

/** An XML part being written: elements as opened and closed, texts and attributes escaped. */
final class Tags {
    private final StringBuilder xml =
            new StringBuilder(8192).append("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
    private final Deque<String> open = new ArrayDeque<>();

    /** @param attributes names and values in turn */
    Tags open(String name, String... attributes) {
        start(name, attributes).append('>');
        open.push(name);
        return this;
    }

    Tags close() {
        xml.append("</").append(open.pop()).append('>');
        return this;
    }

    /** Closes so many elements, the innermost first. */
    Tags close(int elements) {
        for (int i = 0; i < elements; i++) {
            close();
        }
        return this;
    }

    Tags empty(String name, String... attributes) {
        start(name, attributes).append("/>");
        return this;
    }

    Tags text(String name, String text) {
        xml.append('<').append(name).append('>');
        escape(xml, CellText.holdable(text));
        xml.append("</").append(name).append('>');
        return this;
    }

    /** The element DrawingML states one value with, as {@code <c:idx val="1"/>}. */
    Tags val(String name, Object value) {
        return empty(name, "val", String.valueOf(value));
    }

    private StringBuilder start(String name, String... attributes) {
        xml.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            xml.append(' ').append(attributes[i]).append("=\"");
            escape(xml, CellText.holdable(attributes[i + 1]));
            xml.append('"');
        }
        return xml;
    }

    /** Text as the content of an element or of an attribute, its line ends kept as they are. */
    static void escape(StringBuilder xml, String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '<' -> xml.append("&lt;");
                case '>' -> xml.append("&gt;");
                case '&' -> xml.append("&amp;");
                case '"' -> xml.append("&quot;");
                case '\n', '\r', '\t' -> xml.append("&#").append((int) c).append(';');
                default -> xml.append(c);
            }
        }
    }

    String finished() {
        close(open.size());
        return xml.toString();
    }
}
