package soundings.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.chart.Charts;
import soundings.chart.Key;
import soundings.notebook.Cell;
import soundings.notebook.ChartItem;
import soundings.notebook.ChartSpec;
import soundings.notebook.ChartSpec.RangeChart;
import soundings.notebook.ChartSpec.TimeChart;
import soundings.notebook.Layer;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** A chart, its key, and its numbers in a table. */
final class ChartHtml {
    private ChartHtml() {}

    static String of(ChartItem item) {
        ChartSpec spec = item.spec();
        String key = spec.match(ChartHtml::key, r -> "", s -> "");
        String figure = "<figure>" + Charts.svg(spec) + "<figcaption>" + key + "</figcaption></figure>\n";
        String numbers = spec.match(ChartHtml::numbers, ChartHtml::numbers, s -> Optional.<TableItem>empty())
                .map(t -> Html.details("data", "The numbers of this chart", TableHtml.table(t)))
                .orElse("");
        return Html.row(figure + numbers, item.restsOn());
    }

    private static String key(TimeChart chart) {
        List<Layer> layers = new ArrayList<>(chart.panel().layers());
        chart.strip().ifPresent(strip -> layers.addAll(strip.layers()));
        StringBuilder html = new StringBuilder();
        for (Layer layer : layers) {
            html.append("<span class=\"key\">")
                    .append(Key.symbol(layer))
                    .append(Html.text(layer.label()))
                    .append("</span> ");
        }
        return html.toString();
    }

    private static Optional<TableItem> numbers(TimeChart chart) {
        List<Column> columns = List.of(
                new Column("Day", "", Kind.DATE, 0),
                new Column(
                        chart.panel().label(),
                        chart.panel().unit(),
                        Kind.NUMBER,
                        chart.panel().decimals()),
                Column.words("As"),
                Column.words("Cell"));
        List<Row> rows = new ArrayList<>();
        chart.panel().layers().forEach(layer -> rows.addAll(readings(layer, chart.panel(), "")));
        chart.strip().ifPresent(strip -> rows.addAll(below(strip)));
        chart.panel().layers().forEach(layer -> rows.addAll(happenings(layer)));
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(new TableItem(chart.id() + "-numbers", chart.title(), columns, rows, false, List.of()));
    }

    private static List<Row> readings(Layer layer, ChartSpec.Panel panel, String unit) {
        return layer.match(
                marks -> marks.marks().stream()
                        .map(m -> row(
                                new Cell.Day(m.on()),
                                new Cell.Number(m.value(), panel.decimals(), unit),
                                marks.label(),
                                m.place()))
                        .toList(),
                b -> List.of(),
                l -> List.of(),
                t -> List.of(),
                v -> List.of());
    }

    /** The lower panel in its own unit: its readings where it has any, else the steps of its lines. */
    private static List<Row> below(ChartSpec.Panel strip) {
        List<Row> readings = strip.layers().stream()
                .flatMap(layer -> readings(layer, strip, strip.unit()).stream())
                .toList();
        return readings.isEmpty()
                ? strip.layers().stream()
                        .flatMap(layer -> steps(layer, strip.unit()).stream())
                        .toList()
                : readings;
    }

    private static List<Row> happenings(Layer layer) {
        return layer.match(
                m -> List.of(),
                b -> List.of(),
                l -> List.of(),
                t -> List.of(),
                verticals -> verticals.happenings().stream()
                        .map(h -> row(new Cell.Day(h.on()), Cell.NOTHING, verticals.label(), h.place()))
                        .toList());
    }

    private static List<Row> steps(Layer layer, String unit) {
        return layer.match(
                m -> List.of(),
                b -> List.of(),
                line -> line.points().stream()
                        .map(p -> row(new Cell.Day(p.on()), new Cell.Number(p.value(), 1, unit), line.label(), ""))
                        .toList(),
                t -> List.of(),
                v -> List.of());
    }

    private static Row row(Cell day, Cell value, String as, String place) {
        return new Row(List.of(day, value, Cell.words(as), Cell.words(place)), List.of());
    }

    private static Optional<TableItem> numbers(RangeChart chart) {
        List<Column> columns = List.of(
                Column.words("Test"),
                new Column("Level", "", Kind.INTERVAL, 1),
                new Column("Low", "", Kind.NUMBER, 1),
                new Column("High", "", Kind.NUMBER, 1));
        List<Row> rows = chart.entries().stream()
                .map(e -> new Row(
                        List.of(
                                Cell.words(e.label()),
                                new Cell.Range(e.level(), e.decimals(), e.unit()),
                                new Cell.Number(e.low(), e.decimals(), ""),
                                new Cell.Number(e.high(), e.decimals(), "")),
                        List.of()))
                .toList();
        return Optional.of(new TableItem(chart.id() + "-numbers", chart.title(), columns, rows, false, List.of()));
    }
}
