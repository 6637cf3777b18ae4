package soundings.workbook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLStreamConstants;

/** The text of a shared string, an inline string or a note: its runs joined, and how much of it is struck out. */
record RichText(String text, Struck struck) {
    enum Struck {
        NOTHING,
        PART,
        ALL
    }

    /** A character written as its UTF-16 code, ISO/IEC 29500-1 §22.9.2.19. */
    private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

    /** Reads to the end of the element just started ({@code si}, {@code is} or {@code text}). Phonetic runs are left out. */
    static RichText read(Xml xml) {
        Runs runs = new Runs();
        int outer = xml.depth();
        while (xml.depth() >= outer) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                runs.element(xml);
            }
        }
        return runs.joined();
    }

    private static final class Runs {
        private final StringBuilder text = new StringBuilder();
        private boolean runStruck;
        private boolean anyStruck;
        private boolean anyPlain;

        void element(Xml xml) {
            switch (xml.name()) {
                case "rPh" -> xml.skip();
                case "r" -> runStruck = false;
                case "strike" -> runStruck = Xml.truth(xml.attribute("val", "1"));
                case "t" -> add(Limits.text(xml.text()));
                default -> {}
            }
        }

        private void add(String run) {
            text.append(run);
            Limits.text(run);
            anyStruck |= runStruck && !run.isBlank();
            anyPlain |= !runStruck && !run.isBlank();
        }

        RichText joined() {
            Struck struck = !anyStruck ? Struck.NOTHING : anyPlain ? Struck.PART : Struck.ALL;
            return new RichText(unescaped(Limits.text(text.toString())), struck);
        }
    }

    static String unescaped(String written) {
        if (written.indexOf("_x") < 0) {
            return written;
        }
        return ESCAPED.matcher(written)
                .replaceAll(
                        match -> Matcher.quoteReplacement(String.valueOf((char) Integer.parseInt(match.group(1), 16))));
    }

    Optional<RichText> nonEmpty() {
        return text.isEmpty() ? Optional.empty() : Optional.of(this);
    }
}
