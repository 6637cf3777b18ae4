package soundings.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;

/**
 * The parts of a zip package held in memory (PKWARE APPNOTE 6.3: end record, central directory, local headers, zip64 extras).
 * Names are compared without regard to case, leading slash or slash direction, as some programs write them.
 */
final class ZipParts {
    private static final int END = 0x06054b50;
    private static final int END_SIZE = 22;
    private static final int END64 = 0x06064b50;
    private static final int END64_LOCATOR = 0x07064b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int CENTRAL_SIZE = 46;
    private static final int LOCAL_SIZE = 30;
    private static final long MAX32 = 0xFFFFFFFFL;
    private static final int ENCRYPTED = 1;

    private final byte[] file;
    private final Map<String, Entry> entries = new HashMap<>();
    private long inflated;

    private record Entry(String name, int method, boolean encrypted, long crc, long packed, long at) {}

    /** Raw deflate; gives the native memory back when closed. */
    private static final class Inflating extends InflaterInputStream {
        Inflating(InputStream raw) {
            super(raw, new Inflater(true), 1 << 14);
        }

        @Override
        public void close() throws IOException {
            super.close();
            inf.end();
        }
    }

    private record Directory(long at, long size, long count) {}

    private ZipParts(byte[] file) {
        this.file = file;
    }

    static ZipParts of(byte[] file) {
        ZipParts parts = new ZipParts(file);
        try {
            parts.readDirectory();
        } catch (IndexOutOfBoundsException | IllegalArgumentException cutOff) {
            throw Refusal.damaged("its list of parts cannot be read");
        }
        return parts;
    }

    Set<String> names() {
        return entries.keySet();
    }

    boolean has(String name) {
        return entries.containsKey(key(name));
    }

    static String key(String name) {
        String slashed = name.replace('\\', '/').toLowerCase(Locale.ROOT);
        return slashed.startsWith("/") ? slashed.substring(1) : slashed;
    }

    Optional<InputStream> findPart(String name) {
        return Optional.ofNullable(entries.get(key(name))).map(this::open);
    }

    InputStream part(String name) {
        return findPart(name).orElseThrow(() -> Refusal.damaged("its part " + name + " is missing"));
    }

    private InputStream open(Entry entry) {
        if (entry.encrypted()) {
            throw Refusal.because("has parts locked with a zip password. Save it without one and try again.");
        }
        ByteBuffer local = at(entry.at());
        long start = entry.at() + LOCAL_SIZE + u16(local, 26) + u16(local, 28);
        long length = Math.min(entry.packed(), file.length - start);
        if (start < 0 || length < 0) {
            throw Refusal.damaged("its part " + entry.name() + " lies outside the file");
        }
        InputStream raw = new ByteArrayInputStream(file, (int) start, (int) length);
        return new PartStream(unpacked(entry, raw), entry.name(), entry.crc(), this::count);
    }

    private static InputStream unpacked(Entry entry, InputStream raw) {
        return switch (entry.method()) {
            case 0 -> raw;
            case 8 -> new Inflating(raw);
            default -> throw Refusal.damaged("its part " + entry.name() + " is packed in an unknown way");
        };
    }

    private void count(long bytes) {
        inflated += bytes;
        boolean swollen = inflated > Limits.RATIO_FROM_BYTES && inflated / Limits.RATIO > file.length;
        if (swollen || inflated > Limits.ALL_BYTES) {
            throw Refusal.tooLarge("it unpacks to more than " + (inflated >> 20) + " MB from a file of "
                    + (file.length >> 10) + " kB");
        }
    }

    private void readDirectory() {
        int end = findEnd();
        Directory directory = directory(end);
        if (directory.count() > Limits.PARTS) {
            throw Refusal.tooLarge("it has " + directory.count() + " parts");
        }
        long shift = Math.max(0, (directory.size() == 0 ? end : shiftEnd(end)) - directory.size() - directory.at());
        long at = directory.at() + shift;
        for (long i = 0; i < directory.count(); i++) {
            at = readEntry(at, shift);
        }
    }

    private int shiftEnd(int end) {
        boolean zip64 = end >= 20 && at(end - 20).getInt(0) == END64_LOCATOR;
        return zip64 ? end - 20 - 56 : end;
    }

    private int findEnd() {
        for (int at = file.length - END_SIZE; at >= Math.max(0, file.length - END_SIZE - 0xFFFF); at--) {
            if (file[at] == 'P' && at(at).getInt(0) == END) {
                return at;
            }
        }
        throw Refusal.damaged("the end of the file is missing");
    }

    private Directory directory(int end) {
        ByteBuffer record = at(end);
        if (end >= 20 && at(end - 20).getInt(0) == END64_LOCATOR) {
            ByteBuffer large = at(at(end - 20).getLong(8));
            if (large.getInt(0) == END64) {
                return new Directory(large.getLong(48), large.getLong(40), large.getLong(32));
            }
        }
        return new Directory(u32(record, 16), u32(record, 12), u16(record, 10));
    }

    private long readEntry(long at, long shift) {
        ByteBuffer record = at(at);
        if (record.getInt(0) != CENTRAL) {
            throw Refusal.damaged("its list of parts is broken");
        }
        int nameLength = u16(record, 28);
        int extraLength = u16(record, 30);
        byte[] name = new byte[nameLength];
        record.get(CENTRAL_SIZE, name);
        long[] sizes = zip64(record, CENTRAL_SIZE + nameLength, extraLength);
        String text = new String(name, StandardCharsets.UTF_8);
        boolean encrypted = (u16(record, 8) & ENCRYPTED) != 0;
        entries.putIfAbsent(
                key(text), new Entry(text, u16(record, 10), encrypted, u32(record, 16), sizes[0], sizes[1] + shift));
        return at + CENTRAL_SIZE + nameLength + extraLength + u16(record, 32);
    }

    /** Packed size and local header offset, from the zip64 extra field (id 1) where the 32-bit ones are full. */
    private static long[] zip64(ByteBuffer record, int from, int length) {
        long[] sizes = {u32(record, 20), u32(record, 42)};
        int at = from;
        while (at + 4 <= from + length) {
            int size = u16(record, at + 2);
            if (u16(record, at) == 1) {
                int next = at + 4 + (u32(record, 24) == MAX32 ? 8 : 0);
                if (sizes[0] == MAX32) {
                    sizes[0] = record.getLong(next);
                    next += 8;
                }
                if (sizes[1] == MAX32) {
                    sizes[1] = record.getLong(next);
                }
            }
            at += 4 + size;
        }
        return sizes;
    }

    private ByteBuffer at(long position) {
        if (position < 0 || position > file.length) {
            throw new IndexOutOfBoundsException("outside the file");
        }
        return ByteBuffer.wrap(file, (int) position, file.length - (int) position)
                .slice()
                .order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int u16(ByteBuffer buffer, int at) {
        return buffer.getShort(at) & 0xFFFF;
    }

    private static long u32(ByteBuffer buffer, int at) {
        return buffer.getInt(at) & MAX32;
    }
}
