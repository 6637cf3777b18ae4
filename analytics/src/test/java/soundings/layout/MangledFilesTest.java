package soundings.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import soundings.setup.Settings;
import soundings.setup.Setup;
import soundings.sheet.Book;
import soundings.workbook.UnreadableWorkbook;
import soundings.workbook.WorkbookReader;

/** Damaged files are refused or read as far as they go: nothing else is thrown, and it does not take long. */
class MangledFilesTest {
    private static final Path SAMPLES = Path.of("..", "sample-workbooks");
    private static final List<String> SCRAPS = List.of(
            "<", ">", "\"", "&", "/", "-1", "2147483648", "r=\"XFD1048577\"", "é", "\u0000", "1e999", ";", "\n");

    @TempDir
    Path folder;

    static Stream<Long> seeds() {
        return Stream.iterate(1L, n -> n + 1).limit(12);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @Timeout(20)
    void a_workbook_with_mangled_parts_is_read_or_refused(long seed) throws IOException {
        Path copy = folder.resolve("log.xlsx");
        try (ZipFile sample =
                new ZipFile(SAMPLES.resolve("one line a test.xlsx").toFile())) {
            Files.write(copy, mangled(sample, new Random(seed)));
        }

        readOrRefused(copy);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    @Timeout(20)
    void a_text_file_with_mangled_bytes_is_read_or_refused(long seed) throws IOException {
        Path copy = folder.resolve("log.csv");
        Files.write(copy, mangled(Files.readAllBytes(SAMPLES.resolve("exchange school.csv")), new Random(seed)));

        readOrRefused(copy);
    }

    private static void readOrRefused(Path file) {
        Optional<Book> book = book(file);
        book.ifPresent(b -> assertThat(Layouts.interpret(
                                b, Sheets.REFERENCE, Setup.EMPTY, new Settings(Sheets.TODAY, Optional.empty()))
                        .tanks())
                .isNotNull());
    }

    private static Optional<Book> book(Path file) {
        try {
            return Optional.of(WorkbookReader.read(file, Optional.empty()));
        } catch (UnreadableWorkbook refused) {
            assertThat(refused).hasMessageMatching("(?s).*[a-z]{3}.*");
            return Optional.empty();
        }
    }

    private static byte[] mangled(ZipFile sample, Random random) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (ZipEntry part : sample.stream().map(ZipEntry.class::cast).toList()) {
                byte[] whole = sample.getInputStream(part).readAllBytes();
                zip.putNextEntry(new ZipEntry(part.getName()));
                zip.write(random.nextInt(3) == 0 ? mangled(whole, random) : whole);
                zip.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    /** Some bytes changed, a stretch left out or doubled, scraps put in. */
    private static byte[] mangled(byte[] whole, Random random) {
        StringBuilder text = new StringBuilder(new String(whole, StandardCharsets.ISO_8859_1));
        for (int i = random.nextInt(6) + 1; i > 0 && text.length() > 2; i--) {
            int at = random.nextInt(text.length());
            int to = Math.min(text.length(), at + random.nextInt(40));
            switch (random.nextInt(4)) {
                case 0 -> text.setCharAt(at, (char) random.nextInt(256));
                case 1 -> text.delete(at, to);
                case 2 -> text.insert(at, text.substring(at, to));
                default -> text.insert(at, SCRAPS.get(random.nextInt(SCRAPS.size())));
            }
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }
}
