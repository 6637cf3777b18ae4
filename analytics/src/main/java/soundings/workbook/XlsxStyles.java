package soundings.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cell styles of an OOXML workbook, by their number in the sheets. */
final class XlsxStyles {
    private final Map<Integer, String> formats = new HashMap<>();
    private final List<Font> fonts = new ArrayList<>();
    private final List<Style> styles = new ArrayList<>();

    private record Font(boolean bold, boolean struck) {
        static final Font PLAIN = new Font(false, false);
    }

    static XlsxStyles of(Optional<InputStream> part) {
        XlsxStyles styles = new XlsxStyles();
        part.ifPresent(stream -> {
            try (Xml xml = Xml.of(stream)) {
                styles.read(xml);
            }
        });
        return styles;
    }

    Style style(int index) {
        return index >= 0 && index < styles.size() ? styles.get(index) : Style.PLAIN;
    }

    private void read(Xml xml) {
        while (xml.nextStart()) {
            switch (xml.name()) {
                case "numFmts" -> readFormats(xml);
                case "fonts" -> readFonts(xml);
                case "cellXfs" -> readCellStyles(xml);
                case "styleSheet" -> {}
                default -> xml.skip();
            }
        }
    }

    private void readFormats(Xml xml) {
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            if (xml.is("numFmt")) {
                formats.put(xml.number("numFmtId", -1), RichText.unescaped(xml.attribute("formatCode", "General")));
            }
        }
    }

    private void readFonts(Xml xml) {
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            if (xml.is("font")) {
                fonts.add(font(xml));
            }
        }
    }

    private static Font font(Xml xml) {
        boolean bold = false;
        boolean struck = false;
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            boolean on = Xml.truth(xml.attribute("val", "1"));
            bold |= on && xml.is("b");
            struck |= on && xml.is("strike");
        }
        return new Font(bold, struck);
    }

    private void readCellStyles(Xml xml) {
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            if (xml.is("xf")) {
                styles.add(style(xml));
            }
        }
    }

    private Style style(Xml xml) {
        int format = xml.number("numFmtId", 0);
        int fontId = xml.number("fontId", 0);
        Font font = fontId >= 0 && fontId < fonts.size() ? fonts.get(fontId) : Font.PLAIN;
        String code = formats.getOrDefault(format, BuiltInFormats.code(format));
        return new Style(code.isEmpty() ? "General" : code, font.bold(), font.struck());
    }
}
