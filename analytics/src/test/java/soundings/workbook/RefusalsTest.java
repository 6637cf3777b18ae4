package soundings.workbook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class RefusalsTest {
    @TempDir
    Path folder;

    private static byte[] small() {
        return Made.xlsx(workbook ->
                workbook.createSheet("Log").createRow(0).createCell(0).setCellValue(8.2));
    }

    static Stream<Arguments> noWorkbooks() {
        byte[] good = small();
        return Stream.of(
                arguments("log.xlsx", new byte[0], "is empty"),
                arguments("log.csv", " \n ".getBytes(UTF_8), "is empty"),
                arguments("log.xlsx", Arrays.copyOf(good, good.length / 2), "is damaged or cut off"),
                arguments("log.xlsx", Arrays.copyOf(good, 10), "is damaged or cut off"),
                arguments("log.xlsx", "date;KH\n1;2\n".getBytes(UTF_8), "plain text"),
                arguments("log.xls", "<html><table><tr><td>8.2</td></tr></table></html>".getBytes(UTF_8), "a web page"),
                arguments("log.xls", "<?xml version='1.0'?><Workbook/>".getBytes(UTF_8), "an XML document"),
                arguments("log.ods", "%PDF-1.7 ...".getBytes(UTF_8), "a PDF document"),
                arguments("log.csv", new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 0, 0, 3}, "not a workbook"),
                arguments("log.xlsx", Made.zip(java.util.Map.of("readme.txt", "hello")), "a zip archive"),
                arguments(
                        "log.xls",
                        new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, 1, 2, 3},
                        "is damaged or cut off"));
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("noWorkbooks")
    void what_is_no_workbook_is_refused_in_one_sentence_that_names_the_file(String name, byte[] bytes, String says) {
        assertThatThrownBy(() -> Made.read(folder, name, bytes))
                .isInstanceOf(UnreadableWorkbook.class)
                .hasMessageContaining("'" + name + "'")
                .hasMessageContaining(says);
    }

    @Test
    void a_missing_file_and_a_folder_are_told_apart() {
        assertThatThrownBy(() -> WorkbookReader.read(folder.resolve("none.xlsx"), Optional.empty()))
                .hasMessageContaining("is not there");
        assertThatThrownBy(() -> WorkbookReader.read(folder, Optional.empty())).hasMessageContaining("is a folder");
    }

    @Test
    void what_a_file_holds_counts_and_not_its_name() {
        assertThat(Made.shown(Made.read(folder, "log.csv", small()))).isEqualTo("A1=[8.2]");
        assertThat(Made.shown(Made.read(folder, "log.xls", small()))).isEqualTo("A1=[8.2]");
    }

    @Test
    void a_flipped_bit_is_noticed() {
        byte[] bytes = Made.zip(Made.parts("<sheetData><row r='1'><c r='A1'><v>8.2</v></c></row></sheetData>"));
        int local = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1).indexOf("xl/worksheets/sheet1.xml");
        bytes[local + 60] ^= 4;

        assertThatThrownBy(() -> Made.read(folder, "log.xlsx", bytes))
                .isInstanceOf(UnreadableWorkbook.class)
                .hasMessageContaining("damaged");
    }

    @Test
    void the_file_is_left_as_it_was() throws IOException {
        Path file = folder.resolve("log.xlsx");
        Files.write(file, small());
        byte[] before = Files.readAllBytes(file);

        WorkbookReader.read(file, Optional.empty());

        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        Files.delete(file);
    }

    @Test
    void a_locked_xlsx_opens_with_its_password_only()
            throws IOException, OpenXML4JException, java.security.GeneralSecurityException {
        byte[] locked = locked("kelp");

        assertThat(Made.shown(Made.read(folder, "log.xlsx", locked, Optional.of("kelp"))))
                .isEqualTo("A1=[8.2]");
        refusesPasswords(locked, "log.xlsx");
    }

    private static byte[] locked(String password)
            throws IOException, OpenXML4JException, java.security.GeneralSecurityException {
        try (POIFSFileSystem files = new POIFSFileSystem();
                OPCPackage open = OPCPackage.open(new java.io.ByteArrayInputStream(small()))) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword(password);
            try (OutputStream out = encryptor.getDataStream(files)) {
                open.save(out);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            files.writeFilesystem(bytes);
            return bytes.toByteArray();
        }
    }

    @Test
    void a_locked_xls_opens_with_its_password_only() {
        Biff8EncryptionKey.setCurrentUserPassword("kelp");
        byte[] locked = Made.xls(workbook ->
                workbook.createSheet("Log").createRow(0).createCell(0).setCellValue(8.2));
        Biff8EncryptionKey.setCurrentUserPassword(null);

        assertThat(Made.shown(Made.read(folder, "log.xls", locked, Optional.of("kelp"))))
                .isEqualTo("A1=[8.2]");
        refusesPasswords(locked, "log.xls");
    }

    private void refusesPasswords(byte[] locked, String name) {
        assertThatThrownBy(() -> Made.read(folder, name, locked)).hasMessageContaining("has a password. Give it");
        assertThatThrownBy(() -> Made.read(folder, name, locked, Optional.of("coral")))
                .isInstanceOfSatisfying(
                        UnreadableWorkbook.class,
                        refused -> assertThat(refused.passwordWanted()).isTrue())
                .hasMessageContaining("not the one given");
    }
}
