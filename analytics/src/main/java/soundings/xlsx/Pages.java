package soundings.xlsx;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** All sheets of a report while it is written, and where each item came to stand. */
final class Pages {
    private final XSSFWorkbook workbook;
    private final Faces faces;
    private final SheetNames names = new SheetNames();
    private final List<Page> pages = new ArrayList<>();
    private final Map<String, String> places = new HashMap<>();

    Pages(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.faces = new Faces(workbook);
    }

    XSSFWorkbook workbook() {
        return workbook;
    }

    /** A new sheet behind those there are. */
    Page add(String name, List<Integer> widths) {
        Page page = new Page(workbook.createSheet(names.take(name)), faces, widths);
        pages.add(page);
        return page;
    }

    /** Remembers that the item stands where the page is being written. */
    void standsHere(String id, Page page) {
        if (!id.isEmpty()) {
            places.putIfAbsent(id, page.here());
        }
    }

    /** Makes the links, now that every place is known; one that leads nowhere is left as words. */
    void link() {
        for (Page page : pages) {
            for (Page.Link link : page.links()) {
                String place = places.get(link.target());
                if (place != null) {
                    XSSFHyperlink made = workbook.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
                    made.setCellReference(link.cell());
                    made.setAddress(place);
                    page.sheet().addHyperlink(made);
                }
            }
        }
    }

    /** Puts every sheet's charts in. */
    void draw() {
        pages.forEach(page -> page.drawing().putInto(page.sheet()));
    }

    /** Every sheet's rows by the entry of the package they belong in. */
    Map<String, SheetRows> rows() {
        Map<String, SheetRows> rows = new HashMap<>();
        for (Page page : pages) {
            rows.put(page.sheet().getPackagePart().getPartName().getName().substring(1), page.rows());
        }
        return rows;
    }
}
