package soundings.notebook;

import java.util.List;
import java.util.function.Function;

/** One thing on the page. */
public sealed interface Item permits Prose, TableItem, ChartItem, WorkingItem, ActionList {
    /** The cells of the keeper's workbook it rests on, such as {@code Log!C5:C40}, for the margin; may be empty. */
    List<String> restsOn();

    <R> R match(
            Function<Prose, R> prose,
            Function<TableItem, R> table,
            Function<ChartItem, R> chart,
            Function<WorkingItem, R> working,
            Function<ActionList, R> actions);
}
