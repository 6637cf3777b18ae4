package soundings.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import soundings.sheet.Book;

/** Any workbook file as a {@link Book}. */
public final class WorkbookReader {
    private static final Set<String> WORKBOOK_ENDINGS =
            Set.of("xlsx", "xlsm", "xltx", "xltm", "xls", "xlt", "xlsb", "ods", "ots");

    private WorkbookReader() {}

    /**
     * Reads the whole file once, closes it, and takes it apart in memory.
     *
     * @param password for a workbook that has one; ignored by all others
     * @throws UnreadableWorkbook for anything that is no workbook, is damaged, locked, or asks for too much
     */
    public static Book read(Path file, Optional<String> password) {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        try {
            return read(name, bytes(file), password);
        } catch (Refusal refusal) {
            throw refusal.naming(name);
        } catch (OutOfMemoryError | StackOverflowError tooMuch) {
            throw Refusal.tooLarge("reading it takes more memory than there is").naming(name);
        } catch (RuntimeException unforeseen) {
            throw Refusal.damaged("it breaks off the reading with "
                            + unforeseen.getClass().getSimpleName())
                    .naming(name);
        }
    }

    /** Whether a file may be locked by a password: only a compound file can. */
    public static boolean mayBeLocked(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return FileKind.of(bytes.readNBytes(FileKind.LOOKED_AT)) == FileKind.COMPOUND;
        }
    }

    private static byte[] bytes(Path file) {
        if (Files.isDirectory(file)) {
            throw Refusal.because("is a folder, not a workbook. Name a workbook in it.");
        }
        try {
            if (Files.size(file) > Limits.FILE_BYTES) {
                throw Refusal.tooLarge("it has " + (Files.size(file) >> 20) + " MB");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            throw Refusal.because("is not there. Check the name and the folder.");
        } catch (AccessDeniedException denied) {
            throw Refusal.because(
                    "may not be read by you. Check its permissions, or whether another program keeps it locked.");
        } catch (IOException failed) {
            throw Refusal.because(
                    "cannot be read from the disk. Check that the drive is there and no other program keeps the file locked.");
        }
    }

    private static Book read(String name, byte[] file, Optional<String> password) {
        return switch (FileKind.of(file)) {
            case EMPTY ->
                throw Refusal.because("is empty. Open the log in your spreadsheet program and save it again.");
            case ZIP -> readPackage(name, file);
            case COMPOUND -> CompoundFile.read(name, file, password);
            case OLDER_BINARY ->
                throw Refusal.because(
                        "was written by a spreadsheet program of before 1995. Save it as .xlsx and try again.");
            case HTML -> throw notAWorkbook("a web page");
            case XML -> throw notAWorkbook("an XML document");
            case PDF -> throw notAWorkbook("a PDF document");
            case BINARY -> throw notAWorkbook("something else");
            case TEXT -> readText(name, file);
        };
    }

    static Refusal beforeCompoundFiles() {
        return Refusal.because(
                "was saved in a form of the early 1990s that is not read. Save it as .xlsx and try again.");
    }

    static Refusal notAWorkbook(String what) {
        return Refusal.because(
                "is not a workbook but " + what + ". Save the log as .xlsx, .xls, .ods or .csv and try again.");
    }

    static Book readPackage(String name, byte[] file) {
        ZipParts parts = ZipParts.of(file);
        if (OdsReader.isSpreadsheet(parts)) {
            return OdsReader.read(name, parts);
        }
        if (parts.has("xl/workbook.bin")) {
            throw Refusal.because("is a workbook in binary form (.xlsb). Save it as .xlsx and try again.");
        }
        return XlsxReader.findWorkbookPart(parts)
                .map(part -> XlsxReader.read(name, parts, part))
                .orElseThrow(() -> notAWorkbook("a zip archive or a document of another kind"));
    }

    private static Book readText(String name, byte[] file) {
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (WORKBOOK_ENDINGS.contains(ending)) {
            throw Refusal.because(
                    "is not a workbook but plain text, in spite of its name. If it is a table, give it a name that ends in .csv.");
        }
        return CsvReading.read(name, file);
    }
}
