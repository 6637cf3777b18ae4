package soundings.sheet;

import java.util.List;

/** A workbook as read: its sheets in order, and what the reader met but does not read (pictures, macros, passwords). */
public record Book(String name, List<Grid> grids, List<Caveat> caveats) {
    public Book {
        grids = List.copyOf(grids);
        caveats = List.copyOf(caveats);
    }

    /** Something in the file that was seen and left out, with the sheet it stands on (empty: the whole workbook). */
    public record Caveat(String sheet, String message) {}
}
