package soundings.xlsx;

import java.util.List;
import java.util.Optional;
import soundings.quantity.Finite;

/**
 * A scatter chart as the part of a workbook that holds it, its elements in the order ECMA-376 part 1, 21.2 asks for. The values bound
 * are written beside their cells, for viewers that do not look them up.
 */
record ChartPart(String title, Along across, Along upward, List<Series> series) {
    static final String NS = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    private static final String MAIN_NS = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static final String ACROSS_ID = "1";
    private static final String UPWARD_ID = "2";
    /** English Metric Units in a point: ECMA-376 part 1, 20.1.2.1. */
    private static final double EMU_A_POINT = 12_700;

    ChartPart {
        series = List.copyOf(series);
    }

    /** An axis with its number format; {@code label} is empty where the numbers speak for themselves, the format where it is not shown. */
    record Along(String label, String format, Axis axis) {}

    /** How a series looks: an empty marker and a width of nothing for none; sizes in points, colours as hex of red, green and blue. */
    record Pen(String marker, int size, String colour, double width, boolean dashed) {
        static final Pen NONE = new Pen("", 0, "", 0, false);
    }

    /** A bound series and how it looks; {@code said} tells where its label is shown. */
    record Series(String label, ChartData.Bound bound, Pen pen, Said said) {}

    /** Where a series' label is shown. */
    enum Said {
        IN_KEY,
        /** To the right of its points. */
        BESIDE,
        NOWHERE
    }

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
        xml.val("c:axId", ACROSS_ID).val("c:axId", UPWARD_ID).close();
        axis(xml, across, ACROSS_ID, UPWARD_ID, "b");
        axis(xml, upward, UPWARD_ID, ACROSS_ID, "l");
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

    private void series(Tags xml, int index, Series series) {
        Pen pen = series.pen();
        xml.open("c:ser").val("c:idx", index).val("c:order", index);
        xml.open("c:tx").text("c:v", series.label()).close();
        xml.open("c:spPr");
        if (pen.width() > 0) {
            line(xml, pen.colour(), pen.width(), pen.dashed());
        } else {
            xml.open("a:ln").empty("a:noFill").close();
        }
        xml.close();
        marker(xml, pen);
        if (series.said() == Said.BESIDE) {
            label(xml);
        }
        if (!pen.marker().isEmpty()) {
            series.bound().errors().ifPresent(errors -> bars(xml, errors));
        }
        xml.open("c:xVal");
        numbers(xml, series.bound().across(), Optional.of(across.format()));
        xml.close().open("c:yVal");
        numbers(xml, series.bound().upward(), Optional.empty());
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

    /** The series' name to the right of each point. */
    private static void label(Tags xml) {
        xml.open("c:dLbls").open("c:spPr").empty("a:noFill").close();
        letters(xml, 900);
        xml.val("c:dLblPos", "r").val("c:showLegendKey", 0).val("c:showVal", 0).val("c:showCatName", 0);
        xml.val("c:showSerName", 1)
                .val("c:showPercent", 0)
                .val("c:showBubbleSize", 0)
                .close();
    }

    private static void bars(Tags xml, ChartData.Errors errors) {
        xml.open("c:errBars").val("c:errDir", errors.axis()).val("c:errBarType", "both");
        xml.val("c:errValType", "cust").val("c:noEndCap", 1).open("c:plus");
        numbers(xml, errors.up(), Optional.empty());
        xml.close().open("c:minus");
        numbers(xml, errors.down(), Optional.empty());
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
        xml.val("c:delete", along.format().isEmpty() ? 1 : 0).val("c:axPos", position);
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
        xml.close();
        letters(xml, 800);
        xml.val("c:crossAx", across).val("c:crosses", "min").val("c:crossBetween", "midCat");
        xml.val("c:majorUnit", number(axis.step())).close();
    }

    private void key(Tags xml) {
        if (series.stream().filter(s -> s.said() == Said.IN_KEY).count() < 2) {
            return;
        }
        xml.open("c:legend").val("c:legendPos", "b");
        for (int i = 0; i < series.size(); i++) {
            if (series.get(i).said() != Said.IN_KEY) {
                xml.open("c:legendEntry").val("c:idx", i).val("c:delete", 1).close();
            }
        }
        xml.val("c:overlay", 0);
        letters(xml, 800);
        xml.close();
    }

    /** @param size in hundredths of a point */
    private static void letters(Tags xml, int size) {
        xml.open("c:txPr").empty("a:bodyPr", "wrap", "none").empty("a:lstStyle").open("a:p");
        xml.open("a:pPr").empty("a:defRPr", "sz", String.valueOf(size)).close();
        xml.empty("a:endParaRPr", "lang", "en-GB").close(2);
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
