package soundings.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** SVG as text: escaped, one decimal, nothing that depends on the machine's language. */
final class Svg {
    private Svg() {}

    static String text(String words) {
        StringBuilder out = new StringBuilder(words.length() + 8);
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(Character.isISOControl(c) ? ' ' : c);
            }
        }
        return out.toString();
    }

    /** One decimal, no trailing zero: a tenth of a pixel is finer than any screen. */
    static String at(double coordinate) {
        BigDecimal rounded = BigDecimal.valueOf(coordinate).setScale(1, RoundingMode.HALF_UP);
        String plain = rounded.toPlainString();
        return plain.endsWith(".0") ? plain.substring(0, plain.length() - 2) : plain;
    }

    static String open(String id, double width, double height, String label) {
        return "<svg id=\"" + text(id) + "\" class=\"chart\" viewBox=\"0 0 " + at(width) + " " + at(height)
                + "\" role=\"img\" aria-label=\"" + text(label) + "\">";
    }

    static String label(double x, double y, String kind, String words) {
        return "<text x=\"" + at(x) + "\" y=\"" + at(y) + "\" class=\"" + kind + "\">" + text(words) + "</text>";
    }

    static String path(String kind, String d) {
        return d.isEmpty() ? "" : "<path class=\"" + kind + "\" d=\"" + d + "\"/>";
    }

    static String rect(String kind, Box box) {
        return "<rect class=\"" + kind + "\" x=\"" + at(box.left()) + "\" y=\"" + at(box.top()) + "\" width=\""
                + at(box.width()) + "\" height=\"" + at(box.height()) + "\"/>";
    }

    static String title(String words) {
        return "<title>" + text(words) + "</title>";
    }
}
