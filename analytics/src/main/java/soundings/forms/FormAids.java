package soundings.forms;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.PatternFormatting;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDataValidationConstraint;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSheetConditionalFormatting;
import soundings.sheet.CellRef;

/** What helps whoever fills in a form: drop-down lists, notes, tints for what is needed or may be mistyped, a page that prints. */
final class FormAids {
    /** The last row that has lists and prompts, counted from zero. */
    private static final int LAST = 1_999;

    private static final String NEEDED = "FFF4CC";
    private static final String DOUBTFUL = "FBE3D6";

    private FormAids() {}

    /** Adds what the sheet lacks; a sheet that was there keeps its panes, its page and its own lists. */
    static void on(FormSheet made, boolean fresh) {
        List<Integer> helped = helped(made.sheet());
        for (Field field : made.form().fields()) {
            if (!helped.contains(made.column(field))) {
                addList(made, field);
                addNote(made, field);
                addTint(made, field);
            }
        }
        if (fresh) {
            layOut(made);
        }
    }

    private static List<Integer> helped(XSSFSheet sheet) {
        List<Integer> columns = new ArrayList<>();
        for (DataValidation validation : sheet.getDataValidations()) {
            for (CellRangeAddress range : validation.getRegions().getCellRangeAddresses()) {
                for (int c = range.getFirstColumn(); c <= range.getLastColumn(); c++) {
                    columns.add(c);
                }
            }
        }
        return columns;
    }

    private static void addList(FormSheet made, Field field) {
        int column = made.column(field);
        XSSFSheet sheet = made.sheet();
        XSSFDataValidation validation = (XSSFDataValidation) sheet.getDataValidationHelper()
                .createValidation(constraint(made, field), new CellRangeAddressList(1, LAST, column, column));
        validation.createPromptBox(clipped(field.header(), 32), clipped(field.note(), 255));
        validation.setShowPromptBox(true);
        validation.setEmptyCellAllowed(true);
        validation.setSuppressDropDownArrow(!field.choices().isEmpty());
        validation.setShowErrorBox(false);
        sheet.addValidationData(validation);
    }

    /** A list where there is one, otherwise no limit at all: the validation is there for its prompt. */
    private static DataValidationConstraint constraint(FormSheet made, Field field) {
        return field.choices().isEmpty()
                ? new XSSFDataValidationConstraint(DataValidationConstraint.ValidationType.ANY, "")
                : new XSSFDataValidationConstraint(
                        DataValidationConstraint.ValidationType.LIST, made.placed(field.choices()));
    }

    private static String clipped(String text, int length) {
        return text.length() <= length ? text : text.substring(0, length - 1) + "\u2026";
    }

    private static void addNote(FormSheet made, Field field) {
        int column = made.column(field);
        if (made.sheet().getCellComment(new CellAddress(0, column)) == null) {
            XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, column, 1, column + 3, 6);
            XSSFComment comment = made.sheet().createDrawingPatriarch().createCellComment(anchor);
            comment.setString(new XSSFRichTextString(field.note()));
            comment.setAuthor("Soundings");
            comment.setAddress(new CellAddress(0, column));
        }
    }

    private static void addTint(FormSheet made, Field field) {
        String here = "$" + CellRef.letters(made.column(field)) + "2";
        if (field.part() == Field.Part.NEEDED) {
            String key = "$" + CellRef.letters(made.column(made.form().keys().get(0))) + "2";
            tint(made, field, "AND(LEN(" + key + ")>0,LEN(" + here + ")=0)", NEEDED);
        }
        if (field.part() == Field.Part.CONFIRMED) {
            String sign = SetupFilling.workedOut(field.header());
            tint(
                    made,
                    field,
                    made.placed("AND(LEN(" + here + ")=0,ISNUMBER(SEARCH(\"" + sign + "\",$[" + SetupForms.AS_READ
                            + "]2)))"),
                    NEEDED);
        }
        if (field.span().low().isPresent() && field.span().high().isPresent()) {
            String outside = "OR(" + here + "<" + field.span().low().getAsDouble() + "," + here + ">"
                    + field.span().high().getAsDouble() + ")";
            tint(made, field, "AND(ISNUMBER(" + here + ")," + outside + ")", DOUBTFUL);
        }
    }

    private static void tint(FormSheet made, Field field, String when, String colour) {
        XSSFSheetConditionalFormatting tints = made.sheet().getSheetConditionalFormatting();
        ConditionalFormattingRule rule = tints.createConditionalFormattingRule(when);
        PatternFormatting fill = rule.createPatternFormatting();
        fill.setFillBackgroundColor(FormStyles.colour(colour));
        fill.setFillPattern(PatternFormatting.SOLID_FOREGROUND);
        int column = made.column(field);
        tints.addConditionalFormatting(new CellRangeAddress[] {new CellRangeAddress(1, LAST, column, column)}, rule);
    }

    private static void layOut(FormSheet made) {
        XSSFSheet sheet = made.sheet();
        sheet.createFreezePane(made.form().keys().isEmpty() ? 0 : 1, 1);
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setPaperSize((short) 9);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
        sheet.getFooter().setLeft("&A");
        sheet.getFooter().setRight("&P / &N");
    }
}
