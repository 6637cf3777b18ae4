package soundings.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes the log the times of a report are measured with: five tanks, a row each on every day of three years, six tests on their
 * own days, a dose and a weekly change; the same bytes of content each time. Argument: the file.
 */
public final class TypicalLog {
    private static final int DAYS = 3 * 365;
    private static final LocalDate FIRST = LocalDate.of(2022, 1, 1);
    private static final List<String> TANKS = List.of("Lagoon", "Drop-off", "Nursery", "Foyer", "Lab");
    private static final List<Test> TESTS = List.of(
            new Test("Alkalinity (dKH)", 8.2, 0.3, 10, 3),
            new Test("Calcium (mg/L)", 425, 12, 0.2, 7),
            new Test("Magnesium (mg/L)", 1330, 25, 0.1, 14),
            new Test("Nitrate (mg/L)", 8, 2, 2, 7),
            new Test("Phosphate (mg/L)", 0.08, 0.02, 100, 7),
            new Test("Salinity (psu)", 35, 0.3, 10, 5));

    private TypicalLog() {}

    /** What is written: typical level, scatter, steps to one unit, days between tests. */
    private record Test(String header, double level, double scatter, double steps, int every) {}

    public static void main(String[] arguments) throws IOException {
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(Path.of(arguments[0]))) {
            write(workbook);
            workbook.write(out);
        }
    }

    private static void write(XSSFWorkbook workbook) {
        CellStyle day = workbook.createCellStyle();
        day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
        Sheet sheet = workbook.createSheet("Log");
        header(sheet.createRow(0));
        Random random = new Random(5);
        for (int d = 0; d < DAYS; d++) {
            for (int tank = 0; tank < TANKS.size(); tank++) {
                Row row = sheet.createRow(sheet.getLastRowNum() + 1);
                row.createCell(0).setCellValue(FIRST.plusDays(d));
                row.getCell(0).setCellStyle(day);
                row.createCell(1).setCellValue(TANKS.get(tank));
                tests(row, d + tank, random);
                row.createCell(2 + TESTS.size()).setCellValue(20 + 5 * tank + d / 180);
                if ((d + tank) % 7 == 6) {
                    row.createCell(3 + TESTS.size()).setCellValue("10 %");
                }
            }
        }
    }

    private static void header(Row row) {
        row.createCell(0).setCellValue("Date");
        row.createCell(1).setCellValue("Tank");
        for (int i = 0; i < TESTS.size(); i++) {
            row.createCell(2 + i).setCellValue(TESTS.get(i).header());
        }
        row.createCell(2 + TESTS.size()).setCellValue("Buffer (ml/day)");
        row.createCell(3 + TESTS.size()).setCellValue("Water change");
    }

    private static void tests(Row row, int day, Random random) {
        for (int i = 0; i < TESTS.size(); i++) {
            Test test = TESTS.get(i);
            if (day % test.every() == 0) {
                double seen = test.level() + test.scatter() * random.nextGaussian();
                row.createCell(2 + i).setCellValue(Math.max(0, Math.rint(seen * test.steps()) / test.steps()));
            }
        }
    }
}
