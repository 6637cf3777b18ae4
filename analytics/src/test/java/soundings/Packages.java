package soundings;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which package may use which: the architecture as a table. {@link ArchitectureTest} holds the code to it. */
final class Packages {
    static final String BASE = "soundings";

    /** A package, the packages of ours it may use, and the library packages it may use. */
    record MayUse(List<String> ours, List<String> libraries) {}

    static final Map<String, MayUse> MAY_USE = new TreeMap<>(Map.ofEntries(
            row("quantity", ""),
            row("chemistry", "quantity", "org.hipparchus"),
            row("reference", "chemistry quantity", "de.siegmar.fastcsv"),
            row("sheet", ""),
            row(
                    "workbook",
                    "sheet",
                    "org.apache.poi",
                    "com.fasterxml.aalto",
                    "org.codehaus.stax2",
                    "de.siegmar.fastcsv"),
            row("log", "sheet quantity chemistry"),
            row("setup", "sheet log quantity chemistry wording"),
            row("wording", "sheet quantity chemistry"),
            row("layout", "wording setup log sheet quantity chemistry"),
            row("history", "setup log quantity chemistry sheet"),
            row("estimate", "history setup log quantity chemistry", "org.hipparchus"),
            row("advice", "estimate history setup log quantity chemistry sheet"),
            row("upkeep", "advice estimate history setup log quantity chemistry sheet"),
            row("care", "advice estimate history setup log quantity chemistry sheet", "org.hipparchus"),
            row("findings", "upkeep care advice estimate history setup log quantity chemistry sheet"),
            row(
                    "notebook",
                    "template findings upkeep care advice estimate history setup log quantity chemistry sheet",
                    "org.commonmark",
                    "tech.tablesaw"),
            row("template", "", "freemarker"),
            row("chart", "notebook quantity", "org.knowm.xchart"),
            row("html", "notebook chart quantity", "freemarker"),
            row(
                    "xlsx",
                    "notebook findings setup quantity sheet chemistry",
                    "org.apache.poi",
                    "org.openxmlformats",
                    "org.apache.xmlbeans"),
            row(
                    "results",
                    "findings upkeep care advice estimate history setup log quantity chemistry sheet",
                    "com.fasterxml.jackson.core"),
            row(
                    "forms",
                    "xlsx setup log quantity chemistry sheet",
                    "org.apache.poi",
                    "org.openxmlformats",
                    "org.apache.xmlbeans")));

    private Packages() {}

    private static Map.Entry<String, MayUse> row(String name, String ours, String... libraries) {
        return Map.entry(name, new MayUse(ours.isEmpty() ? List.of() : List.of(ours.split(" ")), List.of(libraries)));
    }
}
