package soundings.workbook;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import soundings.sheet.Book.Caveat;
import soundings.sheet.CellRef;

/** Remarks that hold for any kind of workbook. */
final class Caveats {
    private static final int SHOWN_CELLS = 10;
    private static final int SHOWN_CHARACTERS = 80;
    private static final int SHOWN_NOTES = 50;

    private Caveats() {}

    static void looseNotes(String sheet, Map<CellRef, String> notes, List<Caveat> into) {
        notes.entrySet().stream()
                .filter(note -> !note.getValue().isBlank())
                .limit(SHOWN_NOTES)
                .forEach(note -> into.add(new Caveat(
                        sheet,
                        note.getKey() + " is empty but carries a note, which is not read: "
                                + shortened(note.getValue()))));
    }

    private static String shortened(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() <= SHOWN_CHARACTERS ? line : line.substring(0, SHOWN_CHARACTERS) + "…";
    }

    static void partlyStruck(String sheet, List<CellRef> cells, List<Caveat> into) {
        if (!cells.isEmpty()) {
            String named =
                    cells.stream().limit(SHOWN_CELLS).map(CellRef::toString).collect(Collectors.joining(", "));
            String more = cells.size() > SHOWN_CELLS ? " and " + (cells.size() - SHOWN_CELLS) + " more" : "";
            into.add(new Caveat(
                    sheet, "Part of the text is struck out in " + named + more + "; the whole text is read."));
        }
    }
}
