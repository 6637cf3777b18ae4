package soundings.layout;

import java.util.ArrayList;
import java.util.List;
import soundings.log.BlockReading;
import soundings.log.DoubleFit;
import soundings.log.LeftOut;
import soundings.log.LogEntry;
import soundings.log.NameMerged;
import soundings.log.SheetIgnored;
import soundings.log.UnknownColumn;
import soundings.sheet.Cell;
import soundings.sheet.Grid;
import soundings.sheet.Region;

/** Reads the tables of one sheet and sees that no cell is passed over. */
final class SheetReading {
    private final Context context;
    private final Grid grid;
    private final Ledger ledger = new Ledger();
    private final List<BlockReading> blocks = new ArrayList<>();

    private SheetReading(Context context, Grid grid) {
        this.context = context;
        this.grid = grid;
    }

    record Read(Ledger ledger, List<BlockReading> blocks) {}

    static Read read(Context context, Grid grid, List<Shape> shapes, Owner owner) {
        SheetReading sheet = new SheetReading(context, grid);
        boolean shared = shapes.size() > 1;
        for (Shape shape : shapes) {
            String tank = shape.dated() ? owner.of(shape.table(), shared) : owner.described(shape.table(), shared);
            sheet.table(shape, tank);
            if (owner.nearly(shape.table(), shared) && !shape.has(Role.TANK)) {
                sheet.named(shape, tank);
            }
        }
        sheet.rest();
        return new Read(sheet.ledger, sheet.blocks);
    }

    private void table(Shape shape, String tank) {
        Layout layout = Layouts.of(shape);
        boolean holdsLog =
                shape.dated() && shape.fields().stream().anyMatch(f -> f.role().gives() || Fields.twoTests(f));
        List<Settling.Settled> settled = List.of();
        int before = ledger.entries().size();
        if (holdsLog) {
            DateColumn dates = DateColumn.of(shape, context.words(), context.epochShift());
            Context here =
                    context.with(context.orders().in(dates, context.settings().today()));
            settled = TableReading.read(here, shape, dates, tank, ledger).stream()
                    .map(s -> Settling.settle(s, context.reference(), context.firstStep(s.parameter())))
                    .toList();
            Swapped.setAside(settled, context.reference(), ledger).forEach(ledger::entry);
            settled.forEach(s -> s.issues().forEach(ledger::issue));
            columns(shape);
        } else {
            ignored(shape, layout);
        }
        new ToldVolumes(context).in(shape, tank).forEach(ledger::issue);
        List<LogEntry> entries =
                ledger.entries().subList(before, ledger.entries().size());
        blocks.add(Blocks.of(shape, layout, settled, entries, context.reference()));
    }

    /** The sheet's name is a tank's but for a letter. */
    private void named(Shape shape, String tank) {
        shape.table().lines().stream()
                .findFirst()
                .ifPresent(l -> ledger.issue(
                        new NameMerged(shape.table().area().written(l.cells().get(0)), grid.name(), tank)));
    }

    private void ignored(Shape shape, Layout layout) {
        List<Line> lines = shape.table().lines();
        if (lines.isEmpty()) {
            return;
        }
        Area area = shape.table().area();
        Cell first = lines.get(0).cells().get(0);
        List<Cell> cells = lines.stream().flatMap(l -> l.cells().stream()).toList();
        ledger.issue(new SheetIgnored(area.written(first), area.around(lines), layout.because()), area, cells);
    }

    /** Columns that give nothing: one issue each for their cells. */
    private void columns(Shape shape) {
        Area area = shape.table().area();
        for (Field field : shape.fields()) {
            List<Cell> open = shape.column(field).cells().stream()
                    .filter(c -> !ledger.claimed(area, c))
                    .toList();
            if (!open.isEmpty()) {
                column(shape, field, open);
            }
        }
    }

    private void column(Shape shape, Field field, List<Cell> open) {
        Area area = shape.table().area();
        Region region = area.around(
                open.stream().map(c -> new Line(c.at().row(), List.of(c))).toList());
        Cell at = open.get(0);
        String header = field.header().isEmpty() ? "(no heading)" : field.header();
        if (Fields.twoTests(field)) {
            ledger.issue(new DoubleFit(area.written(at), region, field.because()), area, open);
        } else if (field.role() == Role.UNKNOWN) {
            ledger.issue(
                    new UnknownColumn(area.written(at), region, header, "its heading is not understood"), area, open);
        } else {
            String why = field.role() == Role.DERIVED
                    ? "worked out, aimed at or of other water, no result of a test"
                    : "of no use here, or set aside with its row";
            ledger.issue(new LeftOut(area.written(at), region, header, why), area, open);
        }
    }

    /** Whatever no table claimed. */
    private void rest() {
        Area area = Area.of(grid);
        List<Cell> open =
                grid.cells().stream().filter(c -> !ledger.claimed(area, c)).toList();
        if (!open.isEmpty()) {
            Region region = area.around(
                    open.stream().map(c -> new Line(c.at().row(), List.of(c))).toList());
            ledger.issue(
                    new SheetIgnored(area.written(open.get(0)), region, "belongs to no table that was understood"),
                    area,
                    open);
        }
    }
}
