package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.notebook.Tone;
import soundings.sheet.CellRef;

/** One sheet being written: its frame, its rows, its column widths, and the links that leave it. */
final class Page {
    private static final double GAP = 7;

    private final XSSFSheet sheet;
    private final Faces faces;
    private final SheetRows rows = new SheetRows();
    private final List<Integer> widths;
    private final List<Link> links = new ArrayList<>();
    private final DrawingPart drawing = new DrawingPart();
    private final List<Paper.Together> together = new ArrayList<>();

    /** @param widths of the columns, in characters */
    Page(XSSFSheet sheet, Faces faces, List<Integer> widths) {
        this.sheet = sheet;
        this.faces = faces;
        this.widths = List.copyOf(widths);
        for (int c = 0; c < widths.size(); c++) {
            sheet.setColumnWidth(c, widths.get(c) * 256);
        }
        sheet.setDisplayGridlines(false);
    }

    /** A cell that leads to an item, wherever that turns out to stand. */
    record Link(String cell, String target) {}

    XSSFSheet sheet() {
        return sheet;
    }

    SheetRows rows() {
        return rows;
    }

    DrawingPart drawing() {
        return drawing;
    }

    Faces faces() {
        return faces;
    }

    List<Link> links() {
        return links;
    }

    List<Integer> widths() {
        return widths;
    }

    /** How many of the page's columns make up so many characters; all of them where they are fewer. */
    int columnsFor(int characters) {
        int columns = 0;
        for (int sum = 0; sum < characters && columns < widths.size(); columns++) {
            sum += widths.get(columns);
        }
        return columns;
    }

    int fullWidth() {
        return widths.stream().mapToInt(Integer::intValue).sum();
    }

    /** The place of the row being written, as other sheets refer to it. */
    String here() {
        return "'" + sheet.getSheetName().replace("'", "''") + "'!A" + rows.rowCount();
    }

    /** A line of text across the page. */
    void line(String text, Face.Part part) {
        line(text, part, "");
    }

    void line(String text, Face.Part part, String target) {
        rows.next(Lettering.height(Lettering.lines(text, fullWidth(), part), part) + part.above())
                .words(0, text, faces.of(Face.words(part, Tone.PLAIN, text)));
        merge(0, widths.size());
        link(0, target);
    }

    /** Makes so many cells of the row being written one. */
    void merge(int column, int columns) {
        if (columns > 1) {
            int row = rows.row();
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, column, column + columns - 1));
        }
    }

    /** A little room between two things. */
    void gap() {
        rows.next(GAP);
    }

    /** Keeps the rows from {@code first} to {@code last} on one page of paper. */
    void keepTogether(int first, int last) {
        together.add(new Paper.Together(first, last));
    }

    void link(int column, String target) {
        if (!target.isEmpty()) {
            links.add(new Link(new CellRef(rows.row(), column).toString(), target));
        }
    }

    /** Made for paper; {@code headerRow} is repeated on every page, -1 for none. */
    void print(XSSFWorkbook workbook, int headerRow) {
        Paper paper = Paper.of(fullWidth());
        paper.applyTo(sheet);
        if (!together.isEmpty()) {
            paper.ends(rows.heights(), together).forEach(sheet::setRowBreak);
        }
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
        workbook.setPrintArea(
                workbook.getSheetIndex(sheet),
                0,
                Math.max(widths.size(), rows.columnCount()) - 1,
                0,
                Math.max(0, rows.row()));
        if (headerRow >= 0) {
            sheet.setRepeatingRows(new CellRangeAddress(headerRow, headerRow, -1, -1));
        }
    }
}
