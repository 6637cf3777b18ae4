package soundings.workbook;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The styles of an OpenDocument spreadsheet by name: cell styles with their parents, data styles as format codes. */
final class OdsStyles {
    private static final int MOST_PARENTS = 20;

    private final Map<String, Named> cellStyles = new HashMap<>();
    private final Map<String, String> formats = new HashMap<>();
    private final Set<String> struckSpans = new HashSet<>();
    private final Set<String> hiddenTables = new HashSet<>();
    private final Map<String, Style> resolved = new HashMap<>();
    private boolean from1904;

    /** A cell style as written: what it leaves open, its parent says. */
    private record Named(String parent, String dataStyle, Optional<Boolean> bold, Optional<Boolean> struck) {
        static final Named DEFAULT = new Named("", "", Optional.empty(), Optional.empty());
    }

    /** Takes the document's day zero, the {@code null-date} of OpenDocument part 3, 9.4.2. */
    void daysFrom(String nullDate) {
        from1904 = nullDate.startsWith("1904");
    }

    boolean from1904() {
        return from1904;
    }

    /** Reads the styles inside the element just started. */
    void read(Xml xml) {
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            String name = xml.attribute("name", "");
            if (xml.is("style")) {
                readStyle(xml, name);
            } else if (xml.name().endsWith("-style")) {
                formats.put(name, OdsFormat.read(xml));
            } else {
                xml.skip();
            }
        }
    }

    private void readStyle(Xml xml, String name) {
        String family = xml.attribute("family", "");
        String parent = xml.attribute("parent-style-name", "");
        String dataStyle = xml.attribute("data-style-name", "");
        Optional<Boolean> bold = Optional.empty();
        Optional<Boolean> struck = Optional.empty();
        int outer = xml.depth();
        while (xml.nextStartWithin(outer)) {
            if (xml.is("text-properties")) {
                bold = xml.attribute("font-weight").map(OdsStyles::isBold).or(noneSet(bold));
                struck = xml.attribute("text-line-through-style")
                        .or(() -> xml.attribute("text-line-through-type"))
                        .map(line -> !line.equals("none"));
            } else if (xml.is("table-properties")
                    && xml.attribute("display", "true").equals("false")) {
                hiddenTables.add(name);
            }
        }
        keep(family, name, new Named(parent, dataStyle, bold, struck));
    }

    private static java.util.function.Supplier<Optional<Boolean>> noneSet(Optional<Boolean> before) {
        return () -> before;
    }

    private void keep(String family, String name, Named style) {
        if (family.equals("table-cell")) {
            cellStyles.put(name, style);
        } else if (family.equals("text") && style.struck().orElse(false)) {
            struckSpans.add(name);
        }
    }

    private static boolean isBold(String weight) {
        return weight.equals("bold") || weight.matches("[6-9]00");
    }

    boolean hidesTable(String style) {
        return hiddenTables.contains(style);
    }

    boolean strikesSpan(String style) {
        return struckSpans.contains(style);
    }

    Style style(String name) {
        return resolved.computeIfAbsent(name, this::resolve);
    }

    private Style resolve(String name) {
        String dataStyle = "";
        Optional<Boolean> bold = Optional.empty();
        Optional<Boolean> struck = Optional.empty();
        String next = name;
        for (int i = 0; i < MOST_PARENTS && cellStyles.containsKey(next); i++) {
            Named style = cellStyles.getOrDefault(next, Named.DEFAULT);
            dataStyle = dataStyle.isEmpty() ? style.dataStyle() : dataStyle;
            bold = bold.isPresent() ? bold : style.bold();
            struck = struck.isPresent() ? struck : style.struck();
            next = style.parent();
        }
        return new Style(formats.getOrDefault(dataStyle, "General"), bold.orElse(false), struck.orElse(false));
    }
}
