package soundings.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import soundings.notebook.ChartSpec;
import soundings.notebook.ChartSpec.At;
import soundings.notebook.Layer;

class ChartsTest {
    private static final LocalDate FROM = LocalDate.of(2026, 7, 1);
    private static final Frame FRAME = new Frame(new Box(46, 20, 504, 160), FROM, FROM.plusDays(120), new Span(6, 10));

    private static List<Layer> layers() {
        List<Layer.Mark> marks = new ArrayList<>();
        List<Layer.Span> spans = new ArrayList<>();
        List<At> line = new ArrayList<>();
        for (int day = 0; day <= 120; day += 5) {
            LocalDate on = FROM.plusDays(day);
            double value = 8 + Math.sin(day / 9.0);
            marks.add(new Layer.Mark(on, value, value - 0.2, value + 0.3, on + " <&> " + value, "Log!B" + (day + 2)));
            spans.add(new Layer.Span(on, value - 0.4, value + 0.4));
            line.add(new At(on, value));
        }
        return List.of(
                new Layer.Target("range", new ChartSpec.Within(7.5, 9)),
                new Layer.Band("band", Layer.Stroke.SOLID, spans),
                new Layer.Line("level", Layer.Stroke.SOLID, line),
                new Layer.Line("dose", Layer.Stroke.STEP, line),
                new Layer.Marks("reading", Layer.Shape.DOT, marks),
                new Layer.Verticals("change", List.of(new Layer.Happening(FROM.plusDays(7), "changed", "Log!C9"))));
    }

    private static List<Double> numbers(String path) {
        return Pattern.compile("-?[0-9.]+")
                .matcher(path)
                .results()
                .map(MatchResult::group)
                .map(Double::valueOf)
                .toList();
    }

    @Test
    void xchart_draws_the_layers_where_our_own_arithmetic_puts_them() {
        List<Shapes> drawn = XChartPlot.of(layers(), FRAME);
        List<Shapes> worked = PlainPlot.of(layers(), FRAME);

        for (int i = 0; i < drawn.size(); i++) {
            assertThat(drawn.get(i).spots()).hasSameSizeAs(worked.get(i).spots());
            for (int n = 0; n < drawn.get(i).spots().size(); n++) {
                Shapes.Spot spot = worked.get(i).spots().get(n);
                assertThat(drawn.get(i).spots().get(n).x())
                        .isCloseTo(spot.x(), org.assertj.core.data.Offset.offset(1.0));
                assertThat(drawn.get(i).spots().get(n).y())
                        .isCloseTo(spot.y(), org.assertj.core.data.Offset.offset(1.0));
            }
            assertThat(extent(drawn.get(i).line()))
                    .isCloseTo(extent(worked.get(i).line()), org.assertj.core.data.Offset.offset(1.5));
            assertThat(extent(drawn.get(i).area()))
                    .isCloseTo(extent(worked.get(i).area()), org.assertj.core.data.Offset.offset(1.5));
        }
    }

    /** The largest coordinate: right edge, or bottom where that is larger. */
    private static double extent(String path) {
        return numbers(path).stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    @Test
    void every_reading_can_be_pointed_at_and_words_are_words() {
        ChartSpec chart = new ChartSpec.TimeChart(
                "one",
                "Alkalinity <b>",
                "It falls & falls",
                FROM,
                FROM.plusDays(120),
                new ChartSpec.Panel("Alkalinity", "dKH", 1, layers()),
                Optional.empty());

        Document svg = Jsoup.parse(Charts.svg(chart));

        assertThat(svg.select("g.dot circle title")).hasSize(25);
        assertThat(svg.select("g.dot circle title").text()).contains("<&>");
        assertThat(svg.select("svg").attr("aria-label")).isEqualTo("Alkalinity <b>. It falls & falls");
        assertThat(svg.select("text").eachText()).contains("Alkalinity, dKH", "Aug", "Oct");
        assertThat(svg.select("b")).isEmpty();
    }

    @Test
    void a_reading_set_aside_far_outside_stands_at_the_edge_and_does_not_flatten_the_rest() {
        Layer.Mark wild = new Layer.Mark(FROM.plusDays(60), 82, 82, 82, "82", "Log!B60");
        List<Layer> layers = new ArrayList<>(layers());
        layers.add(new Layer.Marks("set aside", Layer.Shape.CROSS, List.of(wild)));

        assertThat(ValueSpan.of(layers).high()).isLessThan(10);
    }

    @Test
    void axes_count_in_ones_twos_and_fives_and_in_whole_days_or_months() {
        assertThat(Ticks.values(new Span(7.1, 9.3), 5)).hasSizeBetween(3, 6);
        assertThat(Ticks.values(new Span(0.011, 0.094), 5)).hasSizeBetween(3, 6);
        assertThat(Ticks.days(FROM, FROM.plusDays(120), 6).stream().map(Ticks.Tick::label))
                .containsExactly("Jul", "Aug", "Sep", "Oct");
        assertThat(Ticks.days(FROM, FROM.plusDays(9), 6).stream().map(Ticks.Tick::label))
                .startsWith("1 Jul", "3 Jul");
        assertThat(Ticks.days(FROM, FROM, 6)).hasSize(1);
    }
}
