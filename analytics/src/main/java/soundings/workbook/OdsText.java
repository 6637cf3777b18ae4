package soundings.workbook;

import javax.xml.stream.XMLStreamConstants;

/** The paragraphs of one OpenDocument cell joined by line ends, white space as part 3 §6.1.2 reads it. */
final class OdsText {
    private final OdsStyles styles;
    private final StringBuilder text = new StringBuilder();
    private boolean anyParagraph;
    private boolean anyStruck;
    private boolean anyPlain;

    OdsText(OdsStyles styles) {
        this.styles = styles;
    }

    /** Reads the paragraph just started. */
    void paragraph(Xml xml) {
        if (anyParagraph) {
            text.append('\n');
        }
        anyParagraph = true;
        inside(xml, false);
    }

    private void inside(Xml xml, boolean struck) {
        int outer = xml.depth();
        while (xml.depth() >= outer) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                element(xml, struck);
            } else if (event == XMLStreamConstants.CHARACTERS
                    || event == XMLStreamConstants.CDATA
                    || event == XMLStreamConstants.SPACE) {
                characters(xml.characters(), struck);
            }
        }
    }

    private void element(Xml xml, boolean struck) {
        switch (xml.name()) {
            case "s" -> {
                text.append(" ".repeat(Math.min(Limits.TEXT_LENGTH, Math.max(0, xml.number("c", 1)))));
                xml.skip();
            }
            case "tab" -> {
                text.append('\t');
                xml.skip();
            }
            case "line-break" -> {
                text.append('\n');
                xml.skip();
            }
            case "span" -> inside(xml, struck || styles.strikesSpan(xml.attribute("style-name", "")));
            case "annotation", "ruby-text", "note" -> xml.skip();
            default -> inside(xml, struck);
        }
        Limits.text(text.length() > Limits.TEXT_LENGTH ? text.toString() : "");
    }

    private void characters(String run, boolean struck) {
        for (int i = 0; i < run.length(); i++) {
            char c = run.charAt(i);
            boolean space = c == ' ' || c == '\t' || c == '\n' || c == '\r';
            if (!space) {
                text.append(c);
            } else if (!text.isEmpty() && " \n".indexOf(text.charAt(text.length() - 1)) < 0) {
                text.append(' ');
            }
        }
        anyStruck |= struck && !run.isBlank();
        anyPlain |= !struck && !run.isBlank();
    }

    RichText joined() {
        RichText.Struck struck =
                !anyStruck ? RichText.Struck.NOTHING : anyPlain ? RichText.Struck.PART : RichText.Struck.ALL;
        return new RichText(Limits.text(text.toString()), struck);
    }
}
