package soundings.template;

import freemarker.core.CommonMarkupOutputFormat;
import freemarker.core.CommonTemplateMarkupOutputModel;
import java.io.IOException;
import java.io.Writer;
import org.jspecify.annotations.Nullable;

/**
 * Markdown as an output format: whatever a value holds is printed so that it reads as that text and nothing else.
 * Every ASCII punctuation mark gets a backslash (CommonMark 0.31.2, section 2.4), white space of any kind becomes one
 * space so that no line can begin inside a value, control characters go.
 */
final class MarkdownFormat extends CommonMarkupOutputFormat<MarkdownFormat.Markdown> {
    static final MarkdownFormat INSTANCE = new MarkdownFormat();
    private static final String PUNCTUATION = "!\"#$%&'()*+,-./:;<=>?@[\\]^_`{|}~";

    private MarkdownFormat() {}

    static String escape(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        boolean space = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean blank = Character.isWhitespace(c) || Character.isSpaceChar(c);
            if (blank && !space) {
                out.append(' ');
            } else if (!blank && !Character.isISOControl(c)) {
                out.append(PUNCTUATION.indexOf(c) < 0 ? "" : "\\").append(c);
            }
            space = blank;
        }
        return out.toString();
    }

    @Override
    public String getName() {
        return "Markdown";
    }

    @Override
    public String getMimeType() {
        return "text/markdown";
    }

    @Override
    public void output(String textToEscape, Writer out) throws IOException {
        out.write(escape(textToEscape));
    }

    @Override
    public String escapePlainText(String plainText) {
        return escape(plainText);
    }

    @Override
    public boolean isLegacyBuiltInBypassed(String builtInName) {
        return false;
    }

    @Override
    protected Markdown newTemplateMarkupOutputModel(@Nullable String plainText, @Nullable String markup) {
        return new Markdown(plainText, markup);
    }

    /** A value already escaped. */
    static final class Markdown extends CommonTemplateMarkupOutputModel<Markdown> {
        Markdown(@Nullable String plainText, @Nullable String markup) {
            super(plainText, markup);
        }

        @Override
        public MarkdownFormat getOutputFormat() {
            return INSTANCE;
        }
    }
}
