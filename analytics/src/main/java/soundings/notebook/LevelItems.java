package soundings.notebook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.chemistry.Scale;
import soundings.estimate.Estimate;
import soundings.history.Point;

/** One test through the last months: readings, estimated level, range, doses, water changes. */
final class LevelItems {
    private static final int USUAL_DAYS = 120;
    private static final int FEWEST_READINGS = 8;

    private LevelItems() {}

    static List<Item> level(View view, View.Test test) {
        List<Point> shown = shown(view, test);
        if (shown.isEmpty()) {
            return List.of();
        }
        return List.of(new ChartItem(chart(view, test, shown), Places.gathered(SummaryItems.places(test))));
    }

    /** The last 120 days, or further back until eight readings are in it. */
    static List<Point> shown(View view, View.Test test) {
        List<Point> all = test.series().points().stream()
                .filter(p -> !p.reading().date().isAfter(view.asOf()))
                .toList();
        LocalDate usual = view.asOf().minusDays(USUAL_DAYS);
        int recent = (int)
                all.stream().filter(p -> p.reading().date().isAfter(usual)).count();
        int count = Math.min(all.size(), Math.max(recent, FEWEST_READINGS));
        return all.subList(all.size() - count, all.size());
    }

    private static ChartSpec chart(View view, View.Test test, List<Point> shown) {
        Parameter parameter = test.parameter();
        Optional<Estimate> estimate = view.estimate(test.tankName(), parameter);
        LocalDate from = shown.get(0).reading().date();
        LocalDate last = Stream.of(view.asOf(), estimate.map(Estimate::asOf).orElse(view.asOf()))
                .max(LocalDate::compareTo)
                .orElseThrow();
        LocalDate until =
                estimate.flatMap(LevelItems::lastAhead).filter(last::isBefore).orElse(last);
        LevelLayers layers = new LevelLayers(view, test, shown, estimate, from, until);
        return new ChartSpec.TimeChart(
                view.testId(test.tankName(), parameter) + "-level",
                parameter.name() + ", " + View.name(test.tank()),
                alternative(test, shown, estimate),
                from,
                until,
                new ChartSpec.Panel(
                        parameter.name(),
                        test.scale().label(),
                        test.scale().decimalsAt(highest(shown, test.scale())),
                        layers.main()),
                layers.strip());
    }

    private static double highest(List<Point> shown, Scale scale) {
        return shown.stream()
                .mapToDouble(p -> scale.written(p.reading().amount().about()))
                .max()
                .orElse(0);
    }

    private static Optional<LocalDate> lastAhead(Estimate estimate) {
        List<Estimate.Day> ahead = estimate.ahead();
        return ahead.isEmpty()
                ? Optional.empty()
                : Optional.of(ahead.get(ahead.size() - 1).date());
    }

    private static String alternative(View.Test test, List<Point> shown, Optional<Estimate> estimate) {
        Parameter parameter = test.parameter();
        List<String> parts = new ArrayList<>();
        List<Point> used = shown.stream().filter(Point::used).toList();
        parts.add(Figures.count(used.size(), "reading", "readings") + " from "
                + Figures.day(shown.get(0).reading().date()) + " to "
                + Figures.day(shown.get(shown.size() - 1).reading().date()) + extent(used, test.scale()));
        estimate.ifPresent(e -> parts.add("estimated level at the end " + Figures.level(test.scale(), e.level())));
        int aside = shown.size() - used.size();
        if (aside > 0) {
            parts.add(Figures.count(aside, "reading", "readings") + " set aside");
        }
        return parameter.name() + ": " + String.join("; ", parts) + ".";
    }

    private static String extent(List<Point> used, Scale scale) {
        if (used.isEmpty()) {
            return "";
        }
        var values = used.stream()
                .mapToDouble(p -> scale.written(p.reading().amount().about()))
                .summaryStatistics();
        int decimals = scale.decimalsAt(values.getMax());
        return ", "
                + Figures.with(
                        Figures.number(values.getMin(), decimals) + " to " + Figures.number(values.getMax(), decimals),
                        scale.label());
    }
}
