package soundings.workbook;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** In what encoding a text file was saved: by its byte order mark, else by what its bytes allow. */
final class Charsets {
    static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    private static final int LOOKED_AT = 1 << 16;

    private Charsets() {}

    /** The whole file as text, without byte order mark. */
    static String decode(byte[] file, Charset charset) {
        String text = new String(file, charset);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    static Charset of(byte[] file) {
        if (startsWith(file, 0xEF, 0xBB, 0xBF)) {
            return StandardCharsets.UTF_8;
        }
        if (startsWith(file, 0xFF, 0xFE)) {
            return StandardCharsets.UTF_16LE;
        }
        if (startsWith(file, 0xFE, 0xFF)) {
            return StandardCharsets.UTF_16BE;
        }
        int zeroHalf = zeroHalf(file);
        if (zeroHalf >= 0) {
            return zeroHalf == 1 ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
        }
        return looksLikeUtf8(file) ? StandardCharsets.UTF_8 : WINDOWS_1252;
    }

    private static boolean startsWith(byte[] file, int... bytes) {
        for (int i = 0; i < bytes.length; i++) {
            if (i >= file.length || (file[i] & 0xFF) != bytes[i]) {
                return false;
            }
        }
        return true;
    }

    /** Neither text of one byte a character nor UTF-16: control characters that no text holds. */
    static boolean isBinary(byte[] file) {
        if (startsWith(file, 0xFF, 0xFE) || startsWith(file, 0xFE, 0xFF) || zeroHalf(file) >= 0) {
            return false;
        }
        int odd = 0;
        int length = Math.min(file.length, LOOKED_AT);
        for (int i = 0; i < length; i++) {
            int b = file[i] & 0xFF;
            if (b == 0) {
                return true;
            }
            odd += b < ' ' && b != '\t' && b != '\n' && b != '\r' && b != '\f' ? 1 : 0;
        }
        return odd * 100 > length;
    }

    /**
     * UTF-16 of mostly western text has a zero in every other byte. Which half is zero: 0 or 1, or -1 for neither.
     */
    private static int zeroHalf(byte[] file) {
        int length = Math.min(file.length, LOOKED_AT) & ~1;
        int[] zeros = new int[2];
        for (int i = 0; i < length; i++) {
            zeros[i & 1] += file[i] == 0 ? 1 : 0;
        }
        int mostly = length / 2 * 7 / 10;
        if (length < 4 || Math.min(zeros[0], zeros[1]) > 0) {
            return -1;
        }
        return zeros[1] > mostly ? 1 : zeros[0] > mostly ? 0 : -1;
    }

    /** More good multi-byte characters than bad bytes: one damaged byte must not turn a whole file into another encoding. */
    private static boolean looksLikeUtf8(byte[] file) {
        long good = 0;
        long bad = 0;
        int at = 0;
        while (at < file.length) {
            int length = sequence(file, at);
            good += length > 1 ? 1 : 0;
            bad += length == 0 ? 1 : 0;
            at += Math.max(1, length);
        }
        return bad == 0 || good > 10 * bad;
    }

    /** Bytes of the UTF-8 character at this place (RFC 3629 §4), 0 where there is none. */
    private static int sequence(byte[] file, int at) {
        int first = file[at] & 0xFF;
        int length = first < 0x80
                ? 1
                : first >= 0xC2 && first < 0xE0
                        ? 2
                        : first >= 0xE0 && first < 0xF0 ? 3 : first >= 0xF0 && first < 0xF5 ? 4 : 0;
        if (length == 0 || at + length > file.length) {
            return 0;
        }
        for (int i = 1; i < length; i++) {
            if ((file[at + i] & 0xC0) != 0x80) {
                return 0;
            }
        }
        return length;
    }
}
