package soundings.xlsx;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import soundings.notebook.TableItem;

/** A long table on a sheet of its own: caption, then a header that stays in sight, filters and repeats in print. */
final class TablePage {
    private TablePage() {}

    static void write(Pages pages, String name, TableItem table) {
        TableItem flat = Flat.of(table);
        Page page = pages.add(name, ColumnWidths.of(List.of(flat)));
        page.line(table.caption(), Face.Part.SUBHEADING);
        pages.standsHere(table.id(), page);
        if (!table.restsOn().isEmpty()) {
            page.line("Rests on " + String.join(", ", table.restsOn()), Face.Part.QUIET);
        }
        int header = TableRows.write(page, flat);
        finish(pages, page, header, flat.columns().size());
    }

    static void finish(Pages pages, Page page, int header, int columns) {
        page.sheet().createFreezePane(1, header + 1);
        page.sheet()
                .setAutoFilter(new CellRangeAddress(
                        header, Math.max(header, page.rows().row()), 0, columns - 1));
        page.print(pages.workbook(), header);
    }
}
