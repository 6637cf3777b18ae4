package soundings.xlsx;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import soundings.notebook.ChartItem;
import soundings.notebook.ChartSpec;
import soundings.notebook.Layer;
import soundings.notebook.Notebook;
import soundings.notebook.Section;

/** A report of one chart with one reading: enough to load everything that writing a real one needs. */
final class SmallestReport {
    private static final LocalDate DAY = LocalDate.EPOCH;

    private SmallestReport() {}

    static Notebook notebook() {
        Layer.Mark mark = new Layer.Mark(DAY, 1, 0, 2, "", "");
        Layer marks = new Layer.Marks("", Layer.Shape.DOT, List.of(mark));
        Layer target = new Layer.Target("", new ChartSpec.Within(0, 2));
        ChartSpec.Panel panel = new ChartSpec.Panel("", "", 0, List.of(marks, target));
        ChartSpec chart = new ChartSpec.TimeChart("c", "", "", DAY, DAY.plusDays(1), panel, Optional.empty());
        return new Notebook("", "", List.of(new Section("s", "", 2, List.of(new ChartItem(chart, List.of())))));
    }
}
