package soundings.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/** Text in and out of byte streams, always UTF-8. */
final class Text {
    private Text() {}

    static void write(String text, OutputStream out) throws IOException {
        out.write(text.getBytes(StandardCharsets.UTF_8));
    }

    static String of(Outputs.Content content) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            content.to(bytes);
            return bytes.toString(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("memory takes every byte", e);
        }
    }
}
