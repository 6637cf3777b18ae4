package soundings.xlsx;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Workbooks of the same content as the same bytes: no clock in the file, neither in its properties nor in the zip. */
public final class SameBytes {
    /** The first moment a zip entry can tell. */
    private static final LocalDateTime ZIP_EPOCH = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SameBytes() {}

    /** States who made the workbook and takes the clock out of its properties. */
    public static void nameOn(XSSFWorkbook workbook, String title) {
        POIXMLProperties.CoreProperties core = workbook.getProperties().getCoreProperties();
        core.setCreator("Soundings");
        core.setTitle(CellText.holdable(title));
        Optional<Date> fixed = Optional.of(Date.from(ZIP_EPOCH.toInstant(ZoneOffset.UTC)));
        core.setCreated(fixed);
        core.setModified(fixed);
        workbook.getProperties().getExtendedProperties().setApplication("Soundings");
    }

    /** Packs a written workbook anew, every entry with the same time. */
    public static void repack(byte[] written, OutputStream out) throws IOException {
        repack(written, Map.of(), out);
    }

    /** @param rows what goes into sheets that were written without rows, by the name of their entry */
    static void repack(byte[] written, Map<String, SheetRows> rows, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(written))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(ZIP_EPOCH);
                zip.putNextEntry(same);
                copy(in, Optional.ofNullable(rows.get(entry.getName())), zip);
                zip.closeEntry();
            }
        }
        zip.finish();
    }

    private static void copy(ZipInputStream in, Optional<SheetRows> rows, ZipOutputStream zip) throws IOException {
        if (rows.isEmpty()) {
            in.transferTo(zip);
        } else {
            String frame = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            zip.write(rows.get().within(frame).getBytes(StandardCharsets.UTF_8));
        }
    }
}
