package soundings.layout;

import java.util.Set;
import java.util.stream.Stream;
import soundings.chemistry.Names;

/** Columns of a test that were worked out from another column of the same test: by formulas throughout, or so called. */
final class WorkedOut {
    private static final int ENOUGH = 3;

    private static final Set<String> CALLED = Set.of(
            "calculated",
            "calc",
            "computed",
            "converted",
            "corrected",
            "adjusted",
            "normalised",
            "normalized",
            "berechnet",
            "umgerechnet",
            "korrigiert",
            "calcule",
            "converti",
            "corrige",
            "calculado",
            "convertido",
            "corregido",
            "berekend",
            "omgerekend",
            "gecorrigeerd");

    private WorkedOut() {}

    static Shape settle(Shape shape) {
        return shape.replace(
                f -> f.role() == Role.READING && workedOut(shape, f) && tested(shape, f),
                f -> f.with(Label.of(Role.DERIVED, 0.8)));
    }

    /** Whether the same test stands in another column as it was found. */
    private static boolean tested(Shape shape, Field field) {
        return shape.all(Role.READING).stream()
                .filter(f -> f.column() != field.column())
                .filter(f -> f.label().parameter().equals(field.label().parameter())
                        && f.label().tank().equals(field.label().tank()))
                .anyMatch(f -> !workedOut(shape, f));
    }

    private static boolean workedOut(Shape shape, Field field) {
        Column column = shape.column(field);
        boolean formulas = column.size() >= ENOUGH
                && column.cells().stream().allMatch(c -> c.look().formula());
        return formulas
                || Stream.of(Names.fold(field.header()).split("[^\\p{L}]+")).anyMatch(CALLED::contains);
    }
}
