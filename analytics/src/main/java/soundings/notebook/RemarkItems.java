package soundings.notebook;

import java.time.YearMonth;
import java.util.List;
import soundings.log.Remark;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** What the keeper wrote besides tests. */
final class RemarkItems {
    private RemarkItems() {}

    static List<Item> remarks(View view, String tankName) {
        List<Remark> month = view.tank(tankName).remarks().stream()
                .filter(r -> YearMonth.from(r.date()).equals(view.findings().month()))
                .toList();
        List<Column> columns =
                List.of(new Column("Day", "", Kind.DATE, 0), Column.words("Written"), Column.words("Cell"));
        List<Row> rows = month.stream()
                .map(r -> new Row(
                        List.of(new Cell.Day(r.date()), Cell.words(r.text()), Cell.words(r.at().place())), List.of()))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        view.tankId(tankName) + "-remarks",
                        "What was noted this month, word for word",
                        columns,
                        rows,
                        true,
                        List.of()));
    }
}
