package soundings.workbook;

import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import soundings.sheet.CellRef;

/** The notes pinned to a sheet's cells. Where a cell carries a thread of remarks, these stand instead of their plain stand-in. */
final class XlsxNotes {
    private XlsxNotes() {}

    static Map<CellRef, String> of(ZipParts parts, Relations sheet) {
        Map<CellRef, String> notes = new HashMap<>();
        sheet.findTarget("comments").flatMap(parts::findPart).ifPresent(part -> plain(part, notes));
        Map<CellRef, String> threads = new HashMap<>();
        sheet.findTarget("threadedComment").flatMap(parts::findPart).ifPresent(part -> threaded(part, threads));
        notes.putAll(threads);
        return notes;
    }

    private static void plain(InputStream part, Map<CellRef, String> notes) {
        try (Xml xml = Xml.of(part)) {
            Optional<CellRef> at = Optional.empty();
            while (xml.nextStart()) {
                if (xml.is("comment")) {
                    at = place(xml);
                } else if (xml.is("text")) {
                    String text = RichText.read(xml).text();
                    at.ifPresent(place -> notes.put(place, text));
                }
            }
        }
    }

    private static void threaded(InputStream part, Map<CellRef, String> threads) {
        try (Xml xml = Xml.of(part)) {
            Optional<CellRef> at = Optional.empty();
            while (xml.nextStart()) {
                if (xml.is("threadedComment")) {
                    at = place(xml);
                } else if (xml.is("text")) {
                    String text = Limits.text(xml.text());
                    at.ifPresent(
                            place -> threads.merge(place, text, (before, next) -> Limits.text(before + "\n" + next)));
                }
            }
        }
    }

    private static Optional<CellRef> place(Xml xml) {
        return xml.attribute("ref").flatMap(A1::find);
    }
}
