package soundings.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import soundings.sheet.Book;
import soundings.sheet.Cell;
import soundings.sheet.Grid;

/** Workbook files made for one test, and what was read of them as text. */
final class Made {
    private Made() {}

    static Book read(Path folder, String name, byte[] bytes) {
        return read(folder, name, bytes, Optional.empty());
    }

    static Book read(Path folder, String name, byte[] bytes, Optional<String> password) {
        try {
            Path file = folder.resolve(name);
            Files.write(file, bytes);
            return WorkbookReader.read(file, password);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Book text(Path folder, String text, Charset charset) {
        return read(folder, "log.csv", text.getBytes(charset));
    }

    static byte[] xlsx(Consumer<Workbook> fill) {
        return saved(new XSSFWorkbook(), fill);
    }

    static byte[] xls(Consumer<Workbook> fill) {
        return saved(new HSSFWorkbook(), fill);
    }

    static byte[] saved(Workbook made, Consumer<Workbook> fill) {
        try (Workbook workbook = made) {
            fill.accept(workbook);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            workbook.write(out);
            return out.toByteArray();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static byte[] zip(Map<String, String> parts) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return out.toByteArray();
    }

    /** The parts of the smallest workbook, with this sheet and these further parts. */
    static Map<String, String> parts(String sheetXml, String... namesAndXml) {
        String office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("_rels/.rels", rels(office, "officeDocument", "xl/workbook.xml"));
        parts.put(
                "xl/workbook.xml",
                "<workbook xmlns:r='" + office
                        + "'><sheets><sheet name='Log' sheetId='1' r:id='rId1'/></sheets></workbook>");
        parts.put(
                "xl/_rels/workbook.xml.rels",
                rels(
                        office,
                        "worksheet",
                        "worksheets/sheet1.xml",
                        "sharedStrings",
                        "sharedStrings.xml",
                        "styles",
                        "styles.xml"));
        parts.put("xl/worksheets/sheet1.xml", "<worksheet xmlns:r='" + office + "'>" + sheetXml + "</worksheet>");
        for (int i = 0; i < namesAndXml.length; i += 2) {
            parts.put(namesAndXml[i], namesAndXml[i + 1]);
        }
        return parts;
    }

    static String rels(String office, String... typesAndTargets) {
        StringBuilder xml = new StringBuilder("<Relationships>");
        for (int i = 0; i < typesAndTargets.length; i += 2) {
            xml.append("<Relationship Id='rId")
                    .append(i / 2 + 1)
                    .append("' Type='")
                    .append(office)
                    .append('/')
                    .append(typesAndTargets[i]);
            xml.append("' Target='").append(typesAndTargets[i + 1]).append("'/>");
        }
        return xml.append("</Relationships>").toString();
    }

    /** {@code A1=[text] B1=[8.2]}: address and shown text of every cell of a book's only sheet. */
    static String shown(Book book) {
        return shown(book.grids().get(0));
    }

    static String shown(Grid grid) {
        return grid.cells().stream().map(Made::shown).collect(Collectors.joining(" "));
    }

    private static String shown(Cell cell) {
        return cell.at() + "=[" + cell.shown() + "]";
    }

    static Cell cell(Book book, String address) {
        soundings.sheet.CellRef at = soundings.sheet.CellRef.parse(address);
        return book.grids().get(0).findCell(at.row(), at.column()).orElseThrow();
    }
}
