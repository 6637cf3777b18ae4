package soundings.xlsx;

import java.util.regex.Pattern;

/** Words on their way into a cell: what a workbook cannot hold is taken out, and what a spreadsheet might run is told apart. */
public final class CellText {
    /** ECMA-376 part 1, 18.18.95: the longest text of a cell; one sign is kept for the mark that it was cut. */
    private static final int LONGEST = 32_767;

    private static final Pattern NOT_XML = Pattern.compile("[\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\uFFFE\\uFFFF]");
    /** A half of a surrogate pair without its other half has no place in a file. */
    private static final Pattern HALF =
            Pattern.compile("[\\uD800-\\uDBFF](?![\\uDC00-\\uDFFF])|(?<![\\uD800-\\uDBFF])[\\uDC00-\\uDFFF]");

    private CellText() {}

    /** The text as a cell can hold it. */
    public static String holdable(String text) {
        String clean = plain(text)
                ? text
                : HALF.matcher(NOT_XML.matcher(text).replaceAll("\uFFFD")).replaceAll("\uFFFD");
        return clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST - 1) + "\u2026";
    }

    /** Whether every sign is one that any file can hold; nearly all cells' are. */
    private static boolean plain(String text) {
        return text.chars().allMatch(c -> c >= ' ' && c < Character.MIN_SURROGATE);
    }

    /** Whether a spreadsheet that reads this text from a copy, an export or a paste might take it for a formula. */
    public static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r\uFF1D\uFF0B\uFF0D\uFF20".indexOf(text.charAt(0)) >= 0;
    }
}
