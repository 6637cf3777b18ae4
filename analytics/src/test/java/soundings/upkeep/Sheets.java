package soundings.upkeep;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;

/** Companion workbooks for tests: a sheet's rows as texts with bars between. */
final class Sheets {
    private Sheets() {}

    static Book book(Grid... grids) {
        return new Book("club-setup.xlsx", List.of(grids), List.of());
    }

    static Grid sheet(String name, String... rows) {
        List<Cell> cells = new ArrayList<>();
        for (int r = 0; r < rows.length; r++) {
            List<String> texts = Arrays.asList(rows[r].split("\\|", -1));
            for (int c = 0; c < texts.size(); c++) {
                String text = texts.get(c).strip();
                if (!text.isEmpty()) {
                    cells.add(Cell.of(r, c, value(text)));
                }
            }
        }
        return Grid.of(name, false, cells, List.of());
    }

    private static Value value(String text) {
        return text.matches("-?\\d+(\\.\\d+)?") ? new Value.Numeric(Double.parseDouble(text)) : new Value.Text(text);
    }
}
