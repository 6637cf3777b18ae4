package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import soundings.notebook.Cell;
import soundings.notebook.Figures;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Column;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.Tone;

/** A flat table on a page: a header row and a row each. */
final class TableRows {
    /** Room to write an answer in. */
    private static final int ANSWER_LINES = 3;

    private final Page page;
    private final TableItem table;
    private final List<Place> places;

    private TableRows(Page page, TableItem table) {
        this.page = page;
        this.table = table;
        this.places = places(table, ColumnWidths.spans(table, page.widths()), page.widths());
    }

    /** Where a column of the table stands on the page: its first column, how many it takes, and how wide they are together. */
    private record Place(int at, int columns, int width) {}

    private static List<Place> places(TableItem table, int[] spans, List<Integer> widths) {
        List<Place> places = new ArrayList<>();
        int at = 0;
        for (int c = 0; c < table.columns().size(); c++) {
            int width = widths.subList(at, at + spans[c]).stream()
                    .mapToInt(Integer::intValue)
                    .sum();
            places.add(new Place(at, spans[c], width));
            at += spans[c];
        }
        return places;
    }

    /** Writes the table and returns the row its header stands in, counted from zero. */
    static int write(Page page, TableItem table) {
        TableRows writing = new TableRows(page, table);
        int header = writing.header();
        table.rows().forEach(writing::row);
        return header;
    }

    private int header() {
        int lines = 1;
        for (int c = 0; c < places.size(); c++) {
            Column column = table.columns().get(c);
            int room = places.get(c).width() - (ColumnWidths.isText(column) ? 0 : ColumnWidths.INDENT);
            lines = Math.max(lines, Lettering.lines(Flat.header(column), room, Face.Part.HEADER));
        }
        page.rows().next(Lettering.height(lines, Face.Part.HEADER));
        for (int c = 0; c < places.size(); c++) {
            Column column = table.columns().get(c);
            Face.Part part = ColumnWidths.isText(column) ? Face.Part.HEADER : Face.Part.HEADER_RIGHT;
            words(places.get(c), new Cell.Words(Flat.header(column), Tone.PLAIN, ""), part);
        }
        return page.rows().row();
    }

    private void row(TableItem.Row row) {
        page.rows().next(Lettering.height(lines(row), Face.Part.BODY));
        for (int c = 0; c < places.size(); c++) {
            put(places.get(c), row.cells().get(c), table.columns().get(c));
        }
    }

    private int lines(TableItem.Row row) {
        int lines = 1;
        for (int c = 0; c < places.size(); c++) {
            String text = ColumnWidths.text(row.cells().get(c));
            lines = Math.max(lines, Lettering.lines(text, places.get(c).width()));
        }
        boolean answered = table.columns().stream().anyMatch(column -> column.kind() == Kind.ANSWER);
        return answered ? Math.max(ANSWER_LINES, lines) : lines;
    }

    private void put(Place place, Cell cell, Column column) {
        Face.Part part = column.kind() == Kind.ANSWER ? Face.Part.ANSWER : Face.Part.BODY;
        SheetRows rows = page.rows();
        int at = place.at();
        boolean done = cell.match(
                words -> words(place, words, part),
                n -> rows.number(at, n.value(), face(n.decimals(), n.unit(), column, part)) != null,
                r -> rows.number(at, r.value().mid(), face(r.decimals(), r.unit(), column, part)) != null,
                day -> rows.day(at, day.on(), page.faces().of(Face.day(part))) != null,
                spark -> rows.blank(at, page.faces().of(part)) != null);
        assert done;
    }

    private boolean words(Place place, Cell.Words words, Face.Part part) {
        int face = page.faces().of(Face.words(part, words.tone(), words.text()));
        page.rows().words(place.at(), words.text(), face);
        page.link(place.at(), words.target());
        for (int c = 1; c < place.columns(); c++) {
            page.rows().blank(place.at() + c, face);
        }
        page.merge(place.at(), place.columns());
        return true;
    }

    private int face(int decimals, String unit, Column column, Face.Part part) {
        String shown = unit.equals(column.unit()) ? "" : unit;
        return page.faces().of(Face.number(part, decimals, Figures.unit(shown)));
    }
}
