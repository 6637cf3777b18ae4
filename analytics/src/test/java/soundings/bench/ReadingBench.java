package soundings.bench;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.ReadOnlySharedStringsTable;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFSheetXMLHandler;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.xml.sax.InputSource;
import org.xml.sax.XMLReader;
import soundings.workbook.WorkbookReader;

/**
 * Reading 1,000,000 cells (50,000 rows of 20: dates, shared texts, numbers), each reader in a process of its own, in turns; wall
 * seconds of the whole process and its peak memory. Ours keeps every cell, the others only look at them. Then hostile files
 * with 256 MB of heap. From {@code analytics}, after {@code mvn test-compile}:
 * {@code mvn -q exec:java -Dexec.classpathScope=test -Dexec.mainClass=soundings.bench.ReadingBench -Dexec.args="ROUNDS"}
 */
public final class ReadingBench {
    private static final int ROWS = 50_000;
    private static final int COLUMNS = 20;
    private static final List<String> READERS = List.of("ours", "fastexcel", "poi-sax");

    private ReadingBench() {}

    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 2) {
            once(arguments[0], Path.of(arguments[1]));
            return;
        }
        int rounds = arguments.length == 1 ? Integer.parseInt(arguments[0]) : 5;
        Path folder = Files.createTempDirectory("reading-bench");
        compare(large(folder), rounds, System.out);
        for (Path hostile : HostileFiles.in(folder)) {
            System.out.println(hostile.getFileName() + ": " + run("ours", hostile, "-Xmx256m"));
        }
    }

    private static void compare(Path file, int rounds, PrintStream out) throws IOException, InterruptedException {
        List<List<Double>> seconds = new ArrayList<>();
        READERS.forEach(reader -> seconds.add(new ArrayList<>()));
        List<Run> last = new ArrayList<>(List.of(Run.NONE, Run.NONE, Run.NONE));
        for (int round = 0; round < rounds; round++) {
            for (int i = 0; i < READERS.size(); i++) {
                last.set(i, run(READERS.get(i), file, "-Xmx1g"));
                seconds.get(i).add(last.get(i).seconds());
            }
        }
        for (int i = 0; i < READERS.size(); i++) {
            double[] sorted = seconds.get(i).stream()
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            out.printf(
                    Locale.ROOT,
                    "%-10s median %.2f s (%.2f-%.2f), peak %d MiB, %s%n",
                    READERS.get(i),
                    sorted[sorted.length / 2],
                    sorted[0],
                    sorted[sorted.length - 1],
                    last.get(i).peakMiB(),
                    last.get(i).said());
        }
    }

    record Run(double seconds, long peakMiB, String said) {
        static final Run NONE = new Run(0, 0, "");
    }

    private static Run run(String reader, Path file, String heap) throws IOException, InterruptedException {
        String java = ProcessHandle.current().info().command().orElse("java");
        String classPath = System.getProperty("bench.classpath", System.getProperty("java.class.path"));
        long start = System.nanoTime();
        Process process = new ProcessBuilder(
                        java, heap, "-cp", classPath, ReadingBench.class.getName(), reader, file.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        process.waitFor();
        double seconds = (System.nanoTime() - start) / 1e9;
        String[] parts = said.split("\\|", 2);
        return parts.length < 2
                ? new Run(seconds, 0, said)
                : new Run(seconds, Long.parseLong(parts[0].strip()), parts[1]);
    }

    private static void once(String reader, Path file) throws Exception {
        String said;
        try {
            said = switch (reader) {
                case "fastexcel" -> fastexcel(file.toFile());
                case "poi-sax" -> poiSax(file.toFile());
                default -> ours(file);
            };
        } catch (RuntimeException refused) {
            said = refused.getMessage();
        }
        System.out.println(peakMiB() + "|" + said);
    }

    /** Peak resident memory where the system tells it (Linux), else 0. */
    private static long peakMiB() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.exists(status)) {
            return 0;
        }
        try (Stream<String> lines = Files.lines(status)) {
            return lines.filter(line -> line.startsWith("VmHWM"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
                    .findFirst()
                    .orElse(0);
        }
    }

    private static String ours(Path file) {
        long cells = WorkbookReader.read(file, Optional.empty()).grids().stream()
                .mapToLong(grid -> grid.cells().size())
                .sum();
        return cells + " cells";
    }

    private static String fastexcel(File file) throws IOException {
        long[] seen = new long[2];
        try (ReadableWorkbook workbook = new ReadableWorkbook(file)) {
            for (Sheet sheet : workbook.getSheets().toList()) {
                try (Stream<Row> rows = sheet.openStream()) {
                    rows.forEach(row -> row.forEach(cell -> {
                        if (cell != null) {
                            seen[0]++;
                            seen[1] += cell.getRawValue() == null
                                    ? 0
                                    : cell.getRawValue().length();
                        }
                    }));
                }
            }
        }
        return seen[0] + " cells";
    }

    private static String poiSax(File file) throws Exception {
        long[] seen = new long[1];
        try (OPCPackage open = OPCPackage.open(file, org.apache.poi.openxml4j.opc.PackageAccess.READ)) {
            XSSFReader reader = new XSSFReader(open);
            ReadOnlySharedStringsTable strings = new ReadOnlySharedStringsTable(open);
            XMLReader parser = XMLHelper.newXMLReader();
            parser.setContentHandler(new XSSFSheetXMLHandler(
                    reader.getStylesTable(), strings, counting(seen), new DataFormatter(Locale.ROOT), false));
            var sheets = reader.getSheetsData();
            while (sheets.hasNext()) {
                try (InputStream sheet = sheets.next()) {
                    parser.parse(new InputSource(sheet));
                }
            }
        }
        return seen[0] + " cells";
    }

    private static XSSFSheetXMLHandler.SheetContentsHandler counting(long[] seen) {
        return new XSSFSheetXMLHandler.SheetContentsHandler() {
            @Override
            public void startRow(int row) {}

            @Override
            public void endRow(int row) {}

            @Override
            public void cell(String address, String shown, XSSFComment comment) {
                seen[0]++;
            }
        };
    }

    private static Path large(Path folder) throws IOException {
        Path file = folder.resolve("large.xlsx");
        try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            HostileFiles.workbookParts(zip);
            part(
                    zip,
                    "xl/styles.xml",
                    "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><fonts><font/></fonts><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>");
            StringBuilder texts =
                    new StringBuilder("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
            for (int i = 0; i < 2_000; i++) {
                texts.append("<si><t>remark number ").append(i).append("</t></si>");
            }
            part(zip, "xl/sharedStrings.xml", texts.append("</sst>").toString());
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            PrintWriter sheet = new PrintWriter(new java.io.OutputStreamWriter(zip, StandardCharsets.UTF_8));
            sheet.print("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>");
            for (int row = 1; row <= ROWS; row++) {
                row(sheet, row);
            }
            sheet.print("</sheetData></worksheet>");
            sheet.flush();
        }
        return file;
    }

    private static void row(Writer sheet, int row) throws IOException {
        sheet.write("<row r=\"" + row + "\"><c r=\"A" + row + "\" s=\"1\"><v>" + (40_000 + row % 5_000) + "</v></c>");
        for (int column = 1; column < COLUMNS; column++) {
            String at = (char) ('A' + column) + Integer.toString(row);
            sheet.write(
                    column % 5 == 0
                            ? "<c r=\"" + at + "\" t=\"s\"><v>" + (row * column) % 2_000 + "</v></c>"
                            : "<c r=\"" + at + "\"><v>" + (row * 37 + column * 11) % 1_000 / 100.0 + "</v></c>");
        }
        sheet.write("</row>");
    }

    static void part(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        OutputStream out = zip;
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }
}
