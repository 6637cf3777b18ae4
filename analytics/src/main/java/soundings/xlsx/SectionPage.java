package soundings.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import soundings.notebook.ActionList;
import soundings.notebook.ChartItem;
import soundings.notebook.ChartSpec;
import soundings.notebook.Item;
import soundings.notebook.Prose;
import soundings.notebook.Section;
import soundings.notebook.TableItem;
import soundings.notebook.TableItem.Kind;
import soundings.notebook.WorkingItem;

/** A section and its parts on one sheet, in the notebook's order; what is long or calculates has a sheet of its own and a link to it. */
final class SectionPage {
    /** A table longer than this is for filtering, not for reading. */
    private static final int LONG_TABLE = 24;

    private static final List<Integer> LEAST_WIDTHS = List.of(16, 16, 14, 14, 14, 14);
    private static final int CHART_ROWS = 17;
    private static final int STRIP_ROWS = 8;
    private static final int CHART_WIDTH = 92;

    private final Page page;
    private final Pages pages;
    private final ChartData charts;

    private SectionPage(Page page, Pages pages, ChartData charts) {
        this.page = page;
        this.pages = pages;
        this.charts = charts;
    }

    static boolean isLong(TableItem table) {
        return table.rows().size() > LONG_TABLE || isAnswered(table);
    }

    static boolean isAnswered(TableItem table) {
        return table.columns().stream().anyMatch(c -> c.kind() == Kind.ANSWER);
    }

    static Page open(Pages pages, List<Section> parts) {
        return pages.add(parts.get(0).heading(), widths(parts));
    }

    private static List<Integer> widths(List<Section> parts) {
        List<TableItem> tables = parts.stream()
                .flatMap(s -> s.items().stream())
                .flatMap(i -> shortTable(i).stream())
                .toList();
        List<Integer> widths = new ArrayList<>(TableRows.widths(tables));
        for (int c = 0; c < LEAST_WIDTHS.size(); c++) {
            if (c >= widths.size()) {
                widths.add(LEAST_WIDTHS.get(c));
            } else if (c < 2) {
                widths.set(c, Math.max(LEAST_WIDTHS.get(c), widths.get(c)));
            }
        }
        return widths;
    }

    /** The table an item puts on the section's own sheet. */
    private static Optional<TableItem> shortTable(Item item) {
        return item.match(
                prose -> Optional.empty(),
                table -> isLong(table) ? Optional.empty() : Optional.of(Flat.of(table)),
                chart -> range(chart),
                working -> Optional.empty(),
                actions -> Optional.of(Flat.of(actions)));
    }

    private static Optional<TableItem> range(ChartItem chart) {
        return chart.spec()
                .match(
                        time -> Optional.empty(),
                        range -> Optional.of(Flat.of(range, chart.restsOn())),
                        spark -> Optional.empty());
    }

    static void write(Page page, Pages pages, ChartData charts, List<Section> parts) {
        SectionPage writing = new SectionPage(page, pages, charts);
        parts.forEach(writing::section);
    }

    private void section(Section section) {
        if (page.rows().row() >= 0) {
            page.rows().next();
        }
        page.line(section.heading(), section.depth() == 2 ? Face.Part.HEADING : Face.Part.SUBHEADING);
        pages.standsHere(section.id(), page);
        section.items().forEach(this::item);
    }

    private void item(Item item) {
        boolean done = item.match(this::prose, this::table, this::chart, this::working, this::actions);
        assert done;
        if (!item.restsOn().isEmpty()) {
            page.line("Rests on " + String.join(", ", item.restsOn()), Face.Part.QUIET);
        }
    }

    private boolean prose(Prose prose) {
        int number = 0;
        for (Prose.Block block : prose.blocks()) {
            number = block.kind() == Prose.Kind.NUMBERED ? number + 1 : 0;
            String target = block.spans().stream()
                    .map(Prose.Span::target)
                    .filter(t -> !t.isEmpty())
                    .findFirst()
                    .orElse("");
            page.line(before(block.kind(), number) + block.text(), part(block.kind()), target);
        }
        return true;
    }

    private static String before(Prose.Kind kind, int number) {
        return switch (kind) {
            case BULLET -> "  \u2022  ";
            case NUMBERED -> "  " + number + ".  ";
            case PARAGRAPH, FINDING, CAUTION, QUOTE -> "";
        };
    }

    private static Face.Part part(Prose.Kind kind) {
        return switch (kind) {
            case FINDING -> Face.Part.FINDING;
            case CAUTION -> Face.Part.CAUTION;
            case QUOTE -> Face.Part.QUOTE;
            case PARAGRAPH, BULLET, NUMBERED -> Face.Part.PROSE;
        };
    }

    private boolean table(TableItem table) {
        return isLong(table) ? leadTo(table.caption(), table.id()) : put(Flat.of(table));
    }

    private boolean leadTo(String caption, String id) {
        page.line("\u2192 " + caption, Face.Part.LINK, id);
        return true;
    }

    private boolean put(TableItem flat) {
        page.rows().next();
        if (!flat.caption().isEmpty()) {
            page.line(flat.caption(), Face.Part.CAPTION);
            pages.standsHere(flat.id(), page);
        }
        if (!flat.rows().isEmpty()) {
            TableRows.write(page, flat);
        }
        return true;
    }

    private boolean actions(ActionList actions) {
        put(Flat.of(actions));
        if (actions.entries().isEmpty()) {
            page.line(actions.instead(), Face.Part.PROSE);
        }
        return true;
    }

    private boolean working(WorkingItem working) {
        page.line(working.result(), Face.Part.PROSE);
        return leadTo("Worked out step by step: " + working.caption(), working.id());
    }

    private boolean chart(ChartItem item) {
        return item.spec().match(time -> chart(time), range -> put(Flat.of(range, item.restsOn())), spark -> true);
    }

    private boolean chart(ChartSpec.TimeChart chart) {
        page.rows().next();
        pages.standsHere(chart.id(), page);
        page.line(chart.finding(), Face.Part.PROSE);
        draw(chart, chart.panel(), CHART_ROWS);
        chart.strip().ifPresent(strip -> draw(chart, strip, STRIP_ROWS));
        return true;
    }

    private void draw(ChartSpec.TimeChart chart, ChartSpec.Panel panel, int rows) {
        page.drawing().add(room(rows), ChartDrawing.told(chart, panel), ChartDrawing.of(chart, panel, charts));
    }

    /** Leaves rows free and gives the frame that covers them. */
    private DrawingPart.Room room(int rows) {
        int first = page.rows().rowCount();
        page.rows().skip(rows);
        return new DrawingPart.Room(first, first + rows, page.columnsFor(CHART_WIDTH));
    }

    /** The long tables of these parts, in order. */
    static Stream<TableItem> longTables(List<Section> parts) {
        return parts.stream()
                .flatMap(s -> s.items().stream())
                .flatMap(i -> i.match(
                        p -> Stream.empty(),
                        t -> isLong(t) ? Stream.of(t) : Stream.empty(),
                        c -> Stream.empty(),
                        w -> Stream.empty(),
                        a -> Stream.empty()));
    }
}
