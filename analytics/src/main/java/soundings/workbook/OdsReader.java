package soundings.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soundings.sheet.Book;
import soundings.sheet.Book.Caveat;
import soundings.sheet.Grid;

/** An OpenDocument spreadsheet (OASIS OpenDocument 1.3 part 3), read straight from its XML. */
final class OdsReader {
    private static final String SPREADSHEET = "application/vnd.oasis.opendocument.spreadsheet";
    private static final int TYPE_LENGTH = 200;

    private final OdsStyles styles = new OdsStyles();
    private final List<Grid> grids = new ArrayList<>();
    private final List<Caveat> caveats = new ArrayList<>();

    private OdsReader() {}

    static boolean isSpreadsheet(ZipParts parts) {
        try (InputStream type = parts.findPart("mimetype").orElse(InputStream.nullInputStream())) {
            return new String(type.readNBytes(TYPE_LENGTH), StandardCharsets.US_ASCII)
                    .strip()
                    .startsWith(SPREADSHEET);
        } catch (IOException unreadable) {
            return false;
        }
    }

    static Book read(String name, ZipParts parts) {
        refuseLocked(parts);
        OdsReader reader = new OdsReader();
        parts.findPart("styles.xml").ifPresent(part -> {
            try (Xml xml = Xml.of(part)) {
                reader.readStyles(xml);
            }
        });
        try (Xml xml = Xml.of(parts.part("content.xml"))) {
            reader.readContent(xml);
        }
        reader.noteParts(parts);
        return new Book(name, reader.grids, reader.caveats);
    }

    private static void refuseLocked(ZipParts parts) {
        parts.findPart("META-INF/manifest.xml").ifPresent(part -> {
            try (Xml xml = Xml.of(part)) {
                while (xml.nextStart()) {
                    if (xml.is("encryption-data")) {
                        throw Refusal.because(
                                "has a password, which is not supported for .ods. Save a copy without one, or as .xlsx.");
                    }
                }
            }
        });
    }

    private void readStyles(Xml xml) {
        while (xml.nextStart()) {
            if (xml.is("styles") || xml.is("automatic-styles")) {
                styles.read(xml);
            }
        }
    }

    private void readContent(Xml xml) {
        while (xml.nextStart()) {
            switch (xml.name()) {
                case "automatic-styles" -> styles.read(xml);
                case "null-date" -> styles.daysFrom(xml.attribute("date-value", ""));
                case "tracked-changes" -> xml.skip();
                case "table" -> readTable(xml);
                default -> {}
            }
        }
    }

    private void readTable(Xml xml) {
        String name = Limits.text(xml.attribute("name", ""));
        boolean hidden = styles.hidesTable(xml.attribute("style-name", ""));
        SheetCells cells = new SheetCells(Map.of());
        int drawings = OdsSheet.read(xml, styles, cells);
        if (drawings > 0) {
            caveats.add(new Caveat(
                    name, "The sheet has " + drawings + " pictures, charts or drawings; only cells are read."));
        }
        grids.add(cells.grid(name, hidden, caveats));
    }

    private void noteParts(ZipParts parts) {
        if (parts.names().stream().anyMatch(part -> part.startsWith("basic/") && !part.endsWith("script-lc.xml"))) {
            caveats.add(new Caveat("", "The workbook has macros; they are neither run nor read."));
        }
    }
}
