package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soundings.chemistry.Scale;
import soundings.chemistry.TargetRange;
import soundings.estimate.Estimate;
import soundings.history.TankHistory;

/** A tank's tests side by side, each against its range. */
final class RangeItems {
    private RangeItems() {}

    static List<Item> ranges(View view, String tankName) {
        TankHistory tank = view.tank(tankName);
        List<ChartSpec.RangeChart.Entry> entries = new ArrayList<>();
        tank.series()
                .forEach(series -> view.estimate(tankName, series.parameter())
                        .flatMap(e ->
                                view.target(tankName, series.parameter()).flatMap(t -> entry(series.scale(), e, t)))
                        .ifPresent(entries::add));
        return entries.size() < 2 ? List.of() : List.of(new ChartItem(chart(view, tank, entries), List.of()));
    }

    private static Optional<ChartSpec.RangeChart.Entry> entry(Scale scale, Estimate e, TargetRange target) {
        if (target.high() <= target.low()) {
            return Optional.empty();
        }
        String title = e.parameter().name() + ": " + Figures.level(scale, e.level()) + ", range "
                + Figures.bounds(scale, target.low(), target.high());
        return Optional.of(new ChartSpec.RangeChart.Entry(
                e.parameter().name(),
                scale.label(),
                scale.decimalsAt(scale.written(e.level().mid())),
                scale.written(e.level()),
                scale.written(target.low()),
                scale.written(target.high()),
                title));
    }

    private static ChartSpec chart(View view, TankHistory tank, List<ChartSpec.RangeChart.Entry> entries) {
        return new ChartSpec.RangeChart(
                view.tankId(tank.tank()) + "-ranges",
                View.name(tank) + ": each test against its range",
                finding(entries),
                entries);
    }

    private static String finding(List<ChartSpec.RangeChart.Entry> entries) {
        List<String> out = entries.stream()
                .filter(e -> e.level().mid() < e.low() || e.level().mid() > e.high())
                .map(e -> Sentences.lower(e.label()) + " " + (e.level().mid() < e.low() ? "below" : "above"))
                .toList();
        String inside = entries.size() - out.size() + " of " + entries.size() + " tests lie inside their range";
        return out.isEmpty() ? inside + "." : inside + "; outside: " + Figures.list(out) + ".";
    }
}
