package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import javax.xml.namespace.QName;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.DisplayBlanks;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTErrBars;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTNumDataSource;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTScatterSer;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrBarType;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrDir;
import org.openxmlformats.schemas.drawingml.x2006.chart.STErrValType;
import soundings.notebook.ChartSpec;
import soundings.notebook.Layer;

/** A native scatter chart of one panel, bound to cells; dates are numbers with a date format, which every spreadsheet draws alike. */
final class ChartDrawing {
    private static final String CHART_NS = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    private final XSSFChart chart;
    private final XDDFScatterChartData data;
    /** Series without an entry of their own in the key: the second line of a pair. */
    private final List<Integer> unnamed = new ArrayList<>();

    private int next;

    private ChartDrawing(XSSFChart chart, XDDFScatterChartData data) {
        this.chart = chart;
        this.data = data;
    }

    /** How a layer looks: the marker and the line, empty texts for none; sizes in points. */
    private record Pen(String marker, int size, String colour, double width, boolean dashed) {}

    static void draw(
            Page page, XSSFClientAnchor anchor, ChartSpec.TimeChart spec, ChartSpec.Panel panel, ChartData data) {
        XSSFChart chart = page.sheet().createDrawingPatriarch().createChart(anchor);
        describe(chart, spec, panel);
        Axis values = Axis.of(panel);
        XDDFValueAxis bottom = days(chart, spec);
        XDDFValueAxis left = values(chart, panel, values);
        XDDFScatterChartData scatter = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
        scatter.setVaryColors(false);
        ChartDrawing drawing = new ChartDrawing(chart, scatter);
        for (Layer layer : panel.layers()) {
            drawing.add(layer, data.put(spec, panel, layer, values));
        }
        chart.plot(scatter);
        drawing.key();
    }

    private static void describe(XSSFChart chart, ChartSpec.TimeChart spec, ChartSpec.Panel panel) {
        boolean main = panel.equals(spec.panel());
        String title = CellText.holdable(main ? spec.title() : panel.label());
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        chart.displayBlanksAs(DisplayBlanks.GAP);
        var frame = chart.getGraphicFrame()
                .getCTGraphicalObjectFrame()
                .getNvGraphicFramePr()
                .getCNvPr();
        frame.setName(main ? title : CellText.holdable(spec.title()) + ": " + title);
        frame.setDescr(CellText.holdable(spec.finding()));
        chart.getCTChart()
                .getTitle()
                .getTx()
                .getRich()
                .getPArray(0)
                .getRArray(0)
                .addNewRPr()
                .setSz(1100);
    }

    private static XDDFValueAxis days(XSSFChart chart, ChartSpec.TimeChart spec) {
        Axis days = Axis.of(spec.from(), spec.until());
        XDDFValueAxis axis = chart.createValueAxis(AxisPosition.BOTTOM);
        axis.setNumberFormat("d mmm yy");
        span(axis, days);
        return axis;
    }

    private static XDDFValueAxis values(XSSFChart chart, ChartSpec.Panel panel, Axis values) {
        XDDFValueAxis axis = chart.createValueAxis(AxisPosition.LEFT);
        axis.setTitle(panel.unit().isEmpty() ? panel.label() : panel.label() + " (" + panel.unit() + ")");
        axis.setNumberFormat(format(values.step()));
        axis.getOrAddMajorGridProperties().setLineProperties(line("E3E8EC", 0.5, false));
        span(axis, values);
        return axis;
    }

    /** As many decimals as the step needs. */
    private static String format(double step) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        boolean half = Math.abs(step * Math.pow(10, decimals) - Math.rint(step * Math.pow(10, decimals))) > 1e-6;
        int shown = decimals + (half ? 1 : 0);
        return shown == 0 ? "0" : "0." + "0".repeat(shown);
    }

    private static void span(XDDFValueAxis axis, Axis span) {
        axis.setMinimum(span.low());
        axis.setMaximum(span.high());
        axis.setMajorUnit(span.step());
        axis.setCrosses(AxisCrosses.MIN);
        axis.getOrAddShapeProperties().setLineProperties(line("8A959D", 0.75, false));
    }

    private void add(Layer layer, List<ChartData.Bound> bound) {
        Pen pen = layer.match(
                marks -> pen(marks.shape()),
                band -> new Pen("", 0, "8FBFE0", 1, band.stroke() == Layer.Stroke.DASHED),
                line -> pen(line.stroke()),
                target -> new Pen("", 0, "009E73", 1.25, true),
                verticals -> new Pen("", 0, "B9C3CA", 0.75, false));
        for (int i = 0; i < bound.size(); i++) {
            if (i > 0) {
                unnamed.add(next);
            }
            add(layer.label(), bound.get(i), pen);
        }
    }

    private static Pen pen(Layer.Shape shape) {
        return switch (shape) {
            case DOT -> new Pen("circle", 5, "1F2A33", 0, false);
            case BELOW, ABOVE -> new Pen("triangle", 6, "5E6B75", 0, false);
            case CROSS -> new Pen("x", 7, "D55E00", 0, false);
        };
    }

    private static Pen pen(Layer.Stroke stroke) {
        return switch (stroke) {
            case SOLID -> new Pen("", 0, "0072B2", 2, false);
            case DASHED -> new Pen("", 0, "8F4470", 1.5, true);
            case DOTTED -> new Pen("", 0, "0072B2", 1.5, true);
            case STEP -> new Pen("", 0, "B37400", 1.75, false);
        };
    }

    private void add(String label, ChartData.Bound bound, Pen pen) {
        XDDFNumericalDataSource<Double> days = source(bound.days());
        days.setFormatCode("yyyy-mm-dd");
        XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) data.addSeries(days, source(bound.values()));
        series.setTitle(CellText.holdable(label), null);
        series.setSmooth(false);
        series.setMarkerStyle(marker(pen));
        series.setLineProperties(
                pen.marker().isEmpty()
                        ? line(pen.colour(), pen.width(), pen.dashed())
                        : new XDDFLineProperties(new XDDFNoFillProperties()));
        if (!pen.marker().isEmpty()) {
            paint(series.getCTScatterSer().getMarker(), pen);
            bars(series.getCTScatterSer(), bound);
        }
        next++;
    }

    private static XDDFNumericalDataSource<Double> source(ChartData.Cells cells) {
        Double[] values = cells.values().stream().map(v -> v.orElse(null)).toArray(Double[]::new);
        return XDDFDataSourcesFactory.fromArray(values, cells.reference());
    }

    private static MarkerStyle marker(Pen pen) {
        return switch (pen.marker()) {
            case "circle" -> MarkerStyle.CIRCLE;
            case "triangle" -> MarkerStyle.TRIANGLE;
            case "x" -> MarkerStyle.X;
            default -> MarkerStyle.NONE;
        };
    }

    /** The light schema of the library lacks the marker's size, so it is written as plain XML. */
    private static void paint(CTMarker marker, Pen pen) {
        try (XmlCursor cursor = marker.newCursor()) {
            cursor.toEndToken();
            cursor.beginElement(new QName(CHART_NS, "size", "c"));
            cursor.insertAttributeWithValue("val", String.valueOf(pen.size()));
        }
        var shape = marker.addNewSpPr();
        if (!pen.marker().equals("x")) {
            shape.addNewSolidFill().addNewSrgbClr().setVal(Faces.rgb(pen.colour()));
        }
        shape.addNewLn().addNewSolidFill().addNewSrgbClr().setVal(Faces.rgb(pen.colour()));
    }

    private static void bars(CTScatterSer series, ChartData.Bound bound) {
        if (bound.up().isEmpty() || bound.down().isEmpty()) {
            return;
        }
        CTErrBars bars = series.addNewErrBars();
        bars.addNewErrDir().setVal(STErrDir.Y);
        bars.addNewErrBarType().setVal(STErrBarType.BOTH);
        bars.addNewErrValType().setVal(STErrValType.CUST);
        bars.addNewNoEndCap().setVal(true);
        fill(bars.addNewPlus(), bound.up().get());
        fill(bars.addNewMinus(), bound.down().get());
        bars.addNewSpPr().addNewLn().addNewSolidFill().addNewSrgbClr().setVal(Faces.rgb("8A959D"));
    }

    private static void fill(CTNumDataSource source, ChartData.Cells cells) {
        var reference = source.addNewNumRef();
        reference.setF(cells.reference());
        var cache = reference.addNewNumCache();
        cache.addNewPtCount().setVal(cells.values().size());
        for (int i = 0; i < cells.values().size(); i++) {
            if (cells.values().get(i).isPresent()) {
                var point = cache.addNewPt();
                point.setIdx(i);
                point.setV(cells.values().get(i).get().toString());
            }
        }
    }

    private static XDDFLineProperties line(String colour, double width, boolean dashed) {
        XDDFLineProperties line =
                new XDDFLineProperties(new XDDFSolidFillProperties(XDDFColor.from(Faces.rgb(colour))));
        line.setWidth(width);
        if (dashed) {
            line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
        }
        return line;
    }

    private void key() {
        if (next > 1) {
            chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
            for (int index : unnamed) {
                var entry = chart.getCTChart().getLegend().addNewLegendEntry();
                entry.addNewIdx().setVal(index);
                entry.addNewDelete().setVal(true);
            }
        }
    }
}
