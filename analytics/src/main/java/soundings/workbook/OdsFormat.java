package soundings.workbook;

import javax.xml.stream.XMLStreamConstants;

/** An OpenDocument data style (part 3, §16.29) written as the format code that shows the same. */
final class OdsFormat {
    private static final int MOST_PLACES = 30;

    private OdsFormat() {}

    /** Reads to the end of the data style just started. */
    static String read(Xml xml) {
        boolean overflowing = xml.attribute("truncate-on-overflow", "true").equals("false");
        StringBuilder code = new StringBuilder();
        int outer = xml.depth();
        while (xml.depth() >= outer) {
            if (xml.next() == XMLStreamConstants.START_ELEMENT) {
                code.append(token(xml, overflowing));
            }
        }
        return code.isEmpty() ? "General" : code.toString();
    }

    private static String token(Xml xml, boolean overflowing) {
        boolean wide = xml.attribute("style", "short").equals("long");
        return switch (xml.name()) {
            case "year" -> wide ? "yyyy" : "yy";
            case "month" -> xml.flag("textual") ? wide ? "mmmm" : "mmm" : wide ? "mm" : "m";
            case "day" -> wide ? "dd" : "d";
            case "day-of-week" -> wide ? "dddd" : "ddd";
            case "hours" -> overflowing ? "[h]" : wide ? "hh" : "h";
            case "minutes" -> wide ? "mm" : "m";
            case "seconds" -> wide ? "ss" : "s";
            case "am-pm" -> "AM/PM";
            case "number" -> number(xml);
            case "scientific-number" -> number(xml) + "E+" + "0".repeat(places(xml, "min-exponent-digits", 2));
            case "fraction" -> "# ?/?";
            case "text-content" -> "@";
            case "text", "currency-symbol" -> literal(xml.text());
            default -> "";
        };
    }

    private static String number(Xml xml) {
        int most = places(xml, "decimal-places", -1);
        int least = places(xml, "min-decimal-places", most);
        String whole = "0".repeat(places(xml, "min-integer-digits", 1));
        String grouped =
                xml.flag("grouping") ? "#,##" + (whole.isEmpty() ? "#" : whole) : whole.isEmpty() ? "#" : whole;
        if (most < 0) {
            return grouped.equals("0") ? "General" : grouped;
        }
        return most == 0
                ? grouped
                : grouped + "." + "0".repeat(Math.min(least, most)) + "#".repeat(Math.max(0, most - least));
    }

    private static int places(Xml xml, String attribute, int otherwise) {
        return Math.min(MOST_PLACES, xml.number(attribute, otherwise));
    }

    /** A percent sign multiplies by a hundred, so it stands bare; everything else is quoted. */
    private static String literal(String text) {
        if (text.strip().equals("%")) {
            return "%";
        }
        return text.isEmpty() ? "" : "\"" + text.replace("\"", "") + "\"";
    }
}
