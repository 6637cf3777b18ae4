package soundings.log;

import soundings.sheet.CellRef;

/** Where something stands in the keeper's workbook and the text that stands there. */
public record AsWritten(String sheet, CellRef cell, String text) {
    /** {@code Sheet!C14}. */
    public String place() {
        return sheet + "!" + cell;
    }
}
