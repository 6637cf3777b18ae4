package soundings.workbook;

import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one part of an OOXML package points to (ISO/IEC 29500-2 §9.3). Types are known by the last word of their address,
 * which is the same in the strict and the transitional dialect. Targets outside the file are noted, never followed.
 */
record Relations(List<Relation> all) {
    record Relation(String id, String type, String target, boolean external) {}

    Relations {
        all = List.copyOf(all);
    }

    /** @param part name of the pointing part, empty for the package itself */
    static Relations of(ZipParts parts, String part) {
        List<Relation> all = new ArrayList<>();
        String folder = part.substring(0, part.lastIndexOf('/') + 1);
        parts.findPart(folder + "_rels/" + part.substring(folder.length()) + ".rels")
                .ifPresent(stream -> {
                    try (Xml xml = Xml.of(stream)) {
                        while (xml.nextStart()) {
                            if (xml.is("Relationship")) {
                                all.add(relation(xml, "/" + folder));
                            }
                        }
                    }
                });
        return new Relations(all);
    }

    private static Relation relation(Xml xml, String folder) {
        boolean external = xml.attribute("TargetMode", "").equalsIgnoreCase("External");
        String type = xml.attribute("Type", "");
        String target = xml.attribute("Target", "").replace('\\', '/');
        return new Relation(
                xml.attribute("Id", ""),
                type.substring(type.lastIndexOf('/') + 1),
                external ? target : resolved(folder, target),
                external);
    }

    private static String resolved(String folder, String target) {
        try {
            return URI.create("file:" + folder.replace(" ", "%20"))
                    .resolve(target.replace(" ", "%20"))
                    .getPath();
        } catch (IllegalArgumentException odd) {
            return folder + target;
        }
    }

    Optional<Relation> findId(String id) {
        return all.stream().filter(relation -> relation.id().equals(id)).findFirst();
    }

    List<Relation> ofType(String type) {
        return all.stream().filter(relation -> relation.type().equals(type)).toList();
    }

    Optional<String> findTarget(String type) {
        return ofType(type).stream()
                .filter(relation -> !relation.external())
                .map(Relation::target)
                .findFirst();
    }
}
