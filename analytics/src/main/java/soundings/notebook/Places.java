package soundings.notebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import soundings.log.AsWritten;
import soundings.sheet.CellRef;

/** Cells of the keeper's workbook, gathered by column: {@code Log!C5:C40}. */
public final class Places {
    private Places() {}

    /** One entry a sheet and column, first met first; from the topmost cell to the lowest, which may have others between. */
    public static List<String> gathered(List<AsWritten> cells) {
        Map<String, TreeSet<CellRef>> columns = new LinkedHashMap<>();
        for (AsWritten cell : cells) {
            String column = cell.sheet() + "!" + cell.cell().column();
            columns.computeIfAbsent(column, c -> new TreeSet<>()).add(cell.cell());
        }
        List<String> places = new ArrayList<>();
        columns.forEach((column, refs) -> places.add(column.substring(0, column.lastIndexOf('!') + 1) + span(refs)));
        return places;
    }

    private static String span(SortedSet<CellRef> cells) {
        return cells.size() == 1 ? cells.first().toString() : cells.first() + ":" + cells.last();
    }
}
