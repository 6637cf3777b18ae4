package soundings.forms;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.xlsx.Lettering;

/** The first sheet of a new workbook: what it is for and what each of its sheets asks. Written once; the keeper's from then on. */
final class GuideSheet {
    private static final int WIDTH = 96;
    private static final float LINE_POINTS = 15;

    private GuideSheet() {}

    /** @param text the title, then a paragraph each */
    static void write(XSSFWorkbook workbook, FormStyles styles, List<String> text, List<Form> forms) {
        XSSFSheet sheet = workbook.createSheet("Start here");
        sheet.setColumnWidth(0, 22 * 256);
        sheet.setColumnWidth(1, WIDTH * 256);
        sheet.setDisplayGridlines(false);
        XSSFCellStyle wrapped = workbook.createCellStyle();
        wrapped.cloneStyleFrom(styles.words());
        wrapped.setWrapText(true);
        int next = 0;
        put(sheet, next++, 0, text.get(0), styles.title());
        next++;
        for (String sentence : text.subList(1, text.size())) {
            putWrapped(sheet, next++, sentence, wrapped);
        }
        next++;
        put(sheet, next, 0, "Sheet", styles.header());
        put(sheet, next++, 1, "What it is for", styles.header());
        for (Form form : forms) {
            put(sheet, next, 0, form.sheet(), styles.words());
            putWrapped(sheet, next++, form.about(), wrapped);
        }
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getPrintSetup().setPaperSize((short) 9);
    }

    private static void putWrapped(XSSFSheet sheet, int row, String text, XSSFCellStyle style) {
        put(sheet, row, 1, text, style);
        sheet.getRow(row).setHeightInPoints(Lettering.lines(text, WIDTH) * LINE_POINTS + 1);
    }

    private static void put(XSSFSheet sheet, int row, int column, String text, XSSFCellStyle style) {
        XSSFCell cell = (sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row)).createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }
}
