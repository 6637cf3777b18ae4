package soundings.forms;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Value;

/** A written workbook read back, by a library and not by us. */
final class Written {
    private Written() {}

    static XSSFWorkbook open(byte[] bytes) {
        try {
            return new XSSFWorkbook(new ByteArrayInputStream(bytes));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static Book book(byte[] bytes) {
        List<Grid> grids = new ArrayList<>();
        open(bytes).forEach(sheet -> {
            List<Cell> cells = new ArrayList<>();
            sheet.forEach(row -> row.forEach(c -> {
                Value value = value((XSSFCell) c);
                if (!value.equals(new Value.Text(""))) {
                    cells.add(Cell.of(c.getRowIndex(), c.getColumnIndex(), value));
                }
            }));
            grids.add(Grid.of(sheet.getSheetName(), false, cells, List.of()));
        });
        return new Book("written.xlsx", grids, List.of());
    }

    private static Value value(XSSFCell cell) {
        return switch (cell.getCellType()) {
            case NUMERIC ->
                DateUtil.isCellDateFormatted(cell)
                        ? new Value.Moment(
                                cell.getNumericCellValue(), cell.getLocalDateTimeCellValue(), Value.Shows.DATE)
                        : new Value.Numeric(cell.getNumericCellValue());
            case STRING -> new Value.Text(cell.getStringCellValue());
            case BLANK -> new Value.Text("");
            default -> throw new AssertionError("not expected in a form: " + cell.getCellType());
        };
    }
}
