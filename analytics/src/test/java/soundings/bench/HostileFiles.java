package soundings.bench;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks at full hostile size, for the benchmark; the tests have small ones of the same kinds. */
final class HostileFiles {
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private HostileFiles() {}

    static List<Path> in(Path folder) throws IOException {
        return List.of(
                sheet(folder.resolve("bomb-2GB.xlsx"), "", " ".repeat(1 << 20), 2048, ""),
                sheet(
                        folder.resolve("row-2000000000.xlsx"),
                        "<sheetData><row r='2000000000'><c r='A2000000000'><v>1</v></c></row></sheetData>",
                        "",
                        0,
                        ""),
                sheet(
                        folder.resolve("text-60MB.xlsx"),
                        "<sheetData><row><c t='inlineStr'><is><t>",
                        noise(),
                        60,
                        "</t></is></c></row></sheetData>"),
                sheet(
                        folder.resolve("merges-200000.xlsx"),
                        "<mergeCells>",
                        "<mergeCell ref='A1:B2'/>".repeat(1000),
                        200,
                        "</mergeCells>"));
    }

    /** A megabyte that hardly packs, so that no limit on swelling stops it first. */
    private static String noise() {
        StringBuilder noise = new StringBuilder();
        java.util.Random random = new java.util.Random(1);
        for (int i = 0; i < 1 << 20; i++) {
            noise.append((char) ('a' + random.nextInt(26)));
        }
        return noise.toString();
    }

    private static Path sheet(Path file, String start, String block, int times, String end) throws IOException {
        byte[] bytes = block.getBytes(StandardCharsets.UTF_8);
        try (ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(file)))) {
            workbookParts(zip);
            zip.putNextEntry(new ZipEntry("xl/worksheets/sheet1.xml"));
            zip.write(("<worksheet>" + start).getBytes(StandardCharsets.UTF_8));
            for (int i = 0; i < times; i++) {
                zip.write(bytes);
            }
            zip.write((end + "</worksheet>").getBytes(StandardCharsets.UTF_8));
        }
        return file;
    }

    static void workbookParts(ZipOutputStream zip) throws IOException {
        ReadingBench.part(
                zip,
                "[Content_Types].xml",
                "<Types xmlns='http://schemas.openxmlformats.org/package/2006/content-types'><Default Extension='rels' ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
                        + "<Default Extension='xml' ContentType='application/xml'/>" + type("workbook", "sheet.main")
                        + type("worksheets/sheet1", "worksheet") + type("styles", "styles")
                        + type("sharedStrings", "sharedStrings") + "</Types>");
        ReadingBench.part(zip, "_rels/.rels", relations("officeDocument", "xl/workbook.xml"));
        ReadingBench.part(
                zip,
                "xl/workbook.xml",
                "<workbook xmlns='http://schemas.openxmlformats.org/spreadsheetml/2006/main' xmlns:r='" + OFFICE
                        + "'><sheets><sheet name='Log' sheetId='1' r:id='rId1'/></sheets></workbook>");
        ReadingBench.part(
                zip,
                "xl/_rels/workbook.xml.rels",
                relations(
                        "worksheet",
                        "worksheets/sheet1.xml",
                        "styles",
                        "styles.xml",
                        "sharedStrings",
                        "sharedStrings.xml"));
    }

    private static String type(String part, String kind) {
        return "<Override PartName='/xl/" + part
                + ".xml' ContentType='application/vnd.openxmlformats-officedocument.spreadsheetml." + kind + "+xml'/>";
    }

    private static String relations(String... typesAndTargets) {
        StringBuilder xml = new StringBuilder(
                "<Relationships xmlns='http://schemas.openxmlformats.org/package/2006/relationships'>");
        for (int i = 0; i < typesAndTargets.length; i += 2) {
            xml.append("<Relationship Id='rId" + (i / 2 + 1) + "' Type='" + OFFICE + "/" + typesAndTargets[i]
                    + "' Target='" + typesAndTargets[i + 1] + "'/>");
        }
        return xml.append("</Relationships>").toString();
    }
}
