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

    /** Sentences need so many characters across. */
    private static final int LEAST_WIDTH = 96;

    private static final int SPARE_COLUMN = 12;
    /** Charts cover so many rows of so many points, and about so many characters across. */
    private static final int CHART_ROWS = 12;

    private static final int STRIP_ROWS = 6;
    private static final double CHART_ROW_POINTS = 15;
    private static final int CHART_WIDTH = 120;
    /** Of a table its header and its first rows stand together. */
    private static final int TOGETHER_ROWS = 3;

    private final Page page;
    private final Pages pages;
    private final ChartData charts;
    /** The first row of what is being written that belongs together in print. */
    private int from;

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
        List<Integer> widths = new ArrayList<>(ColumnWidths.of(tables));
        while (widths.stream().mapToInt(Integer::intValue).sum() < LEAST_WIDTH) {
            widths.add(SPARE_COLUMN);
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
        from = page.rows().rowCount();
        page.line(section.heading(), section.depth() == 2 ? Face.Part.HEADING : Face.Part.SUBHEADING);
        pages.standsHere(section.id(), page);
        section.items().forEach(this::item);
        page.keepTogether(from, page.rows().row());
    }

    private void item(Item item) {
        boolean whole = item.match(this::prose, this::table, this::chart, this::working, this::actions);
        if (!item.restsOn().isEmpty()) {
            int last = page.rows().row();
            page.line("Rests on " + String.join(", ", item.restsOn()), Face.Part.QUIET);
            page.keepTogether(last, page.rows().row());
        }
        if (whole) {
            page.keepTogether(from, page.rows().row());
            from = page.rows().rowCount();
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
        return false;
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
        return false;
    }

    private boolean put(TableItem flat) {
        if (!flat.caption().isEmpty()) {
            page.line(flat.caption(), Face.Part.CAPTION);
            pages.standsHere(flat.id(), page);
        }
        if (!flat.rows().isEmpty()) {
            int header = TableRows.write(page, flat);
            page.keepTogether(from, Math.min(page.rows().row(), header + TOGETHER_ROWS));
            from = page.rows().rowCount();
        }
        return false;
    }

    private boolean actions(ActionList actions) {
        put(Flat.of(actions));
        if (actions.entries().isEmpty()) {
            page.line(actions.instead(), Face.Part.PROSE);
        }
        return false;
    }

    private boolean working(WorkingItem working) {
        page.line(working.result(), Face.Part.PROSE);
        return leadTo("Worked out step by step: " + working.caption(), working.id());
    }

    private boolean chart(ChartItem item) {
        return item.spec().match(this::chart, range -> chart(range, item.restsOn()), spark -> false);
    }

    /** Each test's place within its own range as a chart, then the figures. */
    private boolean chart(ChartSpec.RangeChart chart, List<String> restsOn) {
        page.gap();
        page.line(chart.finding(), Face.Part.PROSE);
        page.drawing()
                .add(
                        room(2 + chart.entries().size()),
                        new DrawingPart.Told(chart.title(), chart.finding()),
                        RangeDrawing.of(chart, charts));
        page.keepTogether(from, page.rows().row());
        from = page.rows().rowCount();
        return put(Flat.of(chart, restsOn));
    }

    private boolean chart(ChartSpec.TimeChart chart) {
        page.gap();
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
        for (int i = 0; i < rows; i++) {
            page.rows().next(CHART_ROW_POINTS);
        }
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
