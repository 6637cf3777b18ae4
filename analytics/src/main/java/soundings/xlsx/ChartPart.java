package soundings.xlsx;

import java.util.List;
import java.util.Optional;
import soundings.quantity.Finite;

/**
 * A scatter chart as the part of a workbook that holds it, its elements in the order ECMA-376 part 1, 21.2 asks for. The values bound
 * are written beside their cells, for viewers that do not look them up.
 */
record ChartPart(String title, Along days, Along values, List<Series> series) {
    static final String NS = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    private static final String MAIN_NS = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static final String DAYS_ID = "1";
    private static final String VALUES_ID = "2";
    /** English Metric Units in a point: ECMA-376 part 1, 20.1.2.1. */
    private static final double EMU_A_POINT = 12_700;

    ChartPart {
        series = List.copyOf(series);
    }

    /** An axis with its number format; {@code label} is empty where the numbers speak for themselves. */
    record Along(String label, String format, Axis axis) {}

    /** How a series looks: marker and line, empty texts for none; sizes in points, colours as hex of red, green and blue. */
    record Pen(String marker, int size, String colour, double width, boolean dashed) {}

    /** {@code named}: whether it has an entry of its own in the key. */
    record Series(String label, ChartData.Bound bound, Pen pen, boolean named) {}

    String xml() {
        Tags xml = new Tags();
        xml.open("c:chartSpace", "xmlns:c", NS, "xmlns:a", MAIN_NS)
                .val("c:roundedCorners", 0)
                .open("c:chart");
        text(xml, title, 1100);
        xml.val("c:autoTitleDeleted", 0).open("c:plotArea").empty("c:layout");
        xml.open("c:scatterChart").val("c:scatterStyle", "lineMarker").val("c:varyColors", 0);
        for (int i = 0; i < series.size(); i++) {
            series(xml, i, series.get(i));
        }
        xml.val("c:axId", DAYS_ID).val("c:axId", VALUES_ID).close();
        axis(xml, days, DAYS_ID, VALUES_ID, "b");
        axis(xml, values, VALUES_ID, DAYS_ID, "l");
        xml.close();
        key(xml);
        xml.val("c:plotVisOnly", 0).val("c:dispBlanksAs", "gap");
        return xml.finished();
    }

    /** @param size in hundredths of a point */
    private static void text(Tags xml, String text, int size) {
        xml.open("c:title").open("c:tx").open("c:rich");
        xml.empty("a:bodyPr").empty("a:lstStyle").open("a:p").open("a:r");
        xml.empty("a:rPr", "lang", "en-GB", "sz", String.valueOf(size), "b", "0")
                .text("a:t", text)
                .close(4);
        xml.val("c:overlay", 0).close();
    }

    private static void series(Tags xml, int index, Series series) {
        Pen pen = series.pen();
        xml.open("c:ser").val("c:idx", index).val("c:order", index);
        xml.open("c:tx").text("c:v", series.label()).close();
        xml.open("c:spPr");
        if (pen.marker().isEmpty()) {
            line(xml, pen.colour(), pen.width(), pen.dashed());
        } else {
            xml.open("a:ln").empty("a:noFill").close();
        }
        xml.close();
        marker(xml, pen);
        if (!pen.marker().isEmpty()) {
            bars(xml, series.bound());
        }
        xml.open("c:xVal");
        numbers(xml, series.bound().days(), Optional.of("yyyy-mm-dd"));
        xml.close().open("c:yVal");
        numbers(xml, series.bound().values(), Optional.empty());
        xml.close().val("c:smooth", 0).close();
    }

    private static void marker(Tags xml, Pen pen) {
        xml.open("c:marker");
        if (pen.marker().isEmpty()) {
            xml.val("c:symbol", "none").close();
            return;
        }
        xml.val("c:symbol", pen.marker()).val("c:size", pen.size()).open("c:spPr");
        if (!pen.marker().equals("x")) {
            fill(xml, pen.colour());
        }
        xml.open("a:ln");
        fill(xml, pen.colour());
        xml.close(3);
    }

    private static void bars(Tags xml, ChartData.Bound bound) {
        if (bound.up().isEmpty() || bound.down().isEmpty()) {
            return;
        }
        xml.open("c:errBars").val("c:errDir", "y").val("c:errBarType", "both");
        xml.val("c:errValType", "cust").val("c:noEndCap", 1).open("c:plus");
        numbers(xml, bound.up().get(), Optional.empty());
        xml.close().open("c:minus");
        numbers(xml, bound.down().get(), Optional.empty());
        xml.close().open("c:spPr");
        line(xml, "8A959D", 0.75, false);
        xml.close(2);
    }

    private static void numbers(Tags xml, ChartData.Cells cells, Optional<String> format) {
        xml.open("c:numRef").text("c:f", cells.reference()).open("c:numCache");
        format.ifPresent(f -> xml.text("c:formatCode", f));
        xml.val("c:ptCount", cells.values().size());
        for (int i = 0; i < cells.values().size(); i++) {
            Optional<Double> value = cells.values().get(i);
            if (value.isPresent()) {
                xml.open("c:pt", "idx", String.valueOf(i))
                        .text("c:v", number(value.get()))
                        .close();
            }
        }
        xml.close(2);
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.valueOf((long) value)
                : String.valueOf(Finite.checked(value));
    }

    private static void axis(Tags xml, Along along, String id, String across, String position) {
        Axis axis = along.axis();
        xml.open("c:valAx").val("c:axId", id);
        xml.open("c:scaling").val("c:orientation", "minMax");
        xml.val("c:max", number(axis.high())).val("c:min", number(axis.low())).close();
        xml.val("c:delete", 0).val("c:axPos", position);
        if (!along.label().isEmpty()) {
            xml.open("c:majorGridlines").open("c:spPr");
            line(xml, "E3E8EC", 0.5, false);
            xml.close(2);
            text(xml, along.label(), 900);
        }
        xml.empty("c:numFmt", "formatCode", along.format(), "sourceLinked", "0");
        xml.val("c:majorTickMark", "out")
                .val("c:minorTickMark", "none")
                .val("c:tickLblPos", "nextTo")
                .open("c:spPr");
        line(xml, "8A959D", 0.75, false);
        xml.close().val("c:crossAx", across).val("c:crosses", "min").val("c:crossBetween", "midCat");
        xml.val("c:majorUnit", number(axis.step())).close();
    }

    private void key(Tags xml) {
        if (series.size() < 2) {
            return;
        }
        xml.open("c:legend").val("c:legendPos", "b");
        for (int i = 0; i < series.size(); i++) {
            if (!series.get(i).named()) {
                xml.open("c:legendEntry").val("c:idx", i).val("c:delete", 1).close();
            }
        }
        xml.val("c:overlay", 0).close();
    }

    private static void line(Tags xml, String colour, double width, boolean dashed) {
        xml.open("a:ln", "w", String.valueOf(Math.round(width * EMU_A_POINT)));
        fill(xml, colour);
        if (dashed) {
            xml.val("a:prstDash", "dash");
        }
        xml.close();
    }

    private static void fill(Tags xml, String colour) {
        xml.open("a:solidFill").val("a:srgbClr", colour).close();
    }
}
