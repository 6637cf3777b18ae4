package soundings.notebook;

import java.util.List;
import java.util.function.Function;

/**
 * How a figure was worked out, step by step, each step from numbers above it.
 *
 * @param result the last step in a sentence
 */
public record WorkingItem(String id, String caption, String result, List<Line> lines, List<String> restsOn)
        implements Item {
    public WorkingItem {
        lines = List.copyOf(lines);
        restsOn = List.copyOf(restsOn);
    }

    @Override
    public <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions) {
        return working.apply(this);
    }

    /**
     * One named number.
     *
     * @param id names it in the formulas of later lines, unique within the working
     * @param formula empty for a number put in; otherwise arithmetic over the ids of earlier lines
     * @param from where a number put in comes from, such as {@code Log!C14} or a source's name
     */
    public record Line(String id, String label, double value, int decimals, String unit, String formula, String from) {}
}
