package soundings.xlsx;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import soundings.notebook.ChartSpec;
import soundings.notebook.Layer;
import soundings.notebook.Tone;
import soundings.quantity.Interval;

/** The numbers of all charts on one sheet, a row a point; each series of a chart is bound to a run of its rows. */
final class ChartData {
    static final String SHEET = "Chart data";

    static final List<String> HEADERS = List.of("Chart", "Series", "Date", "Value", "Low", "High", "Up", "Down", "Row");
    static final List<Integer> WIDTHS = List.of(34, 26, 12, 12, 12, 12, 10, 10, 8);

    private final Page page;

    ChartData(Page page) {
        this.page = page;
        page.line("The numbers behind the charts, a row a point; left out of the print", Face.Part.SUBHEADING);
        page.rows().next();
        for (int c = 0; c < HEADERS.size(); c++) {
            page.rows().words(c, HEADERS.get(c), page.faces().of(Face.Part.HEADER));
        }
    }

    /** Puts the sheet last; without a chart it is left out of sight. */
    void finish(Pages pages) {
        int header = 1;
        TablePage.finish(pages, page, header, HEADERS.size());
        pages.workbook().setPrintArea(pages.workbook().getSheetIndex(SHEET), 0, HEADERS.size() - 1, 0, header);
        int last = pages.workbook().getNumberOfSheets() - 1;
        pages.workbook().setSheetOrder(SHEET, last);
        pages.workbook().setSheetHidden(last, page.rows().row() == header);
    }

    /** One point; {@code value} is empty in a gap between two strokes. */
    private record Point(Optional<LocalDate> on, Optional<Double> value, double low, double high) {
        static Point at(LocalDate on, double value) {
            return new Point(Optional.of(on), Optional.of(value), value, value);
        }

        static Point gap() {
            return new Point(Optional.empty(), Optional.empty(), 0, 0);
        }
    }

    /** Cells of one column with what stands in them, empty in a gap. */
    record Cells(String reference, List<Optional<Double>> values) {
        Cells {
            values = List.copyOf(values);
        }
    }

    /** How far a series' error bars reach, along the axis {@code x} or {@code y}. */
    record Errors(String axis, Cells up, Cells down) {}

    /** A series as bound, and where it has them its error bars. */
    record Bound(Cells across, Cells upward, Optional<Errors> errors) {}

    /** The series of a layer, lowest first; a band and a range have two. */
    List<Bound> put(ChartSpec.TimeChart chart, ChartSpec.Panel panel, Layer layer, Axis axis) {
        return layer.match(
                marks -> marks.marks().isEmpty() ? List.<Bound>of() : List.of(marks(chart, marks)),
                band -> band(chart, band),
                line -> line.points().isEmpty() ? List.<Bound>of() : List.of(line(chart, line)),
                target -> range(chart, target),
                verticals -> verticals.happenings().isEmpty()
                        ? List.<Bound>of()
                        : List.of(verticals(chart, verticals, axis)));
    }

    private Bound marks(ChartSpec.TimeChart chart, Layer.Marks marks) {
        List<Point> points = marks.marks().stream()
                .map(m -> new Point(Optional.of(m.on()), Optional.of(m.value()), m.low(), m.high()))
                .toList();
        Bound plain = put(chart, marks.label(), points);
        boolean bars = marks.marks().stream().anyMatch(m -> m.low() < m.high());
        return bars ? plain : new Bound(plain.across(), plain.upward(), Optional.empty());
    }

    private List<Bound> band(ChartSpec.TimeChart chart, Layer.Band band) {
        if (band.spans().isEmpty()) {
            return List.of();
        }
        return Stream.of(true, false)
                .map(low -> put(
                        chart,
                        band.label() + (low ? ", lower end" : ", upper end"),
                        band.spans().stream()
                                .map(s -> Point.at(s.on(), low ? s.low() : s.high()))
                                .toList()))
                .toList();
    }

    private Bound line(ChartSpec.TimeChart chart, Layer.Line line) {
        List<Point> points = new ArrayList<>();
        double before = line.points().get(0).value();
        for (ChartSpec.At at : line.points()) {
            if (line.stroke() == Layer.Stroke.STEP && at.value() != before) {
                points.add(Point.at(at.on(), before));
            }
            points.add(Point.at(at.on(), at.value()));
            before = at.value();
        }
        if (line.stroke() == Layer.Stroke.STEP) {
            points.add(Point.at(chart.until(), before));
        }
        return put(chart, line.label(), points);
    }

    private List<Bound> range(ChartSpec.TimeChart chart, Layer.Target target) {
        return Stream.of(target.range().low(), target.range().high())
                .map(v -> put(chart, target.label(), List.of(Point.at(chart.from(), v), Point.at(chart.until(), v))))
                .toList();
    }

    private Bound verticals(ChartSpec.TimeChart chart, Layer.Verticals verticals, Axis axis) {
        List<Point> points = verticals.happenings().stream()
                .flatMap(h -> Stream.of(Point.at(h.on(), axis.low()), Point.at(h.on(), axis.high()), Point.gap()))
                .toList();
        return put(chart, verticals.label(), points);
    }

    private Bound put(ChartSpec.TimeChart chart, String series, List<Point> points) {
        int first = page.rows().rowCount() + 1;
        points.forEach(p -> row(chart.title(), series, p));
        int last = page.rows().rowCount();
        return new Bound(
                cells("C", first, last, points.stream().map(p -> p.on().map(SheetRows::serial))),
                cells("D", first, last, points.stream().map(Point::value)),
                Optional.of(new Errors(
                        "y",
                        cells(
                                "G",
                                first,
                                last,
                                points.stream().map(p -> p.value().map(v -> p.high() - v))),
                        cells(
                                "H",
                                first,
                                last,
                                points.stream().map(p -> p.value().map(v -> v - p.low()))))));
    }

    /** A place within a range, in hundredths of the range, in a row of a chart. */
    record Within(Interval place, double row) {
        static Within at(double place, double row) {
            return new Within(new Interval(place, place, place), row);
        }
    }

    /** A series whose points lie in rows. */
    Bound put(ChartSpec.RangeChart chart, String series, List<Within> points) {
        int first = page.rows().rowCount() + 1;
        points.forEach(p -> {
            start(chart.title(), series).number(3, p.place().mid(), number());
            span(p.place().low(), p.place().mid(), p.place().high());
            page.rows().number(8, p.row(), number());
        });
        int last = page.rows().rowCount();
        Function<ToDoubleFunction<Within>, Stream<Optional<Double>>> each =
                of -> points.stream().map(p -> Optional.of(of.applyAsDouble(p)));
        return new Bound(
                cells("D", first, last, each.apply(p -> p.place().mid())),
                cells("I", first, last, each.apply(Within::row)),
                Optional.of(new Errors(
                        "x",
                        cells(
                                "G",
                                first,
                                last,
                                each.apply(p -> p.place().high() - p.place().mid())),
                        cells(
                                "H",
                                first,
                                last,
                                each.apply(p -> p.place().mid() - p.place().low())))));
    }

    private void row(String chart, String series, Point point) {
        SheetRows rows = start(chart, series);
        if (point.on().isPresent() && point.value().isPresent()) {
            double value = point.value().get();
            rows.day(2, point.on().get(), page.faces().of(Face.day(Face.Part.BODY)))
                    .number(3, value, number());
            span(point.low(), value, point.high());
        }
    }

    private SheetRows start(String chart, String series) {
        Faces faces = page.faces();
        return page.rows()
                .next()
                .words(0, chart, faces.of(Face.words(Face.Part.BODY, Tone.QUIET, chart)))
                .words(1, series, faces.of(Face.words(Face.Part.BODY, Tone.PLAIN, series)));
    }

    private void span(double low, double value, double high) {
        if (low < high) {
            page.rows()
                    .number(4, low, number())
                    .number(5, high, number())
                    .number(6, high - value, number())
                    .number(7, value - low, number());
        }
    }

    private int number() {
        return page.faces().of(Face.number(Face.Part.BODY, 4, ""));
    }

    private static Cells cells(String column, int first, int last, Stream<Optional<Double>> values) {
        String reference = "'" + SHEET + "'!$" + column + "$" + first + ":$" + column + "$" + last;
        return new Cells(reference, values.toList());
    }
}
