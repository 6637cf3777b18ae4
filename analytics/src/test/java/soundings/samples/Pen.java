package soundings.samples;

import java.time.LocalDate;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellReference;

/** Writes cells of one sheet and says where they went. */
final class Pen {
    private final Sheet sheet;
    private final CellStyle date;
    private final CellStyle bold;

    Pen(Workbook workbook, String name) {
        this.sheet = workbook.createSheet(name);
        this.date = workbook.createCellStyle();
        this.date.setDataFormat(workbook.getCreationHelper().createDataFormat().getFormat("d mmm yy"));
        this.bold = workbook.createCellStyle();
        var font = workbook.createFont();
        font.setBold(true);
        this.bold.setFont(font);
    }

    Sheet sheet() {
        return sheet;
    }

    Truth.Place text(int row, int column, String text) {
        cell(row, column).setCellValue(text);
        return place(row, column);
    }

    void heads(int row, int column, String... heads) {
        for (int i = 0; i < heads.length; i++) {
            if (!heads[i].isEmpty()) {
                Cell cell = cell(row, column + i);
                cell.setCellValue(heads[i]);
                cell.setCellStyle(bold);
            }
        }
    }

    Truth.Place number(int row, int column, double value) {
        cell(row, column).setCellValue(Math.round(value * 1e6) / 1e6);
        return place(row, column);
    }

    Truth.Place date(int row, int column, LocalDate day) {
        Cell cell = cell(row, column);
        cell.setCellValue(day);
        cell.setCellStyle(date);
        return place(row, column);
    }

    Truth.Place place(int row, int column) {
        return new Truth.Place(sheet.getSheetName(), CellReference.convertNumToColString(column) + (row + 1));
    }

    private Cell cell(int row, int column) {
        Row r = sheet.getRow(row);
        if (r == null) {
            r = sheet.createRow(row);
        }
        return r.createCell(column);
    }
}
