package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import soundings.estimate.Estimate;
import soundings.history.DoseCourse;
import soundings.history.Point;
import soundings.log.Reading;
import soundings.quantity.Amount;

/** The layers of a level chart, back to front. */
record LevelLayers(
        View view, View.Test test, List<Point> shown, Optional<Estimate> estimate, LocalDate from, LocalDate until) {
    /** Points a curve keeps: finer than a pixel of a printed chart serves nobody and weighs on the page. */
    private static final int FINEST = 90;

    List<Layer> main() {
        List<Layer> layers = new ArrayList<>();
        view.target(test.tankName(), test.parameter())
                .ifPresent(t -> layers.add(
                        new Layer.Target("range to keep", new ChartSpec.Within(shown(t.low()), shown(t.high())))));
        waterChanges().ifPresent(layers::add);
        estimate.ifPresent(e -> curves(e, layers));
        marks("reading", Layer.Shape.DOT, p -> p.used() && !limit(p)).ifPresent(layers::add);
        marks("below the kit's range", Layer.Shape.BELOW, p -> p.used() && is(p, -1))
                .ifPresent(layers::add);
        marks("above the kit's range", Layer.Shape.ABOVE, p -> p.used() && is(p, 1))
                .ifPresent(layers::add);
        marks("set aside", Layer.Shape.CROSS, p -> !p.used() || doubted(p)).ifPresent(layers::add);
        return layers;
    }

    /** As the keeper writes it. */
    private double shown(double canonical) {
        return test.scale().written(canonical);
    }

    private void curves(Estimate e, List<Layer> layers) {
        List<Estimate.Day> track = thinned(within(e.track()));
        if (track.size() > 1) {
            layers.add(new Layer.Band("where the level lay, 9 times in 10", Layer.Stroke.SOLID, spans(track)));
            layers.add(new Layer.Line("estimated level", Layer.Stroke.SOLID, points(track)));
        }
        List<Estimate.Day> ahead = thinned(within(e.ahead()));
        if (ahead.size() > 1) {
            layers.add(new Layer.Band("if nothing changes, 9 times in 10", Layer.Stroke.DASHED, spans(ahead)));
            layers.add(new Layer.Line("if nothing changes", Layer.Stroke.DASHED, points(ahead)));
            followed().ifPresent(layers::add);
        }
    }

    /** Where the level goes if what is proposed is done. */
    private Optional<Layer> followed() {
        return view.recommendations(test.tankName(), test.parameter()).stream()
                .filter(r -> r.withheld().isEmpty() && r.isChange())
                .flatMap(r -> r.outlook().stream())
                .map(o -> thinned(within(o.followed())))
                .filter(days -> days.size() > 1)
                .findFirst()
                .map(days -> new Layer.Line("with what is proposed", Layer.Stroke.DOTTED, points(days)));
    }

    private List<Estimate.Day> within(List<Estimate.Day> days) {
        return days.stream()
                .filter(d -> !d.date().isBefore(from) && !d.date().isAfter(until))
                .toList();
    }

    private static <T> List<T> thinned(List<T> days) {
        if (days.size() <= FINEST) {
            return days;
        }
        List<T> kept = new ArrayList<>();
        for (int i = 0; i < FINEST; i++) {
            kept.add(days.get((int) Math.round(i * (days.size() - 1.0) / (FINEST - 1))));
        }
        return kept;
    }

    private List<Layer.Span> spans(List<Estimate.Day> days) {
        return days.stream()
                .map(d -> new Layer.Span(
                        d.date(), shown(d.level().low()), shown(d.level().high())))
                .toList();
    }

    private List<ChartSpec.At> points(List<Estimate.Day> days) {
        return days.stream()
                .map(d -> new ChartSpec.At(d.date(), shown(d.level().mid())))
                .toList();
    }

    private Optional<Layer> waterChanges() {
        List<Layer.Happening> changes = test.tank().changes().stream()
                .filter(c -> !c.on().isBefore(from) && !c.on().isAfter(until))
                .map(c -> new Layer.Happening(c.on(), Doses.change(c), c.at().place()))
                .toList();
        return changes.isEmpty() ? Optional.empty() : Optional.of(new Layer.Verticals("water change", changes));
    }

    private Optional<Layer> marks(String label, Layer.Shape shape, Predicate<Point> which) {
        List<Layer.Mark> marks = shown.stream()
                .filter(which)
                .filter(p -> shape == Layer.Shape.CROSS || !doubted(p))
                .map(this::mark)
                .toList();
        return marks.isEmpty() ? Optional.empty() : Optional.of(new Layer.Marks(label, shape, marks));
    }

    private Layer.Mark mark(Point point) {
        Reading reading = point.reading();
        double about = reading.amount().about();
        Layer.Span bar = reading.amount()
                .match(
                        e -> new Layer.Span(reading.date(), about - kitError(), about + kitError()),
                        b -> new Layer.Span(reading.date(), about, about),
                        a -> new Layer.Span(reading.date(), about, about),
                        b -> new Layer.Span(reading.date(), b.low(), b.high()));
        return new Layer.Mark(
                reading.date(),
                shown(about),
                shown(bar.low()),
                shown(bar.high()),
                title(point),
                reading.at().place());
    }

    /** The reach of 90 % of the kit's error: as the setup states it, else as the estimate found it, else none. */
    private double kitError() {
        double sd = view.findings().history().setup().kits().stream()
                .filter(k -> k.parameter().equals(test.parameter()) && k.error().isPresent())
                .mapToDouble(k -> k.error().getAsDouble())
                .findFirst()
                .orElse(estimate.map(e -> e.fit().kitError()).orElse(0.0));
        return 1.645 * sd;
    }

    private String title(Point point) {
        Reading reading = point.reading();
        String figure = Figures.amount(test.scale(), reading.amount());
        String why = point.used()
                ? doubt(point).map(d -> ", set aside: " + d).orElse("")
                : ", set aside: " + point.because();
        return Figures.day(reading.date()) + ": " + figure + why + ", "
                + reading.at().place();
    }

    private Optional<String> doubt(Point point) {
        return estimate.stream()
                .flatMap(e -> e.setAside().stream())
                .filter(d -> d.reading().equals(point.reading()))
                .map(Estimate.Doubt::because)
                .findFirst();
    }

    private boolean doubted(Point point) {
        return doubt(point).isPresent();
    }

    private static boolean limit(Point point) {
        return is(point, -1) || is(point, 1);
    }

    /** Whether the amount is only known to lie below ({@code -1}) or above ({@code 1}) a limit. */
    private static boolean is(Point point, int side) {
        Amount amount = point.reading().amount();
        return amount.match(e -> 0, b -> -1, a -> 1, b -> 0) == side;
    }

    /** The doses that raise this test, as steps under the chart. */
    Optional<ChartSpec.Panel> strip() {
        List<Layer> lines = new ArrayList<>();
        for (DoseCourse course : test.tank().doses()) {
            if (Doses.raises(course, test.parameter())) {
                Doses.line(course, from, until).ifPresent(lines::add);
            }
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new ChartSpec.Panel("Dose", "mL/d", 0, lines));
    }
}
