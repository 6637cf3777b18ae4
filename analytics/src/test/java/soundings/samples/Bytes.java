package soundings.samples;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook's bytes, the same at every run: fixed entry times, fixed creation date. */
final class Bytes {
    private static final LocalDateTime FIXED = LocalDateTime.of(2026, 1, 1, 0, 0);

    private Bytes() {}

    static byte[] of(Workbook workbook) {
        try (workbook) {
            if (workbook instanceof XSSFWorkbook xssf) {
                xssf.getProperties()
                        .getCoreProperties()
                        .setCreated(
                                java.util.Optional.of(java.util.Date.from(FIXED.toInstant(java.time.ZoneOffset.UTC))));
            }
            ByteArrayOutputStream raw = new ByteArrayOutputStream();
            workbook.write(raw);
            return rezipped(raw.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] rezipped(byte[] raw) throws IOException {
        ByteArrayOutputStream fixed = new ByteArrayOutputStream();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(raw));
                ZipOutputStream out = new ZipOutputStream(fixed)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry same = new ZipEntry(entry.getName());
                same.setTimeLocal(FIXED);
                out.putNextEntry(same);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return fixed.toByteArray();
    }
}
