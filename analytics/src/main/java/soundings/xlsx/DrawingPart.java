package soundings.xlsx;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackagingURIHelper;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * The charts of one sheet. Their parts are written as text into the library's package: its object model of charts takes a quarter of a
 * report's time to wake up, and writes titles and scatter charts that the schema of ECMA-376 does not allow.
 */
final class DrawingPart {
    private static final String NS = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    private static final String MAIN_NS = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static final String RELATIONS_NS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final List<Placed> charts = new ArrayList<>();

    /** Whole cells: from the first column and {@code firstRow} to before {@code columns} and {@code lastRow}. */
    record Room(int firstRow, int lastRow, int columns) {}

    /** What a reader who does not see the chart is told: its name, and what it shows. */
    record Told(String name, String finding) {}

    private record Placed(Room room, Told told, ChartPart chart) {}

    void add(Room room, Told told, ChartPart chart) {
        charts.add(new Placed(room, told, chart));
    }

    /** Puts the charts into the workbook's package and leads the sheet to them. */
    void putInto(XSSFSheet sheet) {
        if (charts.isEmpty()) {
            return;
        }
        PackagePart drawing = part(sheet.getPackagePart(), XSSFRelation.DRAWINGS);
        Tags xml = new Tags();
        xml.open("xdr:wsDr", "xmlns:xdr", NS, "xmlns:a", MAIN_NS, "xmlns:r", RELATIONS_NS);
        for (int i = 0; i < charts.size(); i++) {
            PackagePart chart = part(drawing, XSSFRelation.CHART);
            write(chart, charts.get(i).chart().xml());
            String relation = relate(drawing, chart, XSSFRelation.CHART);
            frame(xml, charts.get(i), i + 2, relation);
        }
        write(drawing, xml.finished());
        sheet.getCTWorksheet().addNewDrawing().setId(relate(sheet.getPackagePart(), drawing, XSSFRelation.DRAWINGS));
    }

    private static void frame(Tags xml, Placed placed, int id, String relation) {
        Room room = placed.room();
        xml.open("xdr:twoCellAnchor");
        corner(xml, "xdr:from", 0, room.firstRow());
        corner(xml, "xdr:to", room.columns(), room.lastRow());
        xml.open("xdr:graphicFrame", "macro", "").open("xdr:nvGraphicFramePr");
        xml.empty(
                "xdr:cNvPr",
                "id",
                String.valueOf(id),
                "name",
                placed.told().name(),
                "descr",
                placed.told().finding());
        xml.empty("xdr:cNvGraphicFramePr").close().open("xdr:xfrm");
        xml.empty("a:off", "x", "0", "y", "0")
                .empty("a:ext", "cx", "0", "cy", "0")
                .close();
        xml.open("a:graphic").open("a:graphicData", "uri", ChartPart.NS);
        xml.empty("c:chart", "xmlns:c", ChartPart.NS, "r:id", relation).close(3);
        xml.empty("xdr:clientData").close();
    }

    private static void corner(Tags xml, String name, int column, int row) {
        xml.open(name).text("xdr:col", String.valueOf(column)).text("xdr:colOff", "0");
        xml.text("xdr:row", String.valueOf(row)).text("xdr:rowOff", "0").close();
    }

    /** A new part of the kind in the package of another one, with the next free number in its name. */
    private static PackagePart part(PackagePart beside, XSSFRelation kind) {
        try {
            OPCPackage whole = beside.getPackage();
            int number = whole.getUnusedPartIndex(kind.getDefaultFileName());
            return whole.createPart(PackagingURIHelper.createPartName(kind.getFileName(number)), kind.getContentType());
        } catch (InvalidFormatException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String relate(PackagePart from, PackagePart to, XSSFRelation kind) {
        return from.addRelationship(to.getPartName(), TargetMode.INTERNAL, kind.getRelation())
                .getId();
    }

    private static void write(PackagePart part, String xml) {
        try (OutputStream out = part.getOutputStream()) {
            out.write(xml.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
