package soundings.template;

import java.io.IOException;
import java.io.Writer;

/** Keeps what is written, up to a number of characters. */
final class BoundedWriter extends Writer {
    private final StringBuilder text = new StringBuilder();
    private final int limit;

    BoundedWriter(int limit) {
        this.limit = limit;
    }

    @Override
    public void write(char[] chars, int from, int length) throws IOException {
        if (text.length() + length > limit) {
            throw new TooLong();
        }
        text.append(chars, from, length);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}

    @Override
    public String toString() {
        return text.toString();
    }

    /** The template printed more than a report can hold. */
    static final class TooLong extends IOException {
        private static final long serialVersionUID = 1L;
    }
}
