package soundings.xlsx;

import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.notebook.Tone;

/** The styles of one workbook, each made when it is first needed: a spreadsheet slows down with every style. */
final class Faces {
    static final String INK = "1F2A33";
    static final String QUIET = "5E6B75";
    static final String RULE = "0072B2";
    private static final String PAPER = "EEF3F6";
    private static final String HAIRLINE = "C9D3DA";

    private final XSSFWorkbook workbook;
    private final Map<Face, Integer> styles = new HashMap<>();
    private final Map<String, XSSFFont> fonts = new HashMap<>();

    Faces(XSSFWorkbook workbook) {
        this.workbook = workbook;
        Lettering.use(workbook);
    }

    /** The style's number in the workbook. */
    int of(Face face) {
        return styles.computeIfAbsent(face, f -> (int) make(f).getIndex());
    }

    int of(Face.Part part) {
        return of(Face.of(part));
    }

    private XSSFCellStyle make(Face face) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.TOP);
        style.setFont(font(face));
        style.setQuotePrefixed(face.quoted());
        if (face.format().isEmpty()) {
            style.setWrapText(face.part() != Face.Part.TITLE && face.part() != Face.Part.HEADING);
        } else {
            style.setDataFormat(workbook.createDataFormat().getFormat(face.format()));
        }
        if (!face.format().isEmpty() || face.part() == Face.Part.HEADER_RIGHT) {
            style.setAlignment(HorizontalAlignment.RIGHT);
            style.setIndention((short) 1);
        }
        border(style, face.part());
        fill(style, face);
        return style;
    }

    private static void border(XSSFCellStyle style, Face.Part part) {
        switch (part) {
            case HEADER, HEADER_RIGHT -> line(style, BorderStyle.MEDIUM, RULE);
            case BODY, RESULT -> line(style, BorderStyle.HAIR, HAIRLINE);
            case ANSWER -> line(style, BorderStyle.THIN, QUIET);
            case HEADING -> line(style, BorderStyle.THIN, RULE);
            case CAUTION -> {
                style.setBorderLeft(BorderStyle.THICK);
                style.setLeftBorderColor(colour("D55E00"));
            }
            default -> {}
        }
        if (part == Face.Part.HEADER || part == Face.Part.HEADER_RIGHT || part.above() > 0) {
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        }
    }

    private static void line(XSSFCellStyle style, BorderStyle kind, String colour) {
        style.setBorderBottom(kind);
        style.setBottomBorderColor(colour(colour));
    }

    private static void fill(XSSFCellStyle style, Face face) {
        String colour = switch (face.part()) {
            case HEADER, HEADER_RIGHT -> PAPER;
            case ANSWER -> "FFFBEA";
            case CAUTION -> "FDF1EA";
            case RESULT -> PAPER;
            default -> fill(face.tone());
        };
        if (!colour.isEmpty()) {
            style.setFillForegroundColor(colour(colour));
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
        }
    }

    private static String fill(Tone tone) {
        return switch (tone) {
            case ACT -> "FBE3D6";
            case WATCH -> "FFF4CC";
            case UNSURE -> "ECEAF4";
            case PLAIN, CALM, QUIET -> "";
        };
    }

    private XSSFFont font(Face face) {
        int size = face.part().points();
        boolean bold = face.part().isBold() || face.tone() == Tone.ACT;
        boolean italic = face.part() == Face.Part.QUOTE || face.tone() == Tone.UNSURE;
        String ink = face.part() == Face.Part.LINK ? RULE : isQuiet(face) ? QUIET : INK;
        return fonts.computeIfAbsent(size + " " + bold + italic + ink, k -> font(size, bold, italic, ink));
    }

    private XSSFFont font(int size, boolean bold, boolean italic, String ink) {
        XSSFFont font = workbook.createFont();
        font.setFontName(Lettering.FONT);
        font.setFontHeightInPoints((short) size);
        font.setBold(bold);
        font.setItalic(italic);
        font.setColor(colour(ink));
        return font;
    }

    private static boolean isQuiet(Face face) {
        return face.part() == Face.Part.QUIET || face.part() == Face.Part.SUBTITLE || face.tone() == Tone.QUIET;
    }

    static XSSFColor colour(String hex) {
        return new XSSFColor(argb(hex), null);
    }

    /** Four bytes, the first for opaque: ST_UnsignedIntHex, ECMA-376 part 1, 18.18.86. */
    private static byte[] argb(String hex) {
        return HexFormat.of().parseHex("FF" + hex);
    }
}
