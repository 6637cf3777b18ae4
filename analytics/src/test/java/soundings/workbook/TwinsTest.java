package soundings.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soundings.sheet.Book;
import soundings.sheet.Grid;
import soundings.sheet.Value;

/** The same made-up workbook, saved as .xlsx and .xls, read by us and by Apache POI 5.5.1 as the reference. */
class TwinsTest {
    private static final String[] FORMATS = {
        "General", "0.0", "0.00%", "dd/mm/yyyy", "hh:mm", "d mmm yyyy h:mm", "0.0\" dKH\"", "#,##0", "[h]:mm", "@"
    };

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void every_cell_is_read_as_poi_reads_it(long seed) {
        Workbook xlsx = new XSSFWorkbook();
        Workbook xls = new HSSFWorkbook();

        Book fromXlsx = Made.read(folder, "log.xlsx", Made.saved(xlsx, workbook -> fill(workbook, new Random(seed))));
        Book fromXls = Made.read(folder, "log.xls", Made.saved(xls, workbook -> fill(workbook, new Random(seed))));

        assertThat(fromXlsx.grids()).hasSize(3);
        for (int i = 0; i < 3; i++) {
            sameAsPoi(fromXlsx.grids().get(i), xlsx.getSheetAt(i));
            sameAsPoi(fromXls.grids().get(i), xls.getSheetAt(i));
            assertThat(fromXls.grids().get(i).cells())
                    .isEqualTo(fromXlsx.grids().get(i).cells());
            assertThat(fromXls.grids().get(i).merges())
                    .isEqualTo(fromXlsx.grids().get(i).merges());
        }
    }

    private static void fill(Workbook workbook, Random random) {
        CellStyle[] styles = new CellStyle[FORMATS.length];
        for (int i = 0; i < styles.length; i++) {
            Font font = workbook.createFont();
            font.setBold(i % 2 == 0);
            font.setStrikeout(i % 3 == 0);
            styles[i] = workbook.createCellStyle();
            styles[i].setDataFormat(workbook.createDataFormat().getFormat(FORMATS[i]));
            styles[i].setFont(font);
        }
        for (String name : new String[] {"Big tank", "Frags & co", "old"}) {
            Sheet sheet = workbook.createSheet(name);
            for (int i = 0; i < 120; i++) {
                int row = random.nextInt(40);
                Cell cell = (sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row))
                        .createCell(random.nextInt(12));
                cell.setCellStyle(styles[random.nextInt(styles.length)]);
                value(cell, random);
            }
            sheet.setColumnHidden(random.nextInt(12), true);
            sheet.addMergedRegion(new CellRangeAddress(50, 51, 0, 3));
            note(workbook, sheet.rowIterator().next().cellIterator().next());
        }
        workbook.setSheetHidden(2, true);
    }

    private static void value(Cell cell, Random random) {
        switch (random.nextInt(7)) {
            case 0 -> cell.setCellValue("Alk 8,2 <b> µ " + random.nextInt(50));
            case 1 -> cell.setCellValue(random.nextBoolean());
            case 2 -> cell.setCellErrorValue((byte) 7);
            case 3 -> cell.setCellValue("");
            case 4 -> cell.setCellValue(40_000 + random.nextInt(6_000_000) / 1000.0);
            case 5 -> cell.setCellValue(random.nextInt(1440) / 1440.0);
            default -> cell.setCellValue(Math.rint(random.nextGaussian() * 10_000) / 100);
        }
    }

    private static void note(Workbook workbook, Cell cell) {
        CreationHelper helper = workbook.getCreationHelper();
        ClientAnchor anchor = helper.createClientAnchor();
        Comment comment = cell.getSheet().createDrawingPatriarch().createCellComment(anchor);
        comment.setString(helper.createRichTextString("new kit\nsince May"));
        cell.setCellComment(comment);
    }

    private static void sameAsPoi(Grid ours, Sheet poi) {
        int held = 0;
        for (Row row : poi) {
            for (Cell cell : row) {
                boolean holds = cell.getCellType() != CellType.BLANK
                        && !(cell.getCellType() == CellType.STRING
                                && cell.getStringCellValue().isEmpty());
                held += holds ? 1 : 0;
                if (holds) {
                    sameAsPoi(
                            ours.findCell(cell.getRowIndex(), cell.getColumnIndex())
                                    .orElseThrow(),
                            cell);
                }
            }
        }
        assertThat(ours.cells()).hasSize(held);
        assertThat(ours.hidden())
                .isEqualTo(poi.getWorkbook().isSheetHidden(poi.getWorkbook().getSheetIndex(poi)));
    }

    private static void sameAsPoi(soundings.sheet.Cell ours, Cell poi) {
        Font font = poi.getSheet().getWorkbook().getFontAt(poi.getCellStyle().getFontIndex());
        assertThat(ours.look().bold()).isEqualTo(font.getBold());
        assertThat(ours.look().struck()).isEqualTo(font.getStrikeout());
        assertThat(ours.look().hidden()).isEqualTo(poi.getSheet().isColumnHidden(poi.getColumnIndex()));
        assertThat(ours.look().format()).isEqualTo(poi.getCellStyle().getDataFormatString());
        assertThat(ours.comment())
                .isEqualTo(
                        poi.getCellComment() == null
                                ? ""
                                : poi.getCellComment().getString().getString());
        switch (poi.getCellType()) {
            case NUMERIC -> sameNumber(ours.value(), poi);
            case STRING -> assertThat(ours.value()).isEqualTo(new Value.Text(poi.getStringCellValue()));
            case BOOLEAN -> assertThat(ours.value()).isEqualTo(new Value.Flag(poi.getBooleanCellValue()));
            default -> assertThat(ours.value()).isEqualTo(new Value.Fault("#DIV/0!"));
        }
    }

    /** A span of a day or more is a date to POI and a number to us. */
    private static void sameNumber(Value ours, Cell poi) {
        double number = poi.getNumericCellValue();
        boolean date = DateUtil.isCellDateFormatted(poi) && number >= 0;
        boolean span = poi.getCellStyle().getDataFormatString().startsWith("[h]") && number >= 1;
        if (date && !span) {
            assertThat(ours).isInstanceOfSatisfying(Value.Moment.class, moment -> {
                assertThat(moment.serial()).isEqualTo(number);
                assertThat(moment.at())
                        .isBetween(
                                poi.getLocalDateTimeCellValue().minusSeconds(1),
                                poi.getLocalDateTimeCellValue().plusSeconds(1));
            });
        } else {
            assertThat(ours).isEqualTo(new Value.Numeric(number));
        }
    }
}
