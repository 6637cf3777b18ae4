package soundings.advice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import soundings.log.AsWritten;
import soundings.sheet.CellRef;

/** Cells as a reader finds them: one range a column or a row, {@code Log!D2:D98}, not a hundred addresses. */
final class Places {
    private Places() {}

    static List<String> of(Collection<AsWritten> cells) {
        List<String> down = ranges(cells, CellRef::column);
        List<String> across = ranges(cells, CellRef::row);
        return across.size() < down.size() ? across : down;
    }

    private static List<String> ranges(Collection<AsWritten> cells, Function<CellRef, Integer> line) {
        Map<String, TreeMap<Integer, List<CellRef>>> bySheet = new TreeMap<>();
        for (AsWritten cell : cells) {
            bySheet.computeIfAbsent(cell.sheet(), s -> new TreeMap<>())
                    .computeIfAbsent(line.apply(cell.cell()), l -> new ArrayList<>())
                    .add(cell.cell());
        }
        List<String> ranges = new ArrayList<>();
        bySheet.forEach((sheet, lines) -> lines.values().forEach(l -> ranges.add(sheet + "!" + range(l))));
        return ranges;
    }

    private static String range(List<CellRef> line) {
        CellRef first = line.stream().min(CellRef::compareTo).orElseThrow();
        CellRef last = line.stream().max(CellRef::compareTo).orElseThrow();
        return first.equals(last) ? first.toString() : first + ":" + last;
    }
}
