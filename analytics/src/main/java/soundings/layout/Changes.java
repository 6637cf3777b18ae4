package soundings.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    /** Cells with a unit speak for those without as long as all have the same; else it stays unknown. */
    private VolumeUnit byValue(Field field) {
        List<VolumeUnit> written = shape.column(field).cells().stream()
                .flatMap(c -> context.words().volume(c.shown()).stream())
                .distinct()
                .toList();
        return written.size() == 1 ? written.get(0) : VolumeUnit.UNWRITTEN;
    }
}
