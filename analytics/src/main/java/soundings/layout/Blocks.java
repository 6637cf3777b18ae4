package soundings.layout;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import soundings.chemistry.Parameter;
import soundings.chemistry.Reference;
import soundings.chemistry.Scale;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.Inferred;
import soundings.log.LogEntry;
import soundings.sheet.Cell;
import soundings.wording.VolumeUnit;

/** How a table was read, column by column, for the keeper to check. */
final class Blocks {
    private static final int ALL = -1;

    private Blocks() {}

    static BlockReading of(
            Shape shape, Layout layout, List<Settling.Settled> settled, List<LogEntry> entries, Reference reference) {
        Map<Integer, Span> spans = spans(shape, entries);
        List<ColumnReading> columns = shape.fields().stream()
                .map(f -> column(shape, f, settled, span(f, spans), reference))
                .toList();
        double sure =
                columns.stream().mapToDouble(ColumnReading::sure).average().orElse(0);
        return new BlockReading(
                shape.table().area().sheet(), Corrections.block(shape), layout.name(), sure, layout.because(), columns);
    }

    private static ColumnReading column(
            Shape shape, Field field, List<Settling.Settled> settled, Optional<Span> span, Reference reference) {
        Label label = field.label();
        List<Cell> cells = shape.column(field).cells();
        Optional<Settling.Settled> series = settled.stream()
                .filter(s -> s.series().header().equals(field.header())
                        && label.parameter().equals(Optional.of(s.series().parameter())))
                .findFirst();
        return new ColumnReading(
                field.header(),
                headerCell(shape, field),
                label.parameter().map(Parameter::id).orElse(field.role().meaning()),
                series.map(Settling.Settled::unit).orElse(unit(label, reference)),
                label.tank(),
                inferred(field, series),
                label.score(),
                cells.stream().limit(3).map(Cell::shown).toList(),
                cells.size(),
                span.map(Span::first),
                span.map(Span::last));
    }

    private static String headerCell(Shape shape, Field field) {
        List<Cell> labels = field.labels();
        return labels.isEmpty()
                ? ""
                : shape.table().area().place(labels.get(labels.size() - 1)).toString();
    }

    private static String unit(Label label, Reference reference) {
        boolean volume = label.role() == Role.WATER_CHANGE && label.volume() != VolumeUnit.UNWRITTEN;
        boolean rate = label.role() == Role.DOSE && !label.oneOff();
        return volume
                ? label.volume().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                : rate
                        ? "mL/day"
                        : label.parameter()
                                .flatMap(p -> reference.findScale(p, label.unit()))
                                .map(Scale::label)
                                .orElse(label.unit());
    }

    private static Set<Inferred> inferred(Field field, Optional<Settling.Settled> series) {
        Set<Inferred> all = new HashSet<>(field.inferred());
        series.ifPresent(s -> all.addAll(s.inferred()));
        return all;
    }

    /** The first and last day of what a column's cells became, by column; under {@link #ALL} those of the whole table. */
    private static Map<Integer, Span> spans(Shape shape, List<LogEntry> entries) {
        Area area = shape.table().area();
        // Parts of one cell have its place in common, so their texts tell them apart.
        boolean parts = area.places() instanceof Places.Moved;
        Map<Object, Integer> columns = new HashMap<>();
        shape.columns()
                .forEach((column, own) ->
                        own.cells().forEach(c -> columns.put(parts ? area.written(c) : area.place(c), column)));
        Map<Integer, Span> spans = new HashMap<>();
        for (LogEntry entry : entries) {
            Span day = new Span(entry.date(), entry.date());
            Optional.ofNullable(columns.get(parts ? entry.at() : entry.at().cell()))
                    .ifPresent(c -> spans.merge(c, day, Span::with));
            spans.merge(ALL, day, Span::with);
        }
        return spans;
    }

    private record Span(LocalDate first, LocalDate last) {
        Span with(Span other) {
            return new Span(
                    first.isBefore(other.first) ? first : other.first, last.isAfter(other.last) ? last : other.last);
        }
    }

    /** The column that dates the rows, or names their tank or test, has all the table's days. */
    private static Optional<Span> span(Field field, Map<Integer, Span> spans) {
        Role role = field.role();
        boolean all = role.dates() || role == Role.TANK || role == Role.TEST;
        return Optional.ofNullable(spans.get(all ? ALL : field.column())).filter(s -> all || role.gives());
    }
}
