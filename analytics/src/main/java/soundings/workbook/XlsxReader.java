package soundings.workbook;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.sheet.Book;
import soundings.sheet.Book.Caveat;
import soundings.sheet.Grid;
import soundings.workbook.Relations.Relation;

/** An OOXML workbook (.xlsx, .xlsm, templates; transitional and strict), read straight from its XML. */
final class XlsxReader {
    private final ZipParts parts;
    private final String workbookPart;
    private final Relations relations;
    private final List<SheetEntry> sheets = new ArrayList<>();
    private final List<Grid> grids = new ArrayList<>();
    private final List<Caveat> caveats = new ArrayList<>();
    private boolean from1904;

    private record SheetEntry(String name, String relation, boolean hidden) {}

    private XlsxReader(ZipParts parts, String workbookPart) {
        this.parts = parts;
        this.workbookPart = workbookPart;
        this.relations = Relations.of(parts, workbookPart);
    }

    static Optional<String> findWorkbookPart(ZipParts parts) {
        return Relations.of(parts, "")
                .findTarget("officeDocument")
                .filter(parts::has)
                .or(() -> Optional.of("xl/workbook.xml").filter(parts::has))
                .map(ZipParts::key);
    }

    static Book read(String name, ZipParts parts, String workbookPart) {
        XlsxReader reader = new XlsxReader(parts, workbookPart);
        reader.readWorkbook();
        XlsxContext context = new XlsxContext(
                SharedStrings.of(reader.partOfType("sharedStrings")),
                XlsxStyles.of(reader.partOfType("styles")),
                reader.from1904);
        reader.sheets.forEach(sheet -> reader.readSheet(sheet, context));
        reader.noteWorkbook();
        return new Book(name, reader.grids, reader.caveats);
    }

    private Optional<InputStream> partOfType(String type) {
        return relations.findTarget(type).flatMap(parts::findPart);
    }

    private void readWorkbook() {
        try (Xml xml = Xml.of(parts.part(workbookPart))) {
            while (xml.nextStart()) {
                switch (xml.name()) {
                    case "workbookPr" -> from1904 = xml.flag("date1904");
                    case "sheet" ->
                        sheets.add(new SheetEntry(
                                Limits.text(xml.attribute("name", "")),
                                xml.attribute("id", ""),
                                !xml.attribute("state", "visible").equals("visible")));
                    default -> {}
                }
            }
        }
    }

    private void readSheet(SheetEntry entry, XlsxContext context) {
        Optional<Relation> relation = relations.findId(entry.relation()).filter(found -> parts.has(found.target()));
        if (relation.isEmpty()) {
            caveats.add(new Caveat(entry.name(), "The sheet is listed in the workbook but missing from the file."));
        } else if (!relation.get().type().equals("worksheet")) {
            caveats.add(new Caveat(
                    entry.name(), "This is no sheet of cells (" + relation.get().type() + "); it is not read."));
        } else {
            readCells(entry, relation.get().target(), context);
        }
    }

    private void readCells(SheetEntry entry, String target, XlsxContext context) {
        Relations sheetRelations = Relations.of(parts, ZipParts.key(target));
        SheetCells cells = new SheetCells(XlsxNotes.of(parts, sheetRelations));
        try (Xml xml = Xml.of(parts.part(target))) {
            XlsxSheet.read(xml, context, cells);
        }
        grids.add(cells.grid(entry.name(), entry.hidden(), caveats));
        XlsxCaveats.ofSheet(entry.name(), parts, sheetRelations, caveats);
    }

    private void noteWorkbook() {
        XlsxCaveats.ofWorkbook(relations, caveats);
    }
}
