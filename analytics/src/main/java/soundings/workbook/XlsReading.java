package soundings.workbook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFFont;
import org.apache.poi.hssf.usermodel.HSSFRichTextString;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import soundings.sheet.Book;
import soundings.sheet.Book.Caveat;
import soundings.sheet.CellRef;
import soundings.sheet.Grid;
import soundings.sheet.Region;
import soundings.sheet.Value;

/** A binary workbook that POI has opened, as a book. */
final class XlsReading {
    private final HSSFWorkbook workbook;
    private final boolean from1904;
    private final Map<Short, Style> styles = new HashMap<>();
    private final List<Caveat> caveats = new ArrayList<>();

    private XlsReading(HSSFWorkbook workbook) {
        this.workbook = workbook;
        this.from1904 = workbook.getInternalWorkbook().isUsing1904DateWindowing();
    }

    static Book of(String name, HSSFWorkbook workbook, boolean macros) {
        XlsReading reading = new XlsReading(workbook);
        List<Grid> grids = new ArrayList<>();
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            grids.add(reading.grid(i));
        }
        if (macros) {
            reading.caveats.add(new Caveat("", "The workbook has macros; they are neither run nor read."));
        }
        if (!workbook.getAllPictures().isEmpty()) {
            reading.caveats.add(new Caveat("", "The workbook has pictures; only cells are read."));
        }
        return new Book(name, grids, reading.caveats);
    }

    private Grid grid(int index) {
        HSSFSheet sheet = workbook.getSheetAt(index);
        SheetCells cells = new SheetCells(notes(sheet));
        for (Row row : sheet) {
            row.forEach(cell ->
                    read((HSSFCell) cell, row.getZeroHeight() || sheet.isColumnHidden(cell.getColumnIndex()), cells));
        }
        for (CellRangeAddress area : sheet.getMergedRegions()) {
            cells.merge(new Region(
                    new CellRef(area.getFirstRow(), area.getFirstColumn()),
                    new CellRef(area.getLastRow(), area.getLastColumn())));
        }
        boolean hidden = workbook.isSheetHidden(index) || workbook.isSheetVeryHidden(index);
        return cells.grid(workbook.getSheetName(index), hidden, caveats);
    }

    private Map<CellRef, String> notes(HSSFSheet sheet) {
        Map<CellRef, String> notes = new HashMap<>();
        try {
            sheet.getCellComments()
                    .forEach((at, note) -> notes.put(
                            new CellRef(at.getRow(), at.getColumn()),
                            Limits.text(note.getString().getString())));
        } catch (IllegalArgumentException | IllegalStateException brokenDrawing) {
            caveats.add(new Caveat(sheet.getSheetName(), "The notes of this sheet are damaged; they are not read."));
        }
        return notes;
    }

    private void read(HSSFCell cell, boolean hidden, SheetCells into) {
        boolean formula = cell.getCellType() == CellType.FORMULA;
        CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
        Style style = styles.computeIfAbsent(cell.getCellStyle().getIndex(), index -> style(cell.getCellStyle()));
        RichText.Struck struck = type == CellType.STRING ? struck(cell) : RichText.Struck.NOTHING;
        CellRef at = new CellRef(cell.getRowIndex(), cell.getColumnIndex());
        value(cell, type, style).ifPresent(value -> {
            into.add(at, value, style.look(hidden, formula, struck == RichText.Struck.ALL));
            if (struck == RichText.Struck.PART) {
                into.partlyStruck(at);
            }
        });
    }

    private Optional<Value> value(HSSFCell cell, CellType type, Style style) {
        return switch (type) {
            case NUMERIC -> Optional.of(style.value(cell.getNumericCellValue(), from1904));
            case STRING ->
                Optional.of(cell.getStringCellValue())
                        .filter(text -> !text.isEmpty())
                        .map(text -> new Value.Text(Limits.text(text)));
            case BOOLEAN -> Optional.of(new Value.Flag(cell.getBooleanCellValue()));
            case ERROR -> Optional.of(new Value.Fault(fault(cell.getErrorCellValue())));
            default -> Optional.empty();
        };
    }

    private static String fault(byte code) {
        return FormulaError.isValidCode(code & 0xFF)
                ? FormulaError.forInt(code).getString()
                : "#ERROR " + (code & 0xFF);
    }

    private Style style(HSSFCellStyle style) {
        String written =
                Optional.ofNullable(style.getDataFormatString(workbook)).orElse("General");
        String format = written.startsWith("reserved-") ? BuiltInFormats.code(style.getDataFormat()) : written;
        int font = style.getFontIndex();
        return new Style(
                format.isEmpty() ? "General" : format, has(font, HSSFFont::getBold), has(font, HSSFFont::getStrikeout));
    }

    /** False for a font the file names but does not have. */
    private boolean has(int font, Predicate<HSSFFont> mark) {
        int fonts = workbook.getNumberOfFonts();
        try {
            return font >= 0 && font <= fonts && mark.test(workbook.getFontAt(font));
        } catch (IllegalStateException missing) {
            return false;
        }
    }

    private RichText.Struck struck(HSSFCell cell) {
        HSSFRichTextString text = cell.getRichStringCellValue();
        int runs = text.numFormattingRuns();
        if (runs == 0) {
            return RichText.Struck.NOTHING;
        }
        boolean anyPlain =
                text.getIndexOfFormattingRun(0) > 0 && !has(cell.getCellStyle().getFontIndex(), HSSFFont::getStrikeout);
        boolean anyStruck = false;
        for (int i = 0; i < runs && text.getIndexOfFormattingRun(i) < text.length(); i++) {
            boolean struck = has(text.getFontOfFormattingRun(i), HSSFFont::getStrikeout);
            anyStruck |= struck;
            anyPlain |= !struck;
        }
        return !anyStruck ? RichText.Struck.NOTHING : anyPlain ? RichText.Struck.PART : RichText.Struck.ALL;
    }
}
