package soundings.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.security.GeneralSecurityException;
import java.util.Optional;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.record.crypto.Biff8EncryptionKey;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import soundings.sheet.Book;

/** A compound file: a binary workbook (.xls), or an OOXML package locked with a password. Read by POI, from memory. */
final class CompoundFile {
    /** Rounds of hashing that a password costs; programs write 100,000. More would only keep the machine busy. */
    private static final int MOST_ROUNDS = 2_000_000;

    private static final int MOST_BYTES = 64 << 20;

    private CompoundFile() {}

    static Book read(String name, byte[] file, Optional<String> password) {
        if (file.length > MOST_BYTES) {
            throw Refusal.tooLarge("it is a binary workbook of " + (file.length >> 20) + " MB");
        }
        try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(file))) {
            if (files.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
                return WorkbookReader.readPackage(name, decrypted(files, password));
            }
            return readBinary(name, files, password);
        } catch (IOException | GeneralSecurityException broken) {
            throw Refusal.damaged("its compound file does not open");
        }
    }

    private static byte[] decrypted(POIFSFileSystem files, Optional<String> password)
            throws IOException, GeneralSecurityException {
        EncryptionInfo info = new EncryptionInfo(files);
        if (info.getVerifier().getSpinCount() > MOST_ROUNDS) {
            throw Refusal.tooLarge("its password asks for " + info.getVerifier().getSpinCount() + " rounds of hashing");
        }
        Decryptor decryptor = info.getDecryptor();
        if (!decryptor.verifyPassword(password.orElse(Decryptor.DEFAULT_PASSWORD))) {
            throw password(password);
        }
        try (InputStream open = decryptor.getDataStream(files)) {
            return open.readNBytes(MOST_BYTES);
        }
    }

    private static Refusal password(Optional<String> given) {
        return Refusal.password(
                given.isPresent()
                        ? "has a password, and it is not the one given. Check capitals and keyboard, and try again."
                        : "has a password. Give it with the command, or save a copy without one.");
    }

    private static Book readBinary(String name, POIFSFileSystem files, Optional<String> password) throws IOException {
        DirectoryNode root = files.getRoot();
        if (!root.hasEntryCaseInsensitive("Workbook") && !root.hasEntryCaseInsensitive("Book")) {
            throw WorkbookReader.notAWorkbook("a document of another kind");
        }
        Biff8EncryptionKey.setCurrentUserPassword(password.orElse(null));
        try (HSSFWorkbook workbook = new HSSFWorkbook(files)) {
            return XlsReading.of(name, workbook, root.hasEntryCaseInsensitive("_VBA_PROJECT_CUR"));
        } catch (EncryptedDocumentException locked) {
            throw password(password);
        } catch (OldExcelFormatException old) {
            throw WorkbookReader.beforeCompoundFiles();
        } finally {
            Biff8EncryptionKey.setCurrentUserPassword(null);
        }
    }
}
