package soundings.notebook;

import java.time.YearMonth;
import java.util.List;
import soundings.history.Note;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** What the keeper wrote besides tests. */
final class RemarkItems {
    private RemarkItems() {}

    static List<Item> remarks(View view, String tankName) {
        List<Note> month = Note.of(view.tank(tankName)).stream()
                .filter(n -> YearMonth.from(n.on()).equals(view.findings().month()))
                .toList();
        List<Column> columns =
                List.of(new Column("Day", "", Kind.DATE, 0), Column.words("Written"), Column.words("Cell"));
        List<Row> rows = month.stream()
                .map(n -> new Row(
                        List.of(new Cell.Day(n.on()), Cell.words(n.text()), Cell.words(n.at().place())), List.of()))
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
