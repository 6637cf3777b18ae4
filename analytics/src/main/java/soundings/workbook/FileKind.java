package soundings.workbook;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What a file holds, told by its first bytes. */
enum FileKind {
    EMPTY,
    ZIP,
    /** The compound file of the older binary workbooks, and of workbooks with a password. */
    COMPOUND,
    /** A binary workbook of the years before compound files. */
    OLDER_BINARY,
    HTML,
    XML,
    PDF,
    BINARY,
    TEXT;

    /** So many bytes from the start tell it. */
    static final int LOOKED_AT = 4096;

    static FileKind of(byte[] file) {
        if (file.length == 0) {
            return EMPTY;
        }
        if (startsWith(file, 'P', 'K', 3, 4) || startsWith(file, 'P', 'K', 5, 6)) {
            return ZIP;
        }
        if (startsWith(file, 0xD0, 0xCF, 0x11, 0xE0)) {
            return COMPOUND;
        }
        if (startsWith(file, 0x09, 0x08) || startsWith(file, 0x09, 0x04) || startsWith(file, 0x09, 0x02)) {
            return OLDER_BINARY;
        }
        return Charsets.isBinary(file) ? BINARY : ofText(head(file));
    }

    private static FileKind ofText(String head) {
        if (head.isBlank()) {
            return EMPTY;
        }
        if (head.startsWith("%pdf-")) {
            return PDF;
        }
        if (head.startsWith("<!doctype html")
                || head.startsWith("<html")
                || head.contains("<html")
                || head.startsWith("<table")) {
            return HTML;
        }
        return head.startsWith("<?xml") ? XML : TEXT;
    }

    /** The beginning without byte order mark, zero bytes (of UTF-16) and leading blanks, in small letters. */
    private static String head(byte[] file) {
        return new String(file, 0, Math.min(file.length, LOOKED_AT), StandardCharsets.ISO_8859_1)
                .replaceAll("^(\u00EF\u00BB\u00BF|\u00FF\u00FE|\u00FE\u00FF)", "")
                .replace("\0", "")
                .strip()
                .toLowerCase(Locale.ROOT);
    }

    private static boolean startsWith(byte[] file, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= file.length || (file[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
