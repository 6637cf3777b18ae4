package soundings.notebook;

import java.util.List;
import soundings.notebook.table.Months;

/** A tank's tests month by month. */
final class MonthItems {
    private static final int MONTHS = 13;

    private MonthItems() {}

    static List<Item> months(View view, String tankName) {
        return Months.of(view.tank(tankName), view.findings().month(), MONTHS, view.tankId(tankName)).stream()
                .map(table -> (Item) table)
                .toList();
    }
}
