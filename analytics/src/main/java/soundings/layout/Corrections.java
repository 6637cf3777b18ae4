package soundings.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import soundings.chemistry.Names;
import soundings.chemistry.Reference;
import soundings.setup.Setup;

/** The keeper's own corrections of how columns were read. */
final class Corrections {
    private static final Map<String, Role> ROLES = Map.ofEntries(
            Map.entry("date", Role.DATE),
            Map.entry("time", Role.TIME),
            Map.entry("tank", Role.TANK),
            Map.entry("test", Role.TEST),
            Map.entry("result", Role.RESULT),
            Map.entry("unit", Role.UNIT),
            Map.entry("additive", Role.ADDITIVE),
            Map.entry("dose", Role.DOSE),
            Map.entry("water change", Role.WATER_CHANGE),
            Map.entry("waterchange", Role.WATER_CHANGE),
            Map.entry("note", Role.NOTE),
            Map.entry("ignored", Role.IGNORED));

    private final List<Setup.Column> columns;
    private final Reference reference;
    private final Words words;

    Corrections(Setup setup, Reference reference, Words words) {
        this.columns = setup.columns();
        this.reference = reference;
        this.words = words;
    }

    Shape apply(Shape shape) {
        Shape corrected = shape;
        for (Setup.Column column : columns) {
            corrected = corrected.replace(f -> meant(shape, f, column), f -> f.with(label(f, column)));
        }
        return corrected;
    }

    private static boolean meant(Shape shape, Field field, Setup.Column column) {
        String sheet = shape.table().area().sheet();
        return (column.sheet().isBlank() || same(column.sheet(), sheet))
                && (column.block().isBlank() || same(start(column.block()), start(block(shape))))
                && same(column.header(), field.header());
    }

    /** A block's name: its place on the sheet, as inspect prints it. */
    static String block(Shape shape) {
        List<Line> lines = shape.table().lines();
        return lines.isEmpty() ? "" : shape.table().area().around(lines).toString();
    }

    /** The first cell of a place such as {@code B2:F40}: a table grows at its end and stays the same table. */
    private static String start(String place) {
        int colon = place.indexOf(':');
        return colon < 0 ? place : place.substring(0, colon);
    }

    private static boolean same(String one, String other) {
        return Names.fold(one).equals(Names.fold(other));
    }

    private Label label(Field field, Setup.Column column) {
        if (column.use().filter(use -> !use).isPresent()) {
            return Label.of(Role.IGNORED, 1);
        }
        Label meant = column.meaning().isBlank()
                ? field.label()
                : meaning(column.meaning().strip(), field.label());
        Label united = column.unit().isBlank() ? meant : words.withUnit(meant, column.unit());
        return column.tank().isBlank() ? united : united.withTank(column.tank().strip());
    }

    private Label meaning(String meaning, Label before) {
        Optional<Label> test = reference.findParameter(Names.fold(meaning)).map(p -> before.withParameter(p));
        Role role = ROLES.getOrDefault(Names.fold(meaning), Role.UNKNOWN);
        return test.orElseGet(() -> role == Role.UNKNOWN ? words.label(meaning) : before.withRole(role));
    }
}
