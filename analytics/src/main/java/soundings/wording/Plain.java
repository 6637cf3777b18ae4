package soundings.wording;

import java.text.Normalizer;

/** Text with its odd characters replaced one by one, so that a place in it is the same place in the original. */
final class Plain {
    private Plain() {}

    /**
     * Lower case without accents; full-width and other digits, spaces, dashes, quotes in their plain form. The length
     * stays. Superscript digits stay as they are: behind a number they are footnote marks, not figures.
     */
    static String of(String text) {
        char[] chars = text.toCharArray();
        for (int i = 0; i < chars.length; i++) {
            chars[i] = plain(chars[i]);
        }
        return new String(chars);
    }

    private static char plain(char c) {
        if (c < 0x80) {
            return c >= 'A' && c <= 'Z' ? (char) (c + 32) : c;
        }
        if (c >= '！' && c <= '～') {
            return plain((char) (c - '！' + '!'));
        }
        if (c >= '₀' && c <= '₉') {
            return (char) (c - '₀' + '0');
        }
        if (Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER) {
            return (char) ('0' + Character.digit(c, 10));
        }
        char symbol = symbol(c);
        return symbol == c ? letter(c) : symbol;
    }

    private static char symbol(char c) {
        if (Character.isSpaceChar(c)) {
            return c == '\u2028' || c == '\u2029' ? '\n' : ' ';
        }
        return switch (c) {
            case '\u200b', '\u2060', '\ufeff', '\u0085' -> ' ';
            case '‐', '‑', '‒', '–', '—', '―', '−', '﹣', '⁻' -> '-';
            case '“', '”', '„', '‟', '″', '〃', '«', '»', '¨' -> '"';
            case '‘', '’', '‚', '‛', '′', '´', 'ʼ' -> '\'';
            case '×', '✕', '✖' -> 'x';
            case '⁄', '∕', '÷' -> '/';
            case '≈', '∼', '≃', '≅', '～' -> '~';
            case '·', '⋅', '∙' -> '·';
            case 'µ', 'μ' -> 'u';
            case 'º', '˚', '℃' -> '°';
            case '٫' -> '.';
            case '٬' -> '\'';
            default -> c;
        };
    }

    private static char letter(char c) {
        if (!Character.isLetter(c)) {
            return c;
        }
        char lower = Character.toLowerCase(c);
        String apart = Normalizer.normalize(String.valueOf(lower), Normalizer.Form.NFD);
        boolean accented = apart.length() > 1 && Character.getType(apart.charAt(1)) == Character.NON_SPACING_MARK;
        return accented ? apart.charAt(0) : lower;
    }
}
