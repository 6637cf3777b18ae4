package soundings.forms;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;
import soundings.chemistry.Names;
import soundings.sheet.CellRef;
import soundings.xlsx.CellText;

/** A form's sheet in a workbook: where its columns stand, what its rows hold, and how a row is added. */
final class FormSheet {
    /** Two lines. */
    private static final float HEADER_POINTS = 32;

    private static final DataFormatter SHOWN = new DataFormatter(Locale.ROOT);

    /** {@code [Header]} on the same sheet, {@code [Sheet.Header]} on another. */
    private static final Pattern PLACE = Pattern.compile("\\[(?:([^\\].]+)\\.)?([^\\]]+)]");

    private final Form form;
    private final XSSFSheet sheet;
    private final FormStyles styles;
    private final Map<String, Integer> columns = new HashMap<>();

    private FormSheet(Form form, XSSFSheet sheet, FormStyles styles) {
        this.form = form;
        this.sheet = sheet;
        this.styles = styles;
    }

    /** The form's sheet as it is, or a new one; what it lacks is added to its right. */
    static FormSheet in(XSSFWorkbook workbook, Form form, FormStyles styles) {
        Optional<XSSFSheet> found = find(workbook, form.sheet());
        FormSheet made = new FormSheet(form, found.orElseGet(() -> workbook.createSheet(form.sheet())), styles);
        made.complete();
        FormAids.on(made, found.isEmpty());
        return made;
    }

    static Optional<XSSFSheet> find(XSSFWorkbook workbook, String name) {
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            if (Names.fold(workbook.getSheetName(i)).equals(Names.fold(name))) {
                return Optional.of(workbook.getSheetAt(i));
            }
        }
        return Optional.empty();
    }

    Form form() {
        return form;
    }

    XSSFSheet sheet() {
        return sheet;
    }

    FormStyles styles() {
        return styles;
    }

    int column(Field field) {
        return columns.getOrDefault(Names.fold(field.header()), 0);
    }

    /** A formula with the columns' letters put in. */
    String placed(String formula) {
        return PLACE.matcher(formula).replaceAll(m -> letter(Optional.ofNullable(m.group(1)), m.group(2)));
    }

    private String letter(Optional<String> of, String header) {
        XSSFSheet where = of.flatMap(name -> find(sheet.getWorkbook(), name)).orElse(sheet);
        for (Cell cell : where.getRow(0)) {
            if (Names.fold(SHOWN.formatCellValue(cell)).equals(Names.fold(header))) {
                return CellRef.letters(cell.getColumnIndex());
            }
        }
        throw new IllegalArgumentException("the sheet '" + where.getSheetName() + "' has no column '" + header + "'");
    }

    private void complete() {
        XSSFRow header = row(0);
        for (Cell cell : header) {
            columns.putIfAbsent(Names.fold(SHOWN.formatCellValue(cell)), cell.getColumnIndex());
        }
        int next = Math.max(0, header.getLastCellNum());
        for (Field field : form.fields()) {
            if (!columns.containsKey(Names.fold(field.header()))) {
                writeHeader(header, field, next);
                columns.put(Names.fold(field.header()), next++);
            }
        }
    }

    private void writeHeader(XSSFRow header, Field field, int column) {
        header.setHeightInPoints(Math.max(HEADER_POINTS, header.getHeightInPoints()));
        XSSFCell cell = header.createCell(column);
        cell.setCellValue(field.header());
        cell.setCellStyle(field.part() == Field.Part.OURS ? styles.headerOfOurs() : styles.header());
        sheet.setColumnWidth(column, field.width() * 256);
        sheet.setDefaultColumnStyle(column, styles.of(field));
    }

    private XSSFRow row(int at) {
        XSSFRow row = sheet.getRow(at);
        return row == null ? sheet.createRow(at) : row;
    }

    /** Enters what is not there yet; of a row that is there only the program's own columns are written. */
    void enter(List<Filled> rows) {
        Map<String, Integer> there = rowsThere();
        int next = lastFilled() + 1;
        for (Filled filled : rows) {
            Integer at = filled.names().stream()
                    .map(there::get)
                    .filter(r -> r != null)
                    .findFirst()
                    .orElse(null);
            if (at == null) {
                write(row(next), filled, false);
                int placed = next++;
                filled.names().forEach(name -> there.putIfAbsent(name, placed));
            } else {
                write(row(at), filled, true);
            }
        }
    }

    private void write(XSSFRow row, Filled filled, boolean oursOnly) {
        for (Field field : form.fields()) {
            String text = filled.cells().getOrDefault(field.header(), "");
            boolean ours = field.part() == Field.Part.OURS;
            if (ours || (!oursOnly && !text.isEmpty())) {
                put(row, field, text);
            }
        }
    }

    private void put(XSSFRow row, Field field, String text) {
        XSSFCell cell = row.getCell(column(field), Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
        cell.setCellValue(CellText.holdable(text));
        cell.setCellStyle(
                CellText.looksLikeFormula(text) && field.part() != Field.Part.OURS
                        ? styles.quoted()
                        : styles.of(field));
    }

    /** Each row by every name it goes under. */
    private Map<String, Integer> rowsThere() {
        Map<String, Integer> there = new HashMap<>();
        for (int r = 1; r <= sheet.getLastRowNum(); r++) {
            XSSFRow row = sheet.getRow(r);
            if (row != null) {
                int at = r;
                Map<String, String> cells = new HashMap<>();
                form.fields().forEach(f -> cells.put(f.header(), shown(row, f)));
                Filled.namesIn(form, cells).forEach(name -> there.putIfAbsent(name, at));
            }
        }
        return there;
    }

    private String shown(XSSFRow row, Field field) {
        return SHOWN.formatCellValue(row.getCell(column(field))).strip();
    }

    private int lastFilled() {
        int last = sheet.getLastRowNum();
        while (last > 0 && isBlank(sheet.getRow(last))) {
            last--;
        }
        return Math.max(0, last);
    }

    private static boolean isBlank(@Nullable XSSFRow row) {
        if (row != null) {
            for (Cell cell : row) {
                if (!SHOWN.formatCellValue(cell).isBlank()) {
                    return false;
                }
            }
        }
        return true;
    }
}
