package soundings.notebook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** How the log was read, for the keeper to check in a minute. */
final class ReadingItems {
    private ReadingItems() {}

    static List<Item> columns(View view) {
        List<Column> columns = List.of(
                Column.words("Heading"),
                Column.words("Place"),
                Column.words("Read as"),
                Column.words("Unit"),
                Column.words("Tank"),
                new Column("Cells", "", Kind.NUMBER, 0),
                Column.words("For example"),
                Column.words("Worked out, not written"),
                Column.words("How sure"));
        List<Row> rows = view.findings().log().blocks().stream()
                .flatMap(block -> block.columns().stream().map(column -> row(view, block, column)))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "columns", "How each column of the log was read", columns, rows, true, List.of()));
    }

    private static Row row(View view, BlockReading block, ColumnReading column) {
        String place = block.sheet() + "!" + (column.headerCell().isEmpty() ? block.region() : column.headerCell());
        return new Row(
                List.of(
                        Cell.words(column.header()),
                        Cell.words(place),
                        Cell.words(meaning(view, column.meaning())),
                        Cell.words(column.unit()),
                        Cell.words(column.tank()),
                        new Cell.Number(column.cells(), 0, ""),
                        Cell.words(String.join(" · ", column.samples())),
                        Cell.words(inferred(column)),
                        new Cell.Words(sure(column.sure()), column.sure() < 0.6 ? Tone.WATCH : Tone.PLAIN, "")),
                List.of());
    }

    private static String meaning(View view, String meaning) {
        return view.findings()
                .reference()
                .findParameter(meaning)
                .map(p -> Sentences.lower(p.name()))
                .orElse(meaning.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT));
    }

    private static String inferred(ColumnReading column) {
        return column.inferred().stream()
                .sorted()
                .map(i -> i.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
    }

    private static String sure(double share) {
        return share >= 0.9 ? "sure" : share >= 0.6 ? "fairly" : "not sure: please check";
    }
}
