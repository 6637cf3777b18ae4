package soundings.workbook;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.LongConsumer;
import java.util.zip.CRC32;

/** One part of a package while it inflates: counts what comes out, checks the sum at the end, stops overlong stretches without a tag. */
final class PartStream extends FilterInputStream {
    private final String part;
    private final long expectedCrc;
    private final LongConsumer count;
    private final CRC32 crc = new CRC32();
    private long bytes;
    private long untagged;

    PartStream(InputStream inflated, String part, long expectedCrc, LongConsumer count) {
        super(inflated);
        this.part = part;
        this.expectedCrc = expectedCrc;
        this.count = count;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        int got = super.read(into, from, length);
        if (got < 0) {
            checkSum();
        } else {
            account(into, from, got);
        }
        return got;
    }

    private void checkSum() {
        if (crc.getValue() != expectedCrc) {
            throw Refusal.damaged("the check sum of its part " + part + " is wrong");
        }
    }

    private void account(byte[] into, int from, int got) {
        crc.update(into, from, got);
        bytes += got;
        if (bytes > Limits.PART_BYTES) {
            throw Refusal.tooLarge("its part " + part + " unpacks to more than " + (Limits.PART_BYTES >> 20) + " MB");
        }
        count.accept(got);
        untagged = sinceTag(into, from, got);
        if (untagged > Limits.UNTAGGED_BYTES) {
            throw Refusal.tooLarge(
                    "its part " + part + " holds a single text of more than " + (Limits.UNTAGGED_BYTES >> 10) + " kB");
        }
    }

    private long sinceTag(byte[] into, int from, int got) {
        for (int i = from + got - 1; i >= from; i--) {
            if (into[i] == '<') {
                return (long) from + got - 1 - i;
            }
        }
        return untagged + got;
    }
}
