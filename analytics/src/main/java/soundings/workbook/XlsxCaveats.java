package soundings.workbook;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import soundings.sheet.Book.Caveat;

/** What an OOXML workbook holds besides cells, told by its relations. */
final class XlsxCaveats {
    private static final Map<String, String> IN_SHEETS = Map.of(
            "image", "a picture",
            "chart", "a chart",
            "chartEx", "a chart",
            "pivotTable", "a pivot table",
            "oleObject", "an embedded object",
            "control", "a form control",
            "ctrlProp", "a form control");

    private static final Map<String, String> IN_WORKBOOK = Map.of(
            "vbaProject", "The workbook has macros; they are neither run nor read.",
            "externalLink", "Formulas point to other workbooks; their values are read as they were saved.",
            "connections", "The workbook has data connections; they are not refreshed.");

    private XlsxCaveats() {}

    static void ofSheet(String sheet, ZipParts parts, Relations relations, List<Caveat> into) {
        Map<String, Integer> counts = new TreeMap<>();
        count(relations, counts);
        for (Relations.Relation drawing : relations.ofType("drawing")) {
            count(Relations.of(parts, ZipParts.key(drawing.target())), counts);
        }
        if (!counts.isEmpty()) {
            String seen = counts.entrySet().stream()
                    .map(entry -> entry.getKey() + (entry.getValue() > 1 ? " (" + entry.getValue() + " times)" : ""))
                    .collect(Collectors.joining(", "));
            into.add(new Caveat(sheet, "The sheet has " + seen + "; only cells are read."));
        }
    }

    private static void count(Relations relations, Map<String, Integer> counts) {
        for (Relations.Relation relation : relations.all()) {
            if (IN_SHEETS.containsKey(relation.type())) {
                counts.merge(IN_SHEETS.getOrDefault(relation.type(), ""), 1, Integer::sum);
            }
        }
    }

    static void ofWorkbook(Relations relations, List<Caveat> into) {
        relations.all().stream()
                .map(Relations.Relation::type)
                .distinct()
                .filter(IN_WORKBOOK::containsKey)
                .forEach(type -> into.add(new Caveat("", IN_WORKBOOK.getOrDefault(type, ""))));
    }
}
