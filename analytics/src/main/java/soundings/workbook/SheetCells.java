package soundings.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import soundings.sheet.Book.Caveat;
import soundings.sheet.Cell;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Look;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** One sheet while it is read: the cells that hold something, their notes, the merged areas. */
final class SheetCells {
    private final List<Cell> cells = new ArrayList<>();
    private final List<Region> merges = new ArrayList<>();
    private final List<CellRef> partlyStruck = new ArrayList<>();
    private final Map<CellRef, String> notes;
    private boolean inOrder = true;
    private int lastRow = -1;
    private int lastColumn = -1;

    /** @param notes by place; those of cells that hold something are given to them */
    SheetCells(Map<CellRef, String> notes) {
        this.notes = new TreeMap<>(notes);
    }

    void add(CellRef at, Value value, Look look) {
        inOrder &= at.row() > lastRow || (at.row() == lastRow && at.column() > lastColumn);
        lastRow = at.row();
        lastColumn = at.column();
        cells.add(new Cell(at, value, look, note(at)));
        Limits.cells(cells.size());
    }

    private String note(CellRef at) {
        return notes.isEmpty() ? "" : notes.getOrDefault(at, "");
    }

    void note(CellRef at, String text) {
        notes.put(at, Limits.text(text));
    }

    void merge(Region region) {
        merges.add(region);
        if (merges.size() > Limits.MERGES) {
            throw Refusal.tooLarge("one sheet has more than " + Limits.MERGES + " merged areas");
        }
    }

    /** The text of this cell is struck out in part: which part counts is for a person to say. */
    void partlyStruck(CellRef at) {
        partlyStruck.add(at);
    }

    Grid grid(String name, boolean hidden, List<Caveat> caveats) {
        List<Cell> kept = inOrder ? cells : oncePerPlace(name, caveats);
        if (!notes.isEmpty()) {
            kept.forEach(cell -> notes.remove(cell.at()));
            Caveats.looseNotes(name, notes, caveats);
        }
        Caveats.partlyStruck(name, partlyStruck, caveats);
        return Grid.of(name, hidden, kept, merges);
    }

    private List<Cell> oncePerPlace(String name, List<Caveat> caveats) {
        Map<CellRef, Cell> byPlace = new TreeMap<>();
        cells.forEach(cell -> byPlace.put(cell.at(), cell));
        if (byPlace.size() < cells.size()) {
            int twice = cells.size() - byPlace.size();
            caveats.add(new Caveat(name, twice + " cells stand in the file more than once; the last of each is read."));
        }
        return new ArrayList<>(byPlace.values());
    }
}
