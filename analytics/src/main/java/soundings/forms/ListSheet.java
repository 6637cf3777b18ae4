package soundings.forms;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.xlsx.CellText;

/** The sheet behind the drop-down lists, written anew each time. */
final class ListSheet {
    private ListSheet() {}

    static XSSFSheet write(XSSFWorkbook workbook, Choices choices) {
        XSSFSheet sheet = FormSheet.find(workbook, Choices.SHEET).orElseGet(() -> workbook.createSheet(Choices.SHEET));
        clear(sheet);
        for (int c = 0; c < choices.columns().size(); c++) {
            Choices.Column column = choices.columns().get(c);
            put(sheet, 0, c, column.header());
            List<String> entries = column.entries();
            for (int r = 0; r < entries.size(); r++) {
                put(sheet, r + 1, c, entries.get(r));
            }
        }
        return sheet;
    }

    private static void clear(XSSFSheet sheet) {
        for (int r = sheet.getLastRowNum(); r >= 0; r--) {
            XSSFRow row = sheet.getRow(r);
            if (row != null) {
                sheet.removeRow(row);
            }
        }
    }

    private static void put(XSSFSheet sheet, int row, int column, String text) {
        XSSFRow there = sheet.getRow(row);
        (there == null ? sheet.createRow(row) : there).createCell(column).setCellValue(CellText.holdable(text));
    }
}
