package soundings.notebook;

import java.util.ArrayList;
import java.util.List;
import soundings.chemistry.Constant;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.findings.Provenance;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.TableItem.Row;

/** What the report rests on besides the log. */
final class SourceItems {
    private SourceItems() {}

    static List<Item> constants(View view) {
        Reference reference = view.findings().reference();
        List<Column> columns = List.of(
                Column.words("Constant"),
                new Column("Value", "", Kind.NUMBER, 4),
                Column.words("Unit"),
                Column.words("Holds for"),
                Column.words("Source"));
        List<Row> rows =
                reference.constants().stream().map(c -> row(reference, c)).toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem("constants", "Constants of the chemistry", columns, rows, true, List.of()));
    }

    static List<Item> equations(View view) {
        Reference reference = view.findings().reference();
        List<Row> rows = reference.equations().stream()
                .map(e -> new Row(
                        List.of(
                                Cell.words(Figures.capital(e.gives())),
                                Cell.words(e.valid()),
                                Cell.words(citation(reference, e.source()))),
                        List.of()))
                .toList();
        List<Column> columns = List.of(Column.words("Gives"), Column.words("Holds for"), Column.words("Source"));
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "equations", "Published relations figures are worked out by", columns, rows, true, List.of()));
    }

    private static Row row(Reference reference, Constant c) {
        return new Row(
                List.of(
                        Cell.words(c.id().replace('_', ' ')),
                        new Cell.Number(c.value(), WorkingItems.decimals(c.value()), ""),
                        Cell.words(c.unit()),
                        Cell.words(c.range()),
                        Cell.words(citation(reference, c.source()))),
                List.of());
    }

    static String citation(Reference reference, String key) {
        return key.equals("setup") ? "your setup workbook" : reference.citation(key);
    }

    static List<Item> targets(View view) {
        List<Column> columns = List.of(
                Column.words("Tank"),
                Column.words("Test"),
                new Column("Low", "", Kind.NUMBER, 2),
                new Column("High", "", Kind.NUMBER, 2),
                Column.words("Unit"),
                Column.words("Whose"));
        List<Row> rows = view.tests().stream()
                .flatMap(test -> view.target(test.tankName(), test.parameter()).stream()
                        .map(t -> new Row(
                                List.of(
                                        Cell.words(View.name(test.tank())),
                                        Cell.words(test.parameter().name()),
                                        bound(test.scale(), t.low()),
                                        bound(test.scale(), t.high()),
                                        Cell.words(Figures.unit(test.scale().label())),
                                        Cell.words(citation(view.findings().reference(), t.source()))),
                                List.of())))
                .toList();
        return rows.isEmpty()
                ? List.of()
                : List.of(new TableItem(
                        "ranges-used", "The range each test is judged by", columns, rows, true, List.of()));
    }

    private static Cell bound(Scale scale, double canonical) {
        double written = scale.written(canonical);
        return new Cell.Number(written, scale.decimalsOf(written), "");
    }

    static List<Item> provenance(View view) {
        Provenance p = view.findings().provenance();
        List<Row> rows = new ArrayList<>();
        rows.add(row("Log", p.file()));
        rows.add(row("SHA-256 of the log", p.sha256()));
        rows.add(row("Setup workbook", p.setupFile().isEmpty() ? "none" : p.setupFile()));
        rows.add(row("Options", p.options().isEmpty() ? "none" : p.options()));
        rows.add(row("Soundings", p.version()));
        return List.of(new TableItem(
                "provenance",
                "What this report was made from",
                List.of(Column.words("What"), Column.words("Which")),
                rows,
                false,
                List.of()));
    }

    private static Row row(String what, String which) {
        return new Row(List.of(Cell.words(what), Cell.words(which)), List.of());
    }
}
