package soundings.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import soundings.sheet.Cell;
import soundings.sheet.Value;
import soundings.wording.VolumeUnit;

/** What the bare numbers of a water change column count. */
final class Changes {
    private final Context context;
    private final Shape shape;
    private final Map<Integer, VolumeUnit> units = new HashMap<>();

    Changes(Context context, Shape shape) {
        this.context = context;
        this.shape = shape;
    }

    VolumeUnit unit(Field field) {
        VolumeUnit said = field.label().volume();
        VolumeUnit headed = context.words().volume(field.header()).orElse(said);
        return headed != VolumeUnit.UNWRITTEN ? headed : units.computeIfAbsent(field.column(), c -> byValue(field));
    }

    /** Cells with a unit speak for those without; shares written as 0.1 are no litres; else it stays unknown. */
    private VolumeUnit byValue(Field field) {
        List<Cell> cells = shape.column(field).cells();
        VolumeUnit other = cells.stream()
                .map(c -> context.words().volume(c.shown()))
                .flatMap(java.util.Optional::stream)
                .findFirst()
                .orElse(VolumeUnit.UNWRITTEN);
        return other;
    }

    static double number(Cell cell) {
        return cell.value() instanceof Value.Numeric numeric ? numeric.number() : Double.NaN;
    }
}
