package soundings.layout;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Parameter;
import soundings.log.BlockReading;
import soundings.log.ColumnReading;
import soundings.log.Inferred;
import soundings.log.Reading;
import soundings.sheet.Cell;
import soundings.wording.VolumeUnit;

/** How a table was read, column by column, for the keeper to check. */
final class Blocks {
    private Blocks() {}

    static BlockReading of(Shape shape, Layout layout, List<Settling.Settled> settled) {
        List<ColumnReading> columns =
                shape.fields().stream().map(f -> column(shape, f, settled)).toList();
        double sure =
                columns.stream().mapToDouble(ColumnReading::sure).average().orElse(0);
        return new BlockReading(
                shape.table().area().sheet(), Corrections.block(shape), layout.name(), sure, layout.because(), columns);
    }

    private static ColumnReading column(Shape shape, Field field, List<Settling.Settled> settled) {
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
                series.map(Settling.Settled::unit).orElse(unit(label)),
                label.tank(),
                inferred(field, series),
                label.score(),
                cells.stream().limit(3).map(Cell::shown).toList(),
                cells.size(),
                days(series).min(Comparator.naturalOrder()),
                days(series).max(Comparator.naturalOrder()));
    }

    private static String headerCell(Shape shape, Field field) {
        List<Cell> labels = field.labels();
        return labels.isEmpty()
                ? ""
                : shape.table().area().place(labels.get(labels.size() - 1)).toString();
    }

    private static String unit(Label label) {
        boolean volume = label.role() == Role.WATER_CHANGE && label.volume() != VolumeUnit.UNWRITTEN;
        boolean rate = label.role() == Role.DOSE && !label.oneOff();
        return volume
                ? label.volume().name().toLowerCase(Locale.ROOT).replace('_', ' ')
                : rate ? "mL/day" : label.unit();
    }

    private static Set<Inferred> inferred(Field field, Optional<Settling.Settled> series) {
        Set<Inferred> all = new HashSet<>(field.inferred());
        series.ifPresent(s -> all.addAll(s.inferred()));
        return all;
    }

    private static Stream<LocalDate> days(Optional<Settling.Settled> series) {
        return series.stream().flatMap(s -> s.readings().stream()).map(Reading::date);
    }
}
