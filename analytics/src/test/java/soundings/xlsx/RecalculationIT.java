package soundings.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program works the formulas out anew, from a copy that does not know our values. */
class RecalculationIT {
    @TempDir
    Path folder;

    @Test
    void an_office_program_recalculates_every_working_to_our_value() throws IOException, InterruptedException {
        Optional<Path> office = office();
        assumeThat(office).as("an office program on the path").isPresent();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        XlsxReport.write(SampleReport.small(), out);
        Path bare = Files.write(folder.resolve("bare.xlsx"), withoutValues(out.toByteArray()));

        XSSFWorkbook again = convert(office.get(), bare);
        XSSFWorkbook ours = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()));

        List<Cell> formulas = formulas(ours).toList();
        assertThat(formulas).isNotEmpty();
        for (Cell cell : formulas) {
            double recalculated = again.getSheet(cell.getSheet().getSheetName())
                    .getRow(cell.getRowIndex())
                    .getCell(cell.getColumnIndex())
                    .getNumericCellValue();
            assertThat(recalculated)
                    .as(cell.getAddress().formatAsString())
                    .isCloseTo(cell.getNumericCellValue(), within(1e-9 * Math.abs(cell.getNumericCellValue())));
        }
    }

    private static Optional<Path> office() {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(java.io.File.pathSeparator))
                .map(d -> Path.of(d, "soffice"))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private XSSFWorkbook convert(Path office, Path file) throws IOException, InterruptedException {
        Path to = Files.createDirectory(folder.resolve("to"));
        Process process = new ProcessBuilder(
                        office.toString(),
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        "--outdir",
                        to.toString(),
                        file.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        try (var in = Files.newInputStream(to.resolve("bare.xlsx"))) {
            return new XSSFWorkbook(in);
        }
    }

    /** Takes the value out of every cell with a formula. */
    private static byte[] withoutValues(byte[] workbook) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook));
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                zip.putNextEntry(new ZipEntry(entry.getName()));
                byte[] bytes = in.readAllBytes();
                zip.write(entry.getName().contains("worksheets/sheet") ? bare(bytes) : bytes);
            }
        }
        return out.toByteArray();
    }

    private static byte[] bare(byte[] sheet) {
        return new String(sheet, StandardCharsets.UTF_8)
                .replaceAll("</f><v>[^<]*</v>", "</f>")
                .getBytes(StandardCharsets.UTF_8);
    }

    private static Stream<Cell> formulas(XSSFWorkbook workbook) {
        return Stream.iterate(0, i -> i < workbook.getNumberOfSheets(), i -> i + 1)
                .flatMap(i -> Stream.iterate(0, r -> r <= workbook.getSheetAt(i).getLastRowNum(), r -> r + 1)
                        .flatMap(r -> Optional.ofNullable(workbook.getSheetAt(i).getRow(r)).stream())
                        .flatMap(row -> Stream.iterate(0, c -> c < row.getLastCellNum(), c -> c + 1)
                                .flatMap(c -> Optional.<Cell>ofNullable(row.getCell(c)).stream())))
                .filter(cell -> cell.getCellType() == CellType.FORMULA);
    }
}
