package soundings.notebook;

import java.util.List;
import java.util.function.Function;

/** A chart; what it shows stands in it as numbers, so that a reader who cannot see it gets a table. */
public record ChartItem(ChartSpec spec, List<String> restsOn) implements Item {
    public ChartItem {
        restsOn = List.copyOf(restsOn);
    }

    @Override
    public <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions) {
        return chart.apply(this);
    }
}
