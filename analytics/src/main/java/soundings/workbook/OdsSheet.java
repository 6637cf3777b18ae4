package soundings.workbook;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import soundings.sheet.CellRef;
import soundings.sheet.Look;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** One table of an OpenDocument spreadsheet. Counts of repeated empty cells and rows are stepped over, not written out. */
final class OdsSheet {
    private final OdsStyles styles;
    private final SheetCells cells;
    private final BitSet hiddenColumns = new BitSet();
    private final TreeMap<Integer, String> columnStyles = new TreeMap<>();
    private final List<Held> held = new ArrayList<>();
    private long row;
    private long rowsRepeated;
    private boolean rowHidden;
    private String rowStyle = "";
    private long column;
    private int columnsSeen;
    private int copies;
    private int drawings;

    /** What one cell of the row being read holds, and how often it is repeated to the right. */
    private record Held(long column, int times, Optional<Value> value, Look look, boolean partlyStruck, String note) {}

    private OdsSheet(OdsStyles styles, SheetCells cells) {
        this.styles = styles;
        this.cells = cells;
    }

    /** Reads to the end of the table just started; answers how many drawings stand on it. */
    static int read(Xml xml, OdsStyles styles, SheetCells into) {
        OdsSheet sheet = new OdsSheet(styles, into);
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            sheet.element(xml);
        }
        sheet.endRow();
        return sheet.drawings;
    }

    private void element(Xml xml) {
        switch (xml.name()) {
            case "table-column" -> readColumn(xml);
            case "table-row" -> startRow(xml);
            case "table-cell" -> readCell(xml, false);
            case "covered-table-cell" -> readCell(xml, true);
            case "frame", "custom-shape", "g" -> {
                drawings++;
                xml.skip();
            }
            default -> {}
        }
    }

    private void readColumn(Xml xml) {
        int times = Math.max(1, Math.min(xml.number("number-columns-repeated", 1), Limits.COLUMNS - columnsSeen));
        if (isHidden(xml)) {
            hiddenColumns.set(columnsSeen, columnsSeen + times);
        }
        columnStyles.put(columnsSeen, xml.attribute("default-cell-style-name", ""));
        columnsSeen = Math.min(Limits.COLUMNS, columnsSeen + times);
    }

    private static boolean isHidden(Xml xml) {
        return !xml.attribute("visibility", "visible").equals("visible");
    }

    private void startRow(Xml xml) {
        endRow();
        rowsRepeated = Math.max(1, xml.number("number-rows-repeated", 1));
        rowHidden = isHidden(xml);
        rowStyle = xml.attribute("default-cell-style-name", "");
        column = 0;
    }

    private void endRow() {
        if (!held.isEmpty()) {
            for (long copy = 0; copy < rowsRepeated; copy++) {
                write(row + copy, copy > 0);
            }
            held.clear();
        }
        row += rowsRepeated;
    }

    private void write(long atRow, boolean copiedRow) {
        for (Held cell : held) {
            for (int i = 0; i < cell.times(); i++) {
                countCopy(copiedRow || i > 0);
                write(Limits.place(atRow, cell.column() + i), cell);
            }
        }
    }

    private void countCopy(boolean copied) {
        copies += copied ? 1 : 0;
        if (copies > Limits.REPEATED_CELLS) {
            throw Refusal.tooLarge("a few of its cells are repeated more than " + Limits.REPEATED_CELLS + " times");
        }
    }

    private void write(CellRef at, Held cell) {
        if (!cell.note().isEmpty()) {
            cells.note(at, cell.note());
        }
        cell.value().ifPresent(value -> cells.add(at, value, cell.look()));
        if (cell.partlyStruck()) {
            cells.partlyStruck(at);
        }
    }

    private void readCell(Xml xml, boolean covered) {
        OdsCell cell = OdsCell.started(xml);
        int spanRows = xml.number("number-rows-spanned", 1);
        int spanColumns = xml.number("number-columns-spanned", 1);
        Style style = styles.style(cell.styleOr(styleHere()));
        cell.content(xml, styles);
        drawings += cell.drawings();
        Optional<Value> value = cell.value(style, styles.from1904());
        if (value.isPresent() || !cell.note().isEmpty()) {
            Look look = style.look(isHiddenHere(covered), cell.formula(), cell.struck() == RichText.Struck.ALL);
            boolean partly = value.isPresent() && cell.struck() == RichText.Struck.PART;
            held.add(new Held(column, Math.min(cell.times(), Limits.COLUMNS), value, look, partly, cell.note()));
        }
        if (!covered && (spanRows > 1 || spanColumns > 1)) {
            CellRef first = Limits.place(row, column);
            cells.merge(new Region(
                    first, Limits.place(row + Math.max(1, spanRows) - 1L, column + Math.max(1, spanColumns) - 1L)));
        }
        column += cell.times();
    }

    private boolean isHiddenHere(boolean covered) {
        return covered || rowHidden || (column < Limits.COLUMNS && hiddenColumns.get((int) column));
    }

    private String styleHere() {
        if (!rowStyle.isEmpty()) {
            return rowStyle;
        }
        var below = columnStyles.floorEntry((int) Math.min(column, Limits.COLUMNS));
        return below == null ? "" : below.getValue();
    }
}
