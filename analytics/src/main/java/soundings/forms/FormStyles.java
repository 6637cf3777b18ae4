package soundings.forms;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The few looks of a form, made once a workbook. */
record FormStyles(
        XSSFCellStyle header,
        XSSFCellStyle headerOfOurs,
        XSSFCellStyle words,
        XSSFCellStyle quoted,
        XSSFCellStyle ours,
        XSSFCellStyle day,
        XSSFCellStyle time,
        XSSFCellStyle title) {
    /** ISO 8601, so that no reader has to guess which number is the month. */
    private static final String DAY = "yyyy-mm-dd";

    private static final String INK = "1F2A33";
    private static final String QUIET = "5E6B75";
    private static final String RULE = "0072B2";
    private static final String PAPER = "EEF3F6";

    static FormStyles in(XSSFWorkbook workbook) {
        return new FormStyles(
                header(workbook, INK),
                header(workbook, QUIET),
                plain(workbook),
                quoted(workbook),
                quiet(workbook),
                formatted(workbook, DAY),
                formatted(workbook, "hh:mm"),
                title(workbook));
    }

    XSSFCellStyle of(Field field) {
        if (field.part() == Field.Part.OURS) {
            return ours;
        }
        return switch (field.holds()) {
            case DAY -> day;
            case TIME -> time;
            case WORDS, NUMBER -> words;
        };
    }

    private static XSSFCellStyle plain(XSSFWorkbook workbook) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.TOP);
        return style;
    }

    private static XSSFCellStyle quoted(XSSFWorkbook workbook) {
        XSSFCellStyle style = plain(workbook);
        style.setQuotePrefixed(true);
        return style;
    }

    private static XSSFCellStyle header(XSSFWorkbook workbook, String ink) {
        XSSFCellStyle style = plain(workbook);
        style.setFont(font(workbook, ink, true));
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setFillForegroundColor(colour(PAPER));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        style.setBorderBottom(BorderStyle.MEDIUM);
        style.setBottomBorderColor(colour(RULE));
        return style;
    }

    private static XSSFCellStyle quiet(XSSFWorkbook workbook) {
        XSSFCellStyle style = plain(workbook);
        style.setFont(font(workbook, QUIET, false));
        style.setQuotePrefixed(true);
        return style;
    }

    private static XSSFCellStyle title(XSSFWorkbook workbook) {
        XSSFCellStyle style = plain(workbook);
        XSSFFont font = font(workbook, INK, true);
        font.setFontHeightInPoints((short) 14);
        style.setFont(font);
        return style;
    }

    private static XSSFCellStyle formatted(XSSFWorkbook workbook, String format) {
        XSSFCellStyle style = plain(workbook);
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        style.setAlignment(HorizontalAlignment.LEFT);
        return style;
    }

    private static XSSFFont font(XSSFWorkbook workbook, String ink, boolean bold) {
        XSSFFont font = workbook.createFont();
        font.setBold(bold);
        font.setColor(colour(ink));
        return font;
    }

    static XSSFColor colour(String hex) {
        return new XSSFColor(
                new byte[] {
                    (byte) Integer.parseInt(hex.substring(0, 2), 16),
                    (byte) Integer.parseInt(hex.substring(2, 4), 16),
                    (byte) Integer.parseInt(hex.substring(4, 6), 16)
                },
                null);
    }
}
